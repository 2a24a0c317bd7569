import type { Amps } from '../units'
import { ROUNDING } from './meshes'
import type { Prepared } from './prepare'
import { deviceCurrents } from './reading'
import type { NetSystems } from './systems'

/** What one device delivers; negative: draws. */
export interface DeviceCurrent {
  readonly device: string
  readonly current: Amps
}

/** A state of the devices that brings about a worst case: balanced in every net, within all bounds. */
export interface Witness {
  /** Devices that play a part, and no others; a finite figure follows from them alone. */
  readonly devices: readonly DeviceCurrent[]
  /** Where there is no limit: added on top as often as one likes, these make the figure grow without end. Else empty. */
  readonly ray: readonly DeviceCurrent[]
}

/** The greatest value of a figure that is linear in the device currents, and device currents that give it. */
export interface Greatest {
  /** A ≥ 0; Infinity where unlimited. */
  readonly value: Amps
  /** By device. Where unlimited, those of the parts that have a limit. */
  readonly currents: Float64Array
  readonly witness: () => Witness
}

/**
 * Prepares the search over device currents: value per amp of each device in, greatest value out. The same objective
 * gets the same answer whatever was asked before. O(devices) an answer where nets form no ring.
 */
export function greatestOf(p: Prepared, all: NetSystems): (objective: Float64Array) => Greatest {
  const rings = all.systems.some((s) => s.nets.length > 2)
  const shared = rings ? undefined : deviceCurrents(p)
  const find = (objective: Float64Array): { value: number; x: Float64Array } =>
    (shared ?? deviceCurrents(p))(objective, ROUNDING)

  const ray = (objective: Float64Array): Float64Array => {
    const step = (bound: number): number => (Number.isFinite(bound) ? 0 : Math.sign(bound))
    const along = deviceCurrents(p, p.min.map(step), p.max.map(step))(objective, ROUNDING).x
    return keepPayers(all, objective, along)
  }
  return (objective) => {
    const { value, x } = find(objective)
    const currents = keepPayers(all, objective, x)
    return {
      value: Math.max(0, value),
      currents,
      witness: () => ({
        devices: listed(p, currents),
        ray: value === Number.POSITIVE_INFINITY ? listed(p, ray(objective)) : [],
      }),
    }
  }
}

/** Sets to 0 what adds nothing: systems that balance among themselves without moving the figure. */
function keepPayers(all: NetSystems, objective: Float64Array, x: Float64Array): Float64Array {
  const kept = new Float64Array(x.length)
  const keep = (devices: Int32Array): void => {
    let pays = 0
    let moved = 0
    for (const d of devices) {
      pays += objective[d]! * x[d]!
      moved += Math.abs(x[d]!)
    }
    if (pays > ROUNDING * moved) for (const d of devices) kept[d] = x[d]!
  }
  for (const s of all.systems) keep(s.devices)
  for (const d of all.inOneNet) keep(Int32Array.of(d))
  return kept
}

function listed(p: Prepared, currents: Float64Array): DeviceCurrent[] {
  return p.form.devices.flatMap((device, d) =>
    currents[d] === 0 ? [] : [{ device: device.id, current: currents[d]! }],
  )
}
