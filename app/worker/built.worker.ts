import { type BuiltAnalysed, builtFindings, type Design, type Finding } from '../../engine'
import { serve } from './serve'

export interface BuiltWish {
  readonly design: Design
  /** Findings of the drawing. */
  readonly drawn: readonly Finding[]
}

serve<BuiltWish, BuiltAnalysed | null>(({ design, drawn }) => builtFindings(design, drawn))
