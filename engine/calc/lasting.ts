import type { ConductorId } from '../model/design'
import { above } from '../units'
import type { Answer, NotChecked, Sustained } from './answers'
import { gapOf, guardsOf, missingFigure } from './guarded'
import type { ReturnGap } from './returns'
import { bearsOn, leaningOn, type Solved, type State, untriedAt } from './solved'

type Lasting = Answer<Sustained> | null

/** Largest lasting current of a return over all positions of the contacts; null where the conductor is no return. */
export function lastingOf(states: readonly State[], id: ConductorId): Lasting {
  let worst: Sustained | null = null
  for (const state of states) {
    const { any, none } = state
    const e = any.p.branchIndex.get(id)
    if (e === undefined || !bearsOn(state, id) || any.returns.isReturn[e] !== 1) continue
    const gap = restingOn(any, e) ?? untriedAt(state, any.envelope.block[e]!)
    if (gap) return gap
    const answer = any.returns.sustained(e)
    if ('notChecked' in answer) return told(any, answer.notChecked)
    if (any !== none) {
      const without = none.returns.sustained(e)
      if ('notChecked' in without || without.sustained !== answer.sustained) return missingFigure(any.border)
    }
    if (worst === null || above(answer.sustained, worst.amps))
      worst = { amps: answer.sustained, guards: guardsOf(any.border, answer.limiting), bare: [] }
  }
  return worst && { value: worst }
}

/** How a meshed return divides hangs on its own mesh, and on how the meshed fuses that limit it divide. */
function restingOn(s: Solved, e: number): NotChecked | null {
  const block = s.envelope.block[e]!
  if (block < 0) return null
  const fused = new Set([block])
  s.p.isFuse.forEach((is, k) => {
    if (is === 1 && s.envelope.block[k]! >= 0) fused.add(s.envelope.block[k]!)
  })
  for (const b of fused) {
    const gap = leaningOn(s, b)
    if (gap) return gap
  }
  return null
}

function told(s: Solved, gap: ReturnGap): NotChecked {
  return gap.code === 'missing-rating'
    ? gapOf(s.border, gap)
    : { notChecked: gap.code, parts: [], conductors: [] }
}
