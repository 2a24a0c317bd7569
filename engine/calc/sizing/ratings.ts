import type { Design } from '../../model/design'
import { clearsBy, type FuseBand, holdsAtLeast } from '../../tables/fuseband'
import type { RuleSet } from '../../tables/rulesets'
import type { Amps, Seconds } from '../../units'
import type { BranchAnswer, WorstCase } from '../answers'
import { fuseFacts, valuesOf } from '../fusefacts'
import type { Border } from '../network'
import type { FuseWay } from './fuseways'
import type { Kept, NoSize, RatingReason } from './sizing'

export interface Rated {
  readonly ratingA: Amps
  readonly because: RatingReason
}

export type RatingAnswer =
  | Rated
  | { readonly kept: Kept }
  | { readonly none: NoSize }
  /** Nothing to carry: an empty way. */
  | null

export interface RatingCase {
  readonly design: Design
  readonly ruleSet: RuleSet
  readonly border: Border
  /** Greatest currents of what runs for hours, by branch. */
  readonly lasting: ReadonlyMap<string, Amps>
  /** Ways of which the conductors behind bear no more than the load asks for, by branch. */
  readonly tight: ReadonlySet<string>
}

/**
 * The smallest standard rating that carries the worst case, and what runs for hours within the share of its rating that it
 * bears for ever; and, where some standard rating is known to do so, holds the start of every load behind it, or at
 * least does not surely open.
 */
export function ratingFor(c: RatingCase, way: FuseWay, { worst }: BranchAnswer): RatingAnswer {
  const at = { part: way.part.id, way: way.way }
  if ('notChecked' in worst) return { kept: { ...at, because: worst } }
  const { amps } = worst.value
  if (amps === 'unlimited') return { kept: { ...at, because: { key: 'no-limit' } } }
  if (amps < 1e-9) return null
  const fullDuty = valuesOf(c.design, way.part.id)('fullDuty') === true
  const share = fullDuty ? 1 : c.ruleSet.continuousShare.value
  const lastingA = Math.min(amps, c.lasting.get(way.id) ?? amps)
  const neededA = Math.max(amps, lastingA / share)
  const smallest = (least: Amps): Amps | undefined => way.ratings.find((r) => r * (1 + 1e-9) >= least)
  if (c.tight.has(way.id)) {
    const ratingA = smallest(amps)
    if (ratingA !== undefined) return { ratingA, because: { key: 'tight', loadA: amps, neededA } }
  }
  const carries = smallest(neededA)
  if (carries === undefined)
    return { none: { key: 'rating', ...at, neededA, largestA: way.ratings.at(-1) ?? 0 } }
  return (
    started(c, way, carries, startsOf(c.design, worst.value, amps)) ?? {
      ratingA: carries,
      because: lastingA / share > amps ? { key: 'lasting', lastingA, share } : { key: 'load', loadA: amps },
    }
  )
}

interface Start {
  readonly part: string
  readonly peakA: Amps
  readonly lastsS: Seconds
}

/** One load starts while all others run. */
function startsOf(design: Design, { witness }: WorstCase, amps: Amps): Start[] {
  return witness.flatMap((w) => {
    const typed = valuesOf(design, w.part)
    const [times, lastsS] = [typed('inrush'), typed('inrushS')]
    if (!(w.amps < 0) || typeof times !== 'number' || typeof lastsS !== 'number') return []
    return times > 1 && lastsS > 0 ? [{ part: w.part, peakA: amps + (times - 1) * -w.amps, lastsS }] : []
  })
}

const holds = (band: FuseBand, s: Start): boolean => holdsAtLeast(band, s.peakA) >= s.lastsS
const mayHold = (band: FuseBand, s: Start): boolean => {
  const opens = clearsBy(band, s.peakA)
  return opens === null || opens > s.lastsS
}

/** A larger rating where the loads' starts ask for one that there is. */
function started(c: RatingCase, way: FuseWay, carries: Amps, starts: readonly Start[]): Rated | null {
  for (const stands of [holds, mayHold]) {
    const opened = (rating: Amps): Start | undefined =>
      starts.find((s) => {
        const band = s.peakA > rating ? bandAt(c, way, rating) : null
        return band !== null && !stands(band, s)
      })
    let last: Start | undefined
    for (const ratingA of way.ratings.filter((r) => r >= carries)) {
      const start = opened(ratingA)
      if (!start && !last) return null
      if (!start) return { ratingA, because: { key: 'inrush', ...last! } }
      last = start
    }
  }
  return null
}

function bandAt({ design, border }: RatingCase, way: FuseWay, ratingA: Amps): FuseBand | null {
  const { part, branch } = border.branches.get(way.id)!
  const branches = new Map([[way.id, { part, branch: { ...branch, ratingA } }]])
  return fuseFacts(design, { ...border, branches }).get(way.id)?.band ?? null
}
