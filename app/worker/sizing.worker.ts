import {
  analyse,
  apply,
  type Design,
  type Finding,
  type Sizing,
  type SizingScope,
  sizeIt,
} from '../../engine'
import { serve } from './serve'

export interface SizingWish {
  readonly design: Design
  readonly scope: SizingScope
}

export interface SizingOutcome {
  readonly sizing: Sizing
  /** What the checks find once everything has been taken; null: there is nothing to take. */
  readonly findings: readonly Finding[] | null
}

serve<SizingWish, SizingOutcome>(({ design, scope }) => {
  const sizing = sizeIt(design, scope)
  const after = 'edit' in sizing ? apply(design, sizing.edit) : null
  return { sizing, findings: after && !after.refused ? analyse(after.design).findings : null }
})
