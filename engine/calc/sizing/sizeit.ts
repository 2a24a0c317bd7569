import type { ConductorId, Design } from '../../model/design'
import { ruleSetOf } from '../../model/rules'
import { RULE_SETS } from '../../tables/rulesets'
import type { Amps, SquareMillimetres } from '../../units'
import { networkOf } from '../network'
import { statesOf } from '../states'
import { bondNeeds } from './bondneeds'
import { meshless } from './dropcuts'
import { type FreeRun, freeRuns } from './freeruns'
import { type FuseWay, fuseWays } from './fuseways'
import { heatNeeds } from './heatneeds'
import type { Selected } from './leastcopper'
import type { Need } from './needs'
import { type RatedWays, rateWays } from './rateways'
import { sizedOf } from './result'
import { type SizedRuns, sizeRuns } from './sizeruns'
import type { BondNeed, HeatNeed, Kept, LeftOut, Sizing, SizingScope } from './sizing'
import { type Trial, trialEdit, tried } from './trial'

/** Rounds in which meshes may settle; after them sizes and ratings only go up. */
const FREE_ROUNDS = 5
const MOST_ROUNDS = 60

const NOTHING: LeftOut = {
  conductors: new Set(),
  ways: new Set(),
  drops: new Set(),
  noThinner: new Set(),
}

/**
 * Standard sizes and ratings for a design, or for a part of it, with the least copper that holds everything together: the
 * smallest fuses that carry their loads; conductors that carry what the fuses let through, what can last in them and what they
 * must; the least size of the rule set; the drop of every load, in which conductors that several loads share are chosen
 * jointly. Currents of a tree do not hang on sizes, and one choice settles it. In a mesh they do: the choice is repeated on the
 * currents that it brings about until it stays, and after some rounds goes up only. What is given back has been through the full
 * calculation. Cost: a few times that of the answers, and the choice.
 */
export function sizeIt(design: Design, scope: SizingScope, leftOut: LeftOut = NOTHING): Sizing {
  const ruleSet = ruleSetOf(design) ?? RULE_SETS[0]!
  const parts = scope === 'all' ? null : new Set(scope.parts)
  const conductors = scope === 'all' ? null : new Set(scope.conductors)
  const ways = fuseWays(design, (id) => parts?.has(id) ?? true).filter((way) => !leftOut.ways.has(way.id))
  const border = networkOf(design, 'any', new Set())
  const { free, kept } = freeRuns(
    design,
    ruleSet,
    border,
    (id) => (conductors?.has(id) ?? true) && !leftOut.conductors.has(id),
  )
  const unsized = new Map<ConductorId, Kept>()
  const tight = new Set<string>()
  const heat = new Map<ConductorId, HeatNeed>()
  const bonds = new Map<ConductorId, BondNeed>()
  let trial = firstTrial(free, ways)
  let before: SizedRuns | null = null
  for (let round = 1; round <= MOST_ROUNDS; round++) {
    const settling = round <= FREE_ROUNDS
    const now = tried(design, trialEdit(design, trial))
    const laid = statesOf(now)
    const rated = rateWays(now, ruleSet, laid, ways, tight)
    if (rated.none.length > 0) return { infeasible: rated.none }
    const ratings = settling ? rated.ratings : noLower(rated.ratings, trial.ratings)
    if (!same(ratings, trial.ratings)) {
      trial = { ...trial, ratings }
      before = null
      continue
    }
    const open = free.filter(({ conductor }) => !unsized.has(conductor.id))
    const sized: ReturnType<typeof sizeRuns> = sizeRuns({
      design: now,
      ruleSet,
      laid,
      free: open,
      cuts: (before?.cuts ?? []).filter((cut) => !settling || meshless(cut)),
      floor: floorOf(open, [heat, bonds], settling ? new Map() : trial.sizes, leftOut.noThinner),
      unkept: leftOut.drops,
      before,
    })
    if ('infeasible' in sized) {
      const asking = tightened(sized, ways, rated)
      if (asking.length === 0) return { infeasible: sized.infeasible }
      for (const id of asking) tight.add(id)
    } else if ('unsized' in sized) {
      for (const gap of sized.unsized) unsized.set(gap.conductor!, gap)
      trial = { ...trial, sizes: new Map([...trial.sizes].filter(([id]) => !unsized.has(id))) }
      before = null
    } else if (!same(sized.sizes, trial.sizes)) {
      trial = { ...trial, sizes: sized.sizes }
      before = sized
    } else {
      const hot = heatNeeds(now, ruleSet, laid, open, trial.sizes)
      const all = [...kept, ...unsized.values(), ...rated.kept]
      const bonded = bondNeeds(now, laid.border, open, trial.sizes)
      if (hot.size + bonded.size === 0)
        return sizedOf({ design, now, trial, rated, sized, heat, bonds, free: open, kept: all })
      for (const [id, need] of hot) heat.set(id, need)
      for (const [id, need] of bonded) bonds.set(id, need)
      before = null
    }
  }
  return { infeasible: [{ key: 'unsettled', conductors: free.map(({ conductor }) => conductor.id) }] }
}

/** What is there; where nothing is, a size in the middle and the largest rating, so that currents can be worked out. */
function firstTrial(free: readonly FreeRun[], ways: readonly FuseWay[]): Trial {
  return {
    sizes: new Map(
      free.map(({ conductor, options }) => [
        conductor.id,
        conductor.size ?? options[options.length >> 1]!.size.key,
      ]),
    ),
    ratings: new Map(
      ways.flatMap((way): [FuseWay, Amps][] => {
        const amps = way.ratingA ?? way.ratings.at(-1)
        return amps === undefined ? [] : [[way, amps]]
      }),
    ),
  }
}

/** Ways whose fuses could be smaller, if not for hours, and ask too much of conductors that no size would carry. */
function tightened(
  { tooThin }: { readonly tooThin: readonly Need[] },
  ways: readonly FuseWay[],
  { because }: RatedWays,
): string[] {
  const asking = new Set(
    tooThin.flatMap((need) => need.guards.flatMap((g) => (g.is === 'device' ? [`${g.part}/${g.key}`] : []))),
  )
  return ways.flatMap((way) => {
    const reason = because.get(way)
    return reason && reason.key !== 'tight' && asking.has(way.id) ? [way.id] : []
  })
}

const noLower = (
  ratings: ReadonlyMap<FuseWay, Amps>,
  before: ReadonlyMap<FuseWay, Amps>,
): ReadonlyMap<FuseWay, Amps> =>
  new Map([...ratings].map(([way, amps]) => [way, Math.max(amps, before.get(way) ?? 0)]))

/** Options below which nothing may be chosen: what bears a short circuit, what a bond needs beside its lead, and after a while what was chosen last. */
const floorOf = (
  free: readonly FreeRun[],
  sections: readonly ReadonlyMap<ConductorId, { readonly leastMm2: SquareMillimetres }>[],
  sizes: Trial['sizes'],
  noThinner: ReadonlySet<ConductorId>,
): Selected =>
  new Map(
    free.map(({ conductor: { id, size }, options }) => {
      const leastMm2 = Math.max(...sections.map((of) => of.get(id)?.leastMm2 ?? 0))
      const bears = options.findIndex((o) => o.size.sectionMm2 >= leastMm2 * (1 - 1e-9))
      const last = options.findIndex((o) => o.size.key === sizes.get(id))
      const now = noThinner.has(id) ? options.findIndex((o) => o.size.key === size) : 0
      return [id, Math.max(0, bears, last, now)]
    }),
  )

const same = <K, V>(a: ReadonlyMap<K, V>, b: ReadonlyMap<K, V>): boolean =>
  a.size === b.size && [...a].every(([key, value]) => b.get(key) === value)
