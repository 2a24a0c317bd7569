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

/** The greatest value of a figure that is linear in the device currents. */
export interface GreatestCurrent {
  /** A ≥ 0; Infinity where unlimited. */
  readonly value: Amps
  /** Device currents that give it, by device; all 0 where unlimited. */
  readonly currents: Float64Array
  readonly witness: Witness
}

/** Part of the current moved that must pay for the move to be worth telling. */
const WORTH_TELLING = 1e-10

/**
 * Prepares the search over device currents: value of 1 A of each device in, greatest value out. The same objective
 * gets the same answer whatever was asked before; undefined where the search ends without a verdict. O(devices) an answer where nets form no ring.
 */
export function greatestOf(
  p: Prepared,
  all: NetSystems,
): (objective: Float64Array) => GreatestCurrent | undefined {
  const fresh = (): ReturnType<typeof greatestFlow> =>
    greatestFlow(
      p.netCount,
      p.negative.map((v) => p.net[v]!),
      p.positive.map((v) => p.net[v]!),
      p.min,
      p.max,
    )
  // Where nets form rings, one search starts from where the last ended, and of several equal answers finds another.
  const shared = all.systems.some((s) => s.nets.length > 2) ? undefined : fresh()
  return (objective) => {
    const found = (shared ?? fresh())(objective)
    if (!found) return undefined
    const { value, x, ray } = found
    const currents = keepPayers(all, objective, x)
    const along = ray ? listed(p, keepPayers(all, objective, ray)) : []
    return { value, currents, witness: { devices: listed(p, currents), ray: along } }
  }
}

/** Sets to 0 what adds nothing: systems that balance among themselves without moving the figure. */
function keepPayers(all: NetSystems, objective: Float64Array, x: Float64Array): Float64Array {
  const kept = new Float64Array(x.length)
  const keep = (devices: Int32Array): void => {
    let pays = 0
    let moved = 0
    for (let i = 0; i < devices.length; i++) {
      const d = devices[i]!
      pays += objective[d]! * x[d]!
      moved += Math.abs(x[d]!)
    }
    if (pays > WORTH_TELLING * moved)
      for (let i = 0; i < devices.length; i++) kept[devices[i]!] = x[devices[i]!]!
  }
  for (const s of all.systems) keep(s.devices)
  for (const d of all.inOneNet) keep(Int32Array.of(d))
  return kept
}

function listed(p: Prepared, currents: Float64Array): DeviceCurrent[] {
  const list: DeviceCurrent[] = []
  for (let d = 0; d < currents.length; d++)
    if (currents[d] !== 0) list.push({ device: p.form.devices[d]!.id, current: currents[d]! })
  return list
}
