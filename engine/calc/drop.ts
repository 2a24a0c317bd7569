import { type Walks, walkBack, walksFrom } from '../math/walks'
import type { Amps, Volts } from '../units'
import { envelopes } from './envelope'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'
import { deviceCurrents } from './reading'
import { type Supply, suppliesOf } from './supplies'
import { nodeCurrents, potentials } from './transfer'

/** The worst voltage drop of one load: what its terminals lack of what the batteries hold out, out and return. */
export interface LoadDrop {
  readonly device: number
  /** V; Infinity where a load without a limit pulls on the same way. */
  readonly volts: Volts
  /** V: the sum of emfs that feeds it. */
  readonly ofVolts: Volts
  /** Batteries it is counted from, lowest first: those of the worst case. */
  readonly supply: Supply
  /** False where the bank offers so many ways that not all were looked at. */
  readonly everySupply: boolean
  /** Device currents that bring it about: often not every load on. */
  readonly witness: Float64Array
  /** Branches on the way and what each takes, V; they add up to `volts`. */
  readonly parts: readonly { readonly branch: number; readonly volts: Volts }[]
}

export interface NoDrop {
  readonly device: number
  readonly reason: 'no-battery-feeds-it' | 'terminals-joined'
}

/**
 * What is left of the bounds when every source rests: batteries deliver, loads draw, two-way devices draw.
 * Worst-case drops are asked under these.
 */
export function sourcesOff(p: Prepared): { min: Float64Array; max: Float64Array } {
  return {
    min: p.min.map((x, d) => (isBattery(p, d) ? 0 : x)),
    max: p.max.map((x, d) => (isBattery(p, d) ? x : 0)),
  }
}

/** Devices that draw and are no battery: those that have a drop. */
export const drawing = (p: Prepared): number[] =>
  p.form.devices.flatMap((_, d) => (p.min[d]! < 0 && !isBattery(p, d) ? [d] : []))

/**
 * Worst-case drop of any load, over every mix of loads with the sources off, and over the batteries it can be
 * counted from. `ohms`: resistance of each branch at the rule set's conductor temperature. The drop is linear in
 * the device currents, so the answer is exact. Prepared once; a few solves a load and way.
 */
export function loadDrops(
  p: Prepared,
  ohms: Float64Array = p.resistance,
): (device: number) => LoadDrop | NoDrop {
  const { of: potentialsOf, between } = potentials(p, ohms)
  const bounds = sourcesOff(p)
  const currents = deviceCurrents(p, bounds.min, bounds.max)
  const supplies = suppliesOf(p)
  const supplyFigures = kept((supply: Supply) => {
    const potential = potentialsOf(supplyTerminals(p, supply))
    return byDevice(p, (node) => potential[node]!)
  })
  const stateOf = lastKept((witness) => ({ witness, potential: potentialsOf(nodeCurrents(p, witness)) }))
  const walks = kept((root: number) => walksFrom(p.graph, root))
  const bound = boundsOf(p, bounds)
  /** The worst state of a load of the same supply before: often that of the next one too. */
  const recent = new Map<Supply, { x: Float64Array; potential: Float64Array }>()
  /** Every load on, the batteries of a supply before others: for most loads the worst state. */
  const allOn = kept((supply: Supply) => {
    const objective = p.min.map((x, d) => (!isBattery(p, d) && x < 0 ? -1 : 0))
    for (const battery of supply) objective[battery] = 0.25
    const { value, x } = currents(objective)
    return Number.isFinite(value) ? { x, potential: potentialsOf(nodeCurrents(p, x)) } : null
  })
  return (device) => {
    const from = p.net[p.negative[device]!]!
    const to = p.net[p.positive[device]!]!
    if (from === to) return { device, reason: 'terminals-joined' }
    const ways = supplies(from, to)
    if (ways.supplies.length === 0) return { device, reason: 'no-battery-feeds-it' }
    const certain = certainOf(device, ways)
    if (certain) return certain
    const own = byDevice(p, between(p.positive[device]!, p.negative[device]!).at)
    const objective = new Float64Array(own.length)
    let worst: { volts: Volts; supply: Supply; witness: Float64Array } | undefined
    for (const supply of ways.supplies) {
      const held = supplyFigures(supply)
      for (let d = 0; d < own.length; d++) objective[d] = held[d]! - own[d]!
      const { value, x } = currents(objective)
      if (!worst || value > worst.volts) worst = { volts: value, supply, witness: x }
    }
    const { volts, supply } = worst!
    const { witness, potential } = stateOf(worst!.witness)
    recent.set(supply, { x: witness, potential })
    const parts = partsOf(device, supply, potential)
    return { device, volts, ofVolts: emfOf(supply), supply, everySupply: ways.all, witness, parts }
  }

  function partsOf(device: number, supply: Supply, potential: Float64Array): LoadDrop['parts'] {
    return legs(p, device, supply).flatMap(([battery, other, sign]) =>
      walkBack(p.graph, walks(battery), other).map((branch) => ({
        branch,
        volts: sign * fall(p, potential, walks(battery), branch),
      })),
    )
  }

  /** No state can do more than each branch of the way at its own worst; undefined where the states at hand do less. */
  function certainOf(device: number, ways: ReturnType<typeof supplies>): LoadDrop | undefined {
    let worst: LoadDrop | undefined
    let most = 0
    for (const supply of ways.supplies) {
      most = Math.max(
        most,
        legs(p, device, supply).reduce(
          (sum, [battery, other, sign]) =>
            sum +
            walkBack(p.graph, walks(battery), other).reduce(
              (way, branch) =>
                way + ohms[branch]! * bound(branch, isOutward(p, walks(battery), branch) === (sign === 1)),
              0,
            ),
          0,
        ),
      )
      for (const state of [allOn(supply), recent.get(supply)]) {
        if (!state) continue
        const parts = partsOf(device, supply, state.potential)
        const volts = parts.reduce((sum, x) => sum + x.volts, 0)
        if (!worst || volts > worst.volts + CERTAIN)
          worst = {
            device,
            volts,
            ofVolts: emfOf(supply),
            supply,
            everySupply: ways.all,
            witness: state.x,
            parts,
          }
      }
    }
    return worst && most < Number.POSITIVE_INFINITY && most - worst.volts <= CERTAIN * Math.max(1, most)
      ? worst
      : undefined
  }

  function emfOf(supply: Supply): Volts {
    return supply.reduce((sum, b) => sum + p.form.devices[b]!.emf!, 0)
  }
}

/** V of each V by which a drop may be taken for the greatest that there can be. */
const CERTAIN = 1e-12

/** Greatest current of a branch from → to, or the other way, under some bounds. */
function boundsOf(
  p: Prepared,
  bounds: { min: Float64Array; max: Float64Array },
): (branch: number, forward: boolean) => Amps {
  let found: { min: Float64Array; max: Float64Array } | undefined
  return (branch, forward) => {
    found ??= envelopes({ ...p, ...bounds })
    return forward ? found.max[branch]! : -found.min[branch]!
  }
}

/** Answers by key, each computed once. */
function kept<K, V>(compute: (key: K) => V): (key: K) => V {
  const known = new Map<K, V>()
  return (key) => {
    let value = known.get(key)
    if (value === undefined) {
      value = compute(key)
      known.set(key, value)
    }
    return value
  }
}

/** What was found for the same figures just before: loads of one block are often at their worst in one state. */
function lastKept<V>(compute: (figures: Float64Array) => V): (figures: Float64Array) => V {
  let last: { figures: Float64Array; value: V } | undefined
  return (figures) => {
    if (!last?.figures.every((x, i) => x === figures[i])) last = { figures, value: compute(figures) }
    return last.value
  }
}

/** By reciprocity: what 1 A delivered by each device adds to the voltage that a current across something measures. */
function byDevice(p: Prepared, potential: (node: number) => Volts): Float64Array {
  const each = new Float64Array(p.positive.length)
  for (let d = 0; d < each.length; d++) each[d] = potential(p.positive[d]!) - potential(p.negative[d]!)
  return each
}

/** 1 A across each battery of a supply: measures what is left between its outermost terminals. */
function supplyTerminals(p: Prepared, supply: Supply): Float64Array {
  const amps = new Float64Array(p.graph.vertexCount)
  for (const battery of supply) {
    amps[p.positive[battery]!]! += 1
    amps[p.negative[battery]!]! -= 1
  }
  return amps
}

/**
 * Stretches of wiring between two batteries, and between the batteries and the load: the battery terminal they are
 * walked back to, the other end, and 1 where the drop runs from the battery terminal to the other end.
 */
function legs(p: Prepared, device: number, supply: Supply): [battery: number, other: number, sign: 1 | -1][] {
  const list: [number, number, 1 | -1][] = []
  supply.forEach((battery, i) => {
    const next = supply[i + 1]
    list.push([p.positive[battery]!, next === undefined ? p.positive[device]! : p.negative[next]!, 1])
  })
  list.push([p.negative[supply[0]!]!, p.negative[device]!, -1])
  return list
}

/** Voltage that a branch of a walk takes, from the end nearer the root to the other. */
function fall(p: Prepared, potential: Float64Array, walks: Walks, branch: number): Volts {
  const tail = p.graph.tail[branch]!
  const head = p.graph.head[branch]!
  return isOutward(p, walks, branch)
    ? potential[tail]! - potential[head]!
    : potential[head]! - potential[tail]!
}

/** Does a walk pass a branch from its tail to its head? */
const isOutward = (p: Prepared, { entry }: Walks, branch: number): boolean =>
  entry[p.graph.head[branch]!] === branch
