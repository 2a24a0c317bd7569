import { kindOf } from '../../engine/kinds/all'
import type { Field, Values } from '../../engine/model/fields'
import { complete } from '../../engine/model/values'
import { ampacityOf } from '../../engine/tables/ampacity'
import { copperFactor } from '../../engine/tables/copper'
import { lugRange } from '../../engine/tables/lugranges'
import { type Size, sizesOf } from '../../engine/tables/sizes'
import { type Lp, type LpRow, solveLp } from './highs'
import { BLOCKS_A_BAR, type LoadSystem } from './loadsystem'

/**
 * Sizes of a load system as an integer program, written down from its shape by hand: currents are sums of loads, what a fuse
 * lets through is the least rating on the way, what a return can carry is the sum of what its loads' fuses let
 * through. Tables are the engine's, nothing else is.
 */
export interface SizedByProgram {
  /** Rating of the main fuse, of each way of the fuse bars, of each load's way. */
  readonly mainA: number
  readonly blocksA: readonly number[]
  readonly loadsA: readonly number[]
  /** Least Σ section · length, mm²·m; null: no sizes hold everything. */
  readonly leastMm2M: number | null
}

/** Both terminations of a conductor, Ω: common practice, as the engine has it. */
const ENDS_OHM = 0.00004

const stud = (kindKey: string, terminal: string, values: Values = {}): string => {
  const kind = kindOf(kindKey)!
  return kind.terminals(complete(kind.fields, values)).find((t) => t.key === terminal)!.stud!
}

/** What the conductors end at. The loads have leads. */
const POST = stud('battery', '+')
const CARTRIDGE = stud('fuse-cartridge', '1')
const BAR = stud('busbar', '1l', { stud: 'M10' })
const FEED = stud('fuse-bar', 'in', { feeds: 1 })
const STRIP = stud('fuse-bar', '1', { feeds: 1 })
const BLOCK = stud('fuse-block', 'in')
const WAY = stud('fuse-block', '1')

interface Run {
  /** As the drawing numbers it. */
  readonly number: string
  readonly lengthM: number
  readonly amps: number
  readonly neededA: number
  readonly studs: readonly string[]
}

/** `locked`: sizes that the designer has chosen, by the number of the conductor; they are not asked to be the least. */
export function sizedByProgram(
  s: LoadSystem,
  locked: ReadonlyMap<string, Size> = new Map(),
): SizedByProgram | 'no rating' {
  const share = s.ruleSet.continuousShare.value
  const sum = (amps: readonly number[]): number => amps.reduce((a, b) => a + b, 0)
  const blockAmps = s.blockFeedsM.map((_, b) => sum(s.loads.filter((x) => x.block === b).map((x) => x.amps)))
  const mainAmps = sum(blockAmps)
  const main = rating(standard(kindOf('fuse-cartridge')!.fields.ratingA), mainAmps / share)
  const blocks = blockAmps.map((amps) => rating(standard(kindOf('fuse-bar')!.fields.ways), amps / share))
  const loads = s.loads.map((x) => rating(standard(kindOf('fuse-block')!.fields.ways), x.amps / share))
  if ([main, ...blocks, ...loads].includes(undefined)) return 'no rating'
  const [mainA, blocksA, loadsA] = [main!, blocks as number[], loads as number[]]
  /** What the fuses of some loads let through together. */
  const through = (isIn: (i: number) => boolean): number =>
    Math.min(
      mainA,
      sum(
        blocksA.map((block, b) =>
          Math.min(block, sum(s.loads.flatMap((x, i) => (x.block === b && isIn(i) ? [loadsA[i]!] : [])))),
        ),
      ),
    )
  const runs: Run[] = []
  const add = (
    number: string,
    lengthM: number,
    amps: number,
    letThrough: number,
    ...studs: string[]
  ): number =>
    runs.push({
      number,
      lengthM,
      amps,
      neededA: Math.max(amps, letThrough / s.ruleSet.deviceShare.value),
      studs,
    }) - 1
  const trunk = [
    add('T1', s.trunkM[0], mainAmps, mainA, POST, CARTRIDGE),
    add('T2', s.trunkM[1], mainAmps, mainA, CARTRIDGE, BAR),
    add(
      'T3',
      s.trunkM[2],
      mainAmps,
      through(() => true),
      BAR,
      POST,
    ),
  ]
  const bars = s.barFeedsM.map((lengthM, k) =>
    add(
      `A${k + 1}`,
      lengthM,
      sum(blockAmps.slice(k * BLOCKS_A_BAR, (k + 1) * BLOCKS_A_BAR)),
      mainA,
      BAR,
      FEED,
    ),
  )
  const feeds = s.blockFeedsM.map((lengthM, b) =>
    add(`B${b + 1}`, lengthM, blockAmps[b]!, Math.min(blocksA[b]!, mainA), STRIP, BLOCK),
  )
  const backs = s.backsM.map((lengthM, n) => {
    const isIn = (i: number): boolean => s.loads[i]!.back === n
    return add(
      `N${n + 1}`,
      lengthM,
      sum(s.loads.filter((_, i) => isIn(i)).map((x) => x.amps)),
      through(isIn),
      BAR,
      BAR,
    )
  })
  const ways = s.loads.map((x, i) => {
    const most = Math.min(loadsA[i]!, blocksA[x.block]!, mainA)
    return {
      runs: [
        ...trunk,
        bars[Math.floor(x.block / BLOCKS_A_BAR)]!,
        feeds[x.block]!,
        backs[x.back]!,
        add(`L${i + 1}`, x.feedM, x.amps, most, WAY),
        add(`R${i + 1}`, x.returnM, x.amps, most, BAR),
      ],
      limitV: (s.ruleSet.dropPercent[x.critical ? 'critical' : 'general'].value * s.systemV) / 100,
    }
  })
  const leastMm2M = solve(s, runs, ways, locked, true) ?? solve(s, runs, ways, locked, false)
  return { mainA, blocksA, loadsA, leastMm2M }
}

function solve(
  s: LoadSystem,
  runs: readonly Run[],
  ways: readonly { readonly runs: readonly number[]; readonly limitV: number }[],
  locked: ReadonlyMap<string, Size>,
  lugged: boolean,
): number | null {
  const options = runs.map((run) => {
    const chosen = locked.get(run.number)
    return chosen ? [chosen] : optionsOf(s, run, lugged)
  })
  if (options.some((o) => o.length === 0)) return null
  const start: number[] = []
  options.reduce((at, o, i) => {
    start[i] = at
    return at + o.length
  }, 0)
  const columns = (i: number): number[] => options[i]!.map((_, k) => start[i]! + k)
  const rows: LpRow[] = runs.map((_, i) => ({
    lower: 1,
    upper: 1,
    columns: columns(i),
    values: options[i]!.map(() => 1),
  }))
  for (const way of ways)
    rows.push({
      lower: Number.NEGATIVE_INFINITY,
      upper: way.limitV,
      columns: way.runs.flatMap(columns),
      values: way.runs.flatMap((i) =>
        options[i]!.map((size) => runs[i]!.amps * ohms(s, size, runs[i]!.lengthM)),
      ),
    })
  const objective = options.flatMap((o, i) => o.map((size) => size.sectionMm2 * runs[i]!.lengthM))
  const lp: Lp = {
    sense: 'min',
    objective,
    rows,
    bounds: objective.map(() => [0, 1] as const),
    whole: objective.map((_, j) => j),
  }
  const answer = solveLp(lp)
  return answer.status === 'optimal' ? answer.value : null
}

/** Sizes that carry what they must; where lugs go on them, only such, unless none of those carries it. */
function optionsOf(s: LoadSystem, run: Run, lugged: boolean): Size[] {
  const ranges = run.studs.flatMap((stud) => lugRange(stud) ?? [])
  const least = Math.max(s.ruleSet.leastMm2.open.value, ...ranges.map((r) => r.leastMm2))
  const most = Math.min(...ranges.map((r) => r.mostMm2))
  const carrying = sizesOf(s.ruleSet.series[0]!).filter((size) => {
    const spec = { size: size.key, insulationC: null, engineSpace: false, bunched: s.bunched }
    const ampacity = ampacityOf(s.ruleSet, spec, s.ambientC)
    return size.sectionMm2 >= least && 'value' in ampacity && ampacity.value.amps >= run.neededA
  })
  const fitting = carrying.filter((size) => size.sectionMm2 <= most)
  return lugged && fitting.length > 0 ? fitting : carrying
}

const ohms = (s: LoadSystem, size: Size, lengthM: number): number =>
  (size.ohmsPerKm / 1000) * copperFactor(s.ruleSet.dropAtC.value) * lengthM + ENDS_OHM

function standard(field: Field | undefined): readonly number[] {
  const of = field?.type === 'rows' ? field.columns.ratingA : field
  return of?.type === 'number' ? (of.standard ?? []) : []
}

const rating = (ratings: readonly number[], least: number): number | undefined =>
  ratings.find((amps) => amps >= least)
