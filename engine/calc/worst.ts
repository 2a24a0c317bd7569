import { fromNumber } from '../units'
import { leastKnown, withAtLeast } from './answer'
import type { Answer, NotChecked, WorstCase } from './answers'
import { bearsOn, leaningOn, type State, unknownParts, untriedAt, witnessLines } from './solved'

/** A difference below this is rounding. */
const CLOSE = 1e-9

/** No device moves it: the search for those that do is spared. */
const NOTHING: Answer<WorstCase> = { value: { amps: 0, witness: [], unlimitedBy: [], shared: false } }

/** Greatest current of a branch in one direction over all positions of the contacts, A ≥ 0. */
export function worstOf(states: readonly State[], branch: string, side: 'min' | 'max'): Answer<WorstCase> {
  let best: { state: State; e: number; amps: number } | null = null
  let gap: NotChecked | null = null
  for (const state of states) {
    const { any, none } = state
    const e = any.p.branchIndex.get(branch)
    if (e === undefined || !bearsOn(state, branch)) continue
    const amps = side === 'max' ? any.envelope.max[e]! : -any.envelope.min[e]!
    const without = side === 'max' ? none.envelope.max[e]! : -none.envelope.min[e]!
    const found = gapOf(state, e, side, amps, without)
    if (found) {
      gap = gap === null ? found : withAtLeast(gap, found.atLeastA ?? null)
      continue
    }
    if (best === null || amps > best.amps) best = { state, e, amps: Math.abs(amps) }
  }
  if (gap) return withAtLeast(gap, best === null ? null : fromNumber(best.amps))
  if (best === null) return { notChecked: 'not-in-network', parts: [], conductors: [] }
  const { border, envelope } = best.state.any
  if (best.amps === 0) return NOTHING
  const witness = envelope.witness(best.e, side)
  const endless = witnessLines(border, witness.ray)
  return {
    value: {
      amps: Number.isFinite(best.amps) ? best.amps : 'unlimited',
      witness: witnessLines(border, witness.devices),
      unlimitedBy: [...new Set(endless.map((line) => line.part))],
      shared: envelope.block[best.e]! >= 0,
    },
  }
}

function gapOf(
  state: State,
  e: number,
  side: 'min' | 'max',
  amps: number,
  without: number,
): NotChecked | null {
  const { any } = state
  if (Number.isNaN(amps))
    return { notChecked: any.envelope.noAnswer.get(e) ?? 'no-convergence', parts: [], conductors: [] }
  const block = any.envelope.block[e]!
  const resting = leaningOn(any, block) ?? untriedAt(state, block)
  if (resting) return resting
  if (amps === without || Math.abs(amps - without) <= CLOSE) return null
  const gap = { notChecked: 'missing-figure', parts: unknownParts(any, e, side), conductors: [] }
  // Devices of unknown size may as well stand still: what the others bring about is so all the same.
  return Number.isNaN(without) ? gap : withAtLeast(gap, fromNumber(Math.abs(without)))
}

/** The greater of two figures; no answer to one is no answer. */
export function worse(a: Answer<WorstCase>, b: Answer<WorstCase>): Answer<WorstCase> {
  if (!('value' in a)) return withAtLeast(a, leastKnown(b))
  if (!('value' in b)) return withAtLeast(b, leastKnown(a))
  if (b.value.amps === 'unlimited') return b
  return a.value.amps === 'unlimited' || a.value.amps >= b.value.amps ? a : b
}
