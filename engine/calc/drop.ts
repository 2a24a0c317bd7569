import { fewestEdges } from '../math/fewest'
import type { Volts } from '../units'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'
import { deviceCurrents } from './reading'
import { type Supply, suppliesOf } from './supplies'
import { nodeCurrents, transfer } from './transfer'

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
  const t = transfer(p, ohms)
  const bounds = sourcesOff(p)
  const currents = deviceCurrents(p, bounds.min, bounds.max)
  const supplies = suppliesOf(p)
  return (device) => {
    const from = p.net[p.negative[device]!]!
    const to = p.net[p.positive[device]!]!
    if (from === to) return { device, reason: 'terminals-joined' }
    const ways = supplies(from, to)
    let worst: { volts: Volts; supply: Supply; witness: Float64Array } | undefined
    for (const supply of ways.supplies) {
      const potential = new Float64Array(p.graph.vertexCount)
      for (const [start, end] of legs(p, device, supply))
        t.between(start, end).forEach((v, node) => {
          potential[node]! += v
        })
      const { value, x } = currents(
        Float64Array.from(p.positive, (v, d) => potential[v]! - potential[p.negative[d]!]!),
      )
      if (!worst || value > worst.volts) worst = { volts: value, supply, witness: x }
    }
    if (!worst) return { device, reason: 'no-battery-feeds-it' }
    const volts = t.from(nodeCurrents(p, worst.witness))
    const parts = legs(p, device, worst.supply).flatMap(([start, end]) => {
      let at = start
      return fewestEdges(p.graph, start, end).map((branch) => {
        const next = p.graph.tail[branch] === at ? p.graph.head[branch]! : p.graph.tail[branch]!
        const taken = volts[at]! - volts[next]!
        at = next
        return { branch, volts: taken }
      })
    })
    const ofVolts = worst.supply.reduce((sum, b) => sum + p.form.devices[b]!.emf!, 0)
    return { device, ...worst, ofVolts, everySupply: ways.all, parts }
  }
}

/** Stretches of wiring in the order of the current: battery to battery, last battery to load, load to first battery. */
function legs(p: Prepared, device: number, supply: Supply): [start: number, end: number][] {
  const list: [number, number][] = []
  supply.forEach((battery, i) => {
    const next = supply[i + 1]
    list.push([p.positive[battery]!, next === undefined ? p.positive[device]! : p.negative[next]!])
  })
  list.push([p.negative[device]!, p.negative[supply[0]!]!])
  return list
}
