import { type Analysed, analyse, type Design } from '../../engine'
import { serve } from './serve'

serve<Design, Analysed>(analyse)
