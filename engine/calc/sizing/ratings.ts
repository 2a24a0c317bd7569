import type { Design } from '../../model/design'
import { conductorsAt } from '../../model/lookup'
import { clearsBy, type FuseBand, holdsAtLeast } from '../../tables/fuseband'
import type { RuleSet } from '../../tables/rulesets'
import type { Amps } from '../../units'
import type { BranchAnswer } from '../answers'
import type { StartAnswer } from '../faultanswers'
import { fuseFacts, valuesOf } from '../fusefacts'
import type { Border } from '../network'
import { type FuseWay, SINGLE } from './fuseways'
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
  /** What flows while a load behind it starts, by branch. */
  readonly starts: ReadonlyMap<string, readonly StartAnswer[]>
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
  if (amps < 1e-9) {
    const [ratingA] = way.ratings
    return way.ratingA === null && ratingA !== undefined && isJoined(c.design, way)
      ? { ratingA, because: { key: 'smallest', loadA: 0 } }
      : null
  }
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
    started(c, way, carries, c.starts.get(way.id) ?? []) ?? {
      ratingA: carries,
      because: whyCarries(way, amps, carries, smallest(amps) === carries ? null : { lastingA, share }),
    }
  )
}

function whyCarries(
  { ratings }: FuseWay,
  loadA: Amps,
  carries: Amps,
  lasting: { readonly lastingA: Amps; readonly share: number } | null,
): RatingReason {
  if (carries === ratings[0]) return { key: 'smallest', loadA }
  return lasting ? { key: 'lasting', ...lasting } : { key: 'load', loadA }
}

/** A conductor leaves it, if only to measure. */
const isJoined = (design: Design, { part, way }: FuseWay): boolean =>
  conductorsAt(design, part.id, way === SINGLE ? '2' : way).length > 0

const holds = (band: FuseBand, s: StartAnswer): boolean => holdsAtLeast(band, s.amps) >= s.seconds
const mayHold = (band: FuseBand, s: StartAnswer): boolean => {
  const opens = clearsBy(band, s.amps)
  return opens === null || opens > s.seconds
}

/** A larger rating where the loads' starts ask for one that there is. */
function started(c: RatingCase, way: FuseWay, carries: Amps, starts: readonly StartAnswer[]): Rated | null {
  for (const stands of [holds, mayHold]) {
    const opened = (rating: Amps): StartAnswer | undefined =>
      starts.find((s) => {
        const band = s.amps > rating ? bandAt(c, way, rating) : null
        return band !== null && !stands(band, s)
      })
    let last: StartAnswer | undefined
    for (const ratingA of way.ratings.filter((r) => r >= carries)) {
      const start = opened(ratingA)
      if (!start && !last) return null
      if (!start)
        return {
          ratingA,
          because: { key: 'inrush', part: last!.part, peakA: last!.amps, lastsS: last!.seconds },
        }
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
