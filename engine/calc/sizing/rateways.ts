import type { Design } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import type { Amps } from '../../units'
import { branchesOf } from '../answersof'
import { continuousCurrents } from '../continuous'
import { startsOf } from '../starts'
import type { States } from '../states'
import type { FuseWay } from './fuseways'
import { type Rated, ratingFor } from './ratings'
import type { Kept, NoSize } from './sizing'

/** Ratings of all ways, those that were left as they are too. */
export interface RatedWays {
  readonly ratings: ReadonlyMap<FuseWay, Amps>
  readonly because: ReadonlyMap<FuseWay, Rated['because']>
  readonly kept: readonly Kept[]
  readonly none: readonly NoSize[]
}

/** The smallest rating of each way, at the currents of one trial. */
export function rateWays(
  design: Design,
  ruleSet: RuleSet,
  { border, states }: States,
  ways: readonly FuseWay[],
  tight: ReadonlySet<string>,
): RatedWays {
  const ratings = new Map<FuseWay, Amps>()
  const because = new Map<FuseWay, Rated['because']>()
  const kept: Kept[] = []
  const none: NoSize[] = []
  if (ways.length === 0) return { ratings, because, kept, none }
  const branches = branchesOf(border, states)
  const lasting = continuousCurrents(design, states)
  const starts = startsOf(design, states[0]!.any, branches)
  const c = { design, ruleSet, border, lasting, starts, tight }
  for (const way of ways) {
    if (way.locked) {
      ratings.set(way, way.ratingA!)
      kept.push({ part: way.part.id, way: way.way, because: { key: 'locked' } })
      continue
    }
    const answer = ratingFor(c, way, branches.get(way.id)!)
    if (answer && 'ratingA' in answer) {
      ratings.set(way, answer.ratingA)
      because.set(way, answer.because)
      continue
    }
    if (way.ratingA !== null) ratings.set(way, way.ratingA)
    if (answer && 'kept' in answer) kept.push(answer.kept)
    if (answer && 'none' in answer) none.push(answer.none)
  }
  return { ratings, because, kept, none }
}
