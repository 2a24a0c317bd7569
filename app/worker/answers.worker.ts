import { type Analysed, analyser, type Design } from '../../engine'
import { serve } from './serve'

serve<Design, Analysed>(analyser())
