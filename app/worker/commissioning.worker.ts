import { commissioningSteps, type Design, type TestStep } from '../../engine'
import { serve } from './serve'

serve<Design, readonly TestStep[]>(commissioningSteps)
