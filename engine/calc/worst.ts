import type { Answer, NotChecked, WorstCase } from './answers'
import { assumedIn, type State, unknownParts, witnessLines } from './solved'

/** A difference below this is rounding. */
const CLOSE = 1e-9

/** Greatest current of a branch in one direction over all positions of the contacts, A ≥ 0. */
export function worstOf(states: readonly State[], branch: string, side: 'min' | 'max'): Answer<WorstCase> {
  let best: { state: State; amps: number } | null = null
  for (const state of states) {
    const { any, none } = state
    const e = any.p.branchIndex.get(branch)
    if (e === undefined) continue
    const amps = side === 'max' ? any.envelope.max[e]! : -any.envelope.min[e]!
    const without = side === 'max' ? none.envelope.max[e]! : -none.envelope.min[e]!
    const gap = gapOf(state, e, amps, without)
    if (gap) return gap
    if (best === null || amps > best.amps) best = { state, amps: Math.abs(amps) }
  }
  if (best === null) return { notChecked: 'not-in-network', parts: [], conductors: [] }
  const { border, p, envelope } = best.state.any
  const witness = envelope.witness(p.branchIndex.get(branch)!, side)
  return {
    value: {
      amps: Number.isFinite(best.amps) ? best.amps : 'unlimited',
      witness: witnessLines(border, witness),
    },
  }
}

function gapOf({ any }: State, e: number, amps: number, without: number): NotChecked | null {
  if (Number.isNaN(amps)) return { notChecked: 'resistance-out-of-range', parts: [], conductors: [] }
  const block = any.envelope.block[e]!
  const conductors = block >= 0 ? assumedIn(any, block) : []
  if (conductors.length > 0) return { notChecked: 'missing-run', parts: [], conductors }
  if (amps === without || Math.abs(amps - without) <= CLOSE) return null
  return { notChecked: 'missing-figure', parts: unknownParts(any, e), conductors: [] }
}

/** The greater of two figures; no answer to one is no answer. */
export function worse(a: Answer<WorstCase>, b: Answer<WorstCase>): Answer<WorstCase> {
  if (!('value' in a)) return a
  if (!('value' in b) || b.value.amps === 'unlimited') return b
  return a.value.amps === 'unlimited' || a.value.amps >= b.value.amps ? a : b
}
