import {
  analyse,
  apply,
  type Design,
  type Finding,
  type SizedInPart,
  type SizingScope,
  sizeInPart,
} from '../../engine'
import { serve } from './serve'

export interface SizingWish {
  readonly design: Design
  readonly scope: SizingScope
}

export interface SizingOutcome {
  readonly sizing: SizedInPart
  /** What the checks find once everything has been taken; null: there is nothing to take. */
  readonly findings: readonly Finding[] | null
}

serve<SizingWish, SizingOutcome>(({ design, scope }) => {
  const sizing = sizeInPart(design, scope)
  const after = sizing.sized && apply(design, sizing.sized.edit)
  return { sizing, findings: after && !after.refused ? analyse(after.design).findings : null }
})
