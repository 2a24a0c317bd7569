import { fewGains } from '../math/fewgains'
import { greatestFlow } from '../math/unlimited'
import type { Amps } from '../units'
import type { Prepared } from './prepare'
import type { NetSystems } from './systems'

/** What one device delivers; negative: draws. */
export interface DeviceCurrent {
  readonly device: string
  readonly current: Amps
}

/** A state of the devices that brings about a worst case: balanced in every net, within all bounds. */
export interface Witness {
  /** Devices that play a part, and no others; a finite figure follows from them alone. Empty where there is no limit. */
  readonly devices: readonly DeviceCurrent[]
  /** Where there is no limit: as many times these as one likes, and the figure grows without end. Else empty. */
  readonly ray: readonly DeviceCurrent[]
}

/** A figure that is linear in the device currents: its value for 1 A that each device delivers; 0 for all others. */
export type Figure = ReadonlyMap<number, number>

/** The greatest value of a figure. */
export interface GreatestCurrent {
  /** A ≥ 0; Infinity where unlimited. */
  readonly value: Amps
  /** Device currents that give it, by device, those that are not 0; none where unlimited. */
  readonly currents: ReadonlyMap<number, Amps>
  readonly witness: Witness
}

/** Part of the current moved that must pay for the move to be worth telling. */
const WORTH_TELLING = 1e-10

/**
 * Prepares the search over device currents. The same figure gets the same answer whatever was asked before; undefined
 * where the search ends without a verdict. O(devices that count or move) an answer for most figures of few devices,
 * O(devices) where nets form no ring.
 */
export function greatestOf(p: Prepared, all: NetSystems): (figure: Figure) => GreatestCurrent | undefined {
  const from = p.negative.map((v) => p.net[v]!)
  const to = p.positive.map((v) => p.net[v]!)
  const short = fewGains(p.netCount, from, to, p.min, p.max)
  const fresh = (): ReturnType<typeof greatestFlow> => greatestFlow(p.netCount, from, to, p.min, p.max)
  // Where nets form rings, one search starts from where the last ended, and of several equal answers finds another.
  const rings = all.systems.some((s) => s.nets.length > 2)
  let shared: ReturnType<typeof greatestFlow> | undefined
  const plain = (): ReturnType<typeof greatestFlow> => {
    if (rings) return fresh()
    shared ??= fresh()
    return shared
  }
  const systemOf = systemsByDevice(p, all)
  const objective = new Float64Array(p.min.length)
  return (figure) => {
    const few = short(figure)
    if (few) {
      const currents = payers(systemOf, figure, few.flows)
      return { value: few.value, currents, witness: { devices: listed(p, currents), ray: [] } }
    }
    for (const [d, gain] of figure) objective[d] = gain
    const found = plain()(objective)
    for (const d of figure.keys()) objective[d] = 0
    if (!found) return undefined
    const currents = payers(systemOf, figure, movers(found.x))
    const along = found.ray ? listed(p, payers(systemOf, figure, movers(found.ray))) : []
    return { value: found.value, currents, witness: { devices: listed(p, currents), ray: along } }
  }
}

const NO_SYSTEM = -1

/** System of each device; one of its own for a device in one net. */
function systemsByDevice(p: Prepared, all: NetSystems): Int32Array {
  const of = new Int32Array(p.min.length).fill(NO_SYSTEM)
  all.systems.forEach((s, k) => {
    for (const d of s.devices) of[d] = k
  })
  all.inOneNet.forEach((d, i) => {
    of[d] = all.systems.length + i
  })
  return of
}

function movers(x: Float64Array): Map<number, Amps> {
  const moving = new Map<number, Amps>()
  for (let d = 0; d < x.length; d++) if (x[d] !== 0) moving.set(d, x[d]!)
  return moving
}

/** Without systems that balance among themselves and do not move the figure. */
function payers(systemOf: Int32Array, figure: Figure, x: ReadonlyMap<number, Amps>): Map<number, Amps> {
  const sums = new Map<number, { pays: number; moved: number }>()
  for (const [d, amps] of x) {
    const sum = sums.get(systemOf[d]!) ?? { pays: 0, moved: 0 }
    sums.set(systemOf[d]!, sum)
    sum.pays += (figure.get(d) ?? 0) * amps
    sum.moved += Math.abs(amps)
  }
  const kept = new Map<number, Amps>()
  for (const [d, amps] of x) {
    const system = systemOf[d]!
    const { pays, moved } = sums.get(system)!
    if (system !== NO_SYSTEM && pays > WORTH_TELLING * moved) kept.set(d, amps)
  }
  return kept
}

/** In the order of the devices. */
function listed(p: Prepared, currents: ReadonlyMap<number, Amps>): DeviceCurrent[] {
  return [...currents]
    .sort(([a], [b]) => a - b)
    .map(([d, current]) => ({ device: p.form.devices[d]!.id, current }))
}
