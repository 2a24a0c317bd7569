import type { Design, SystemVoltage } from '../../engine/model/design'
import { RULE_SETS, type RuleSet } from '../../engine/tables/rulesets'
import { type DesignBuilder, design } from '../build'
import { Random } from './random'

/**
 * A system of one battery and many loads with all that loads share: a main fuse, a bar, fuse bars, blocks, return bars.
 * Two trees that need not match: the block of a load says nothing of the bar to which it returns. No sizes, no ratings.
 */
export interface LoadSystem {
  readonly systemV: SystemVoltage
  readonly ruleSet: RuleSet
  readonly ambientC: number
  readonly bunched: number
  /** Battery to main fuse, main fuse to bar, negative bar to battery, m. */
  readonly trunkM: readonly [number, number, number]
  /** Bar to each fuse bar. */
  readonly barFeedsM: readonly number[]
  /** Fuse bar to each block; every so many blocks stand on one fuse bar. */
  readonly blockFeedsM: readonly number[]
  /** Each return bar to the negative bar. */
  readonly backsM: readonly number[]
  readonly loads: readonly SystemLoad[]
}

export interface SystemLoad {
  readonly amps: number
  readonly critical: boolean
  readonly block: number
  /** Return bar. */
  readonly back: number
  readonly feedM: number
  readonly returnM: number
}

export const BLOCKS_A_BAR = 12

export interface Shape {
  readonly loads: number
  readonly blocks: number
  readonly backs: number
  /** Loads return to the bar of the same number as their block. */
  readonly nested: boolean
  readonly totalA: number
  /** Longest run of a load, m. */
  readonly reachM: number
}

export function loadSystem(seed: number, shape: Shape): LoadSystem {
  const r = new Random(seed)
  const lengths = (n: number, from: number, to: number): number[] =>
    Array.from({ length: n }, () => Number(r.between(from, to).toFixed(2)))
  const each = shape.totalA / shape.loads
  return {
    systemV: r.pick([12, 12, 24, 48] as const),
    ruleSet: r.pick(RULE_SETS),
    ambientC: r.pick([30, 40, 45]),
    bunched: r.pick([1, 1, 2, 4]),
    trunkM: [0.15, r.between(0.3, 2), r.between(0.3, 2)],
    barFeedsM: lengths(Math.ceil(shape.blocks / BLOCKS_A_BAR), 0.2, 1),
    blockFeedsM: lengths(shape.blocks, 0.3, 6),
    backsM: lengths(shape.nested ? shape.blocks : shape.backs, 0.3, 6),
    loads: Array.from({ length: shape.loads }, (_, i) => {
      const block = i % shape.blocks
      return {
        amps: Number(r.between(0.2 * each, 1.8 * each).toFixed(3)),
        critical: r.chance(0.25),
        block,
        back: shape.nested ? block : r.whole(0, shape.backs - 1),
        feedM: Number(r.between(0.5, shape.reachM).toFixed(2)),
        returnM: Number(r.between(0.5, shape.reachM).toFixed(2)),
      }
    }),
  }
}

/** The system drawn. Conductors are numbered T1 to T3, A1…, B1…, N1…, and L1, R1 for the first load. */
export function systemDesign(s: LoadSystem): Design {
  const blocksAt = s.blockFeedsM.map((_, b) => s.loads.filter((x) => x.block === b))
  const backsAt = s.backsM.map((_, n) => s.loads.filter((x) => x.back === n))
  let d: DesignBuilder = design({ systemV: s.systemV, ruleSet: s.ruleSet.key, ambientC: s.ambientC })
  const join = (number: string, from: string, to: string, lengthM: number): void => {
    d = d.join(from, to, { number, lengthM, bunched: s.bunched })
  }
  const bar = { studs: 40, ratingA: 1000, stud: 'M10' }
  const fuses = { class: 'other', voltageV: 80, breakingKA: 20 }
  d = d
    .part('battery', 'G1', { volts: `${s.systemV}`, capacityAh: 400, dischargeA: 2000, chargeA: 200 })
    .part('fuse-cartridge', 'F1', { ...fuses, class: 't' })
    .part('busbar', 'W1', { ...bar, pole: 'positive' })
    .part('busbar', 'W2', { ...bar, pole: 'negative' })
  join('T1', 'G1.+', 'F1.1', s.trunkM[0])
  join('T2', 'F1.2', 'W1.1l', s.trunkM[1])
  join('T3', 'W2.1l', 'G1.-', s.trunkM[2])
  const stud = (i: number): string => `${(i % 39) + 2}${i < 39 ? 'r' : 'l'}`
  s.barFeedsM.forEach((lengthM, k) => {
    const ways = Array.from({ length: BLOCKS_A_BAR }, () => ({ ratingA: null, label: '' }))
    d = d.part('fuse-bar', `FA${k + 1}`, { ...fuses, feeds: 1, ratingA: 1000, ways })
    join(`A${k + 1}`, `W1.${stud(k)}`, `FA${k + 1}.in`, lengthM)
  })
  s.blockFeedsM.forEach((lengthM, b) => {
    const ways = blocksAt[b]!.map(() => ({ ratingA: null, label: '' }))
    d = d.part('fuse-block', `FB${b + 1}`, { ...fuses, ratingA: 500, wayMaxA: 40, ways })
    join(
      `B${b + 1}`,
      `FA${Math.floor(b / BLOCKS_A_BAR) + 1}.${(b % BLOCKS_A_BAR) + 1}`,
      `FB${b + 1}.in`,
      lengthM,
    )
  })
  s.backsM.forEach((lengthM, n) => {
    d = d.part('busbar', `WN${n + 1}`, { ...bar, pole: 'negative' })
    join(`N${n + 1}`, `WN${n + 1}.1l`, `W2.${stud(n)}`, lengthM)
  })
  s.loads.forEach((load, i) => {
    d = d.part('load', `E${i + 1}`, {
      currentA: load.amps,
      service: load.critical ? 'critical' : 'general',
    })
    const way = blocksAt[load.block]!.indexOf(load) + 1
    join(`L${i + 1}`, `FB${load.block + 1}.${way}`, `E${i + 1}.+`, load.feedM)
    join(
      `R${i + 1}`,
      `E${i + 1}.-`,
      `WN${load.back + 1}.${stud(backsAt[load.back]!.indexOf(load))}`,
      load.returnM,
    )
  })
  return d.build()
}
