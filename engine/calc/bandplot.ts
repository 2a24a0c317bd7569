import type { ConductorId, Design, PartId } from '../model/design'
import { conductorById } from '../model/lookup'
import { ruleSetOf } from '../model/rules'
import { sizeIn, statedInsulationC } from '../model/sizes'
import { clearsBy, type FuseBand, holdsAtLeast } from '../tables/fuseband'
import { RULE_SETS } from '../tables/rulesets'
import { withstandK } from '../tables/withstand'
import type { Amps, Seconds } from '../units'
import type { Answers } from './answers'
import type { Clearing, EndFault } from './faultanswers'
import { fuseFactsOf } from './fusefacts'

export interface PlotPoint {
  readonly amps: Amps
  readonly seconds: Seconds
}

/**
 * What belongs on one time-current plot: the device that guards a conductor, the copper behind it, what starts through
 * it, and the fault currents that it has to tell apart from that. Currents are those through the device.
 */
export interface BandPlot {
  readonly conductor: ConductorId
  /** The end at which the short circuit lies. */
  readonly end: 'from' | 'to'
  readonly part: PartId
  /** Which way of a block. */
  readonly key: string
  readonly ratingA: Amps
  readonly band: FuseBand
  /** Corners of the edge below which it surely holds, and of the one above which it has surely cleared. */
  readonly holds: readonly PlotPoint[]
  readonly clears: readonly PlotPoint[]
  /** Ends of the line t = k²S²/I² that the conductor bears, from 5 s down to a hundredth; null: no size. */
  readonly bears: readonly [PlotPoint, PlotPoint] | null
  /** The hardest start through the device; null: none. */
  readonly start: (PlotPoint & { readonly part: PartId }) | null
  /** Short circuits at the far end, through the device; null: not checked. */
  readonly leastA: Amps | null
  readonly greatestA: Amps | null
}

/** Range of the adiabatic law, s, and where its line ends on the plot. */
const LAW_S: readonly [from: Seconds, to: Seconds] = [5, 0.01]

/**
 * The plot of a conductor and of the slowest device that guards it. null: no device guards it that a battery feeds, or
 * its operating times are not known. O(1) but for looking the device up.
 */
export function fuseBandPlot(design: Design, answers: Answers, conductor: ConductorId): BandPlot | null {
  const faults = answers.faults.runs.get(conductor)
  const c = conductorById(design, conductor)
  if (!faults || !c) return null
  const [slowest] = (['from', 'to'] as const)
    .flatMap((end) => faults[end].clearing.map((guard) => ({ end, guard, time: timeOf(guard) })))
    .filter(({ time }) => time !== undefined)
    .sort((a, b) => b.time! - a.time!)
  if (!slowest) return null
  const { end, guard } = slowest
  const facts = fuseFactsOf(design, guard.part, guard.key)
  if (!facts?.band || facts.ratingA === null) return null

  const insulationC = statedInsulationC(design, c) ?? (ruleSetOf(design) ?? RULE_SETS[0]!).insulationC
  const section = sizeIn(design, c.size)?.sectionMm2
  const a2s = section === undefined ? null : (withstandK(insulationC) * section) ** 2
  const share = guard.runAmps > 0 ? guard.amps / guard.runAmps : 1
  const bornFor = (seconds: Seconds): PlotPoint => ({ amps: share * Math.sqrt(a2s! / seconds), seconds })
  const starts = answers.faults.starts.get(`${guard.part}/${guard.key}`) ?? []
  const [start] = [...starts].sort((a, b) => b.amps ** 2 * b.seconds - a.amps ** 2 * a.seconds)
  return {
    conductor,
    end,
    part: guard.part,
    key: guard.key,
    ratingA: facts.ratingA,
    band: facts.band,
    holds: holdsEdge(facts.band, facts.ratingA),
    clears: clearsEdge(facts.band),
    bears: a2s === null ? null : [bornFor(LAW_S[0]), bornFor(LAW_S[1])],
    start: start ?? null,
    leastA: guard.amps,
    greatestA: greatestThrough(faults[end], guard),
  }
}

/** What does not clear at all is slowest; undefined: not known. */
const timeOf = ({ within }: Clearing): Seconds | undefined =>
  'value' in within ? (within.value ?? Number.POSITIVE_INFINITY) : undefined

/** The device takes the same share of the greatest current as of the least. */
function greatestThrough(end: EndFault, guard: Clearing): Amps | null {
  if (!('value' in end.greatest) || !('value' in end.least) || typeof end.greatest.value !== 'number')
    return null
  return end.greatest.value * (guard.amps / end.least.value)
}

/** From the rating, up to which it holds, level up to each gate and down there; beyond the last gate nothing is sure. */
function holdsEdge(band: FuseBand, ratingA: Amps): PlotPoint[] {
  let from = ratingA
  const corners = band.gates.flatMap(({ amps }) => {
    const seconds = holdsAtLeast(band, amps)
    if (seconds === 0 || amps < from) return []
    const level = [
      { amps: from, seconds },
      { amps, seconds },
    ]
    from = amps
    return level
  })
  return corners.length > 0 ? corners : [{ amps: ratingA, seconds: Number.MAX_VALUE }]
}

/** Level from each gate on, down at the next, and beyond the last one falling with the square of the current. */
function clearsEdge(band: FuseBand): PlotPoint[] {
  const gates = band.gates.filter((g) => g.most !== null)
  const corners = gates.flatMap(({ amps, most }, i) => {
    const next = gates[i + 1]
    return [{ amps, seconds: most! }, ...(next ? [{ amps: next.amps, seconds: most! }] : [])]
  })
  const last = gates[gates.length - 1]
  if (last) corners.push({ amps: last.amps * 1000, seconds: clearsBy(band, last.amps * 1000)! })
  return corners
}
