import type { Part } from '../../model/design'
import type { Amps } from '../../units'
import type { OperatingPoint } from '../operating/state'
import type { Effects } from './effects'

/** What one thing adds to the battery meter while it runs at its most. */
export interface Draw {
  readonly part: Part
  readonly amps: Amps
  /** What it takes hangs on what is plugged into it: a socket, an inverter. */
  readonly upTo: boolean
}

const HANGS_ON_USE = ['socket', 'inverter', 'inverter-charger']
/** Below this share of the voltage of the system, or above its inverse, a thing stands behind a converter. */
const OWN_VOLTAGE = 0.75

/**
 * Currents of all things that draw where everything is on, greatest first; what stands behind a converter counts with
 * its power over the voltage of the system. O(things).
 */
export function drawsOf({ plan, things }: Effects, allOn: OperatingPoint): Draw[] {
  const found = things.flatMap(({ part, role, device }): Draw[] => {
    const point = allOn.devices.get(plan.devices[device]!.id)
    if (role !== 'load' || !point) return []
    const share = point.volts / plan.systemV
    const isDirect = share > OWN_VOLTAGE && share < 1 / OWN_VOLTAGE
    const amps = isDirect ? -point.amps : -point.watts / plan.systemV
    return amps > 0 ? [{ part, amps, upTo: HANGS_ON_USE.includes(part.kind) }] : []
  })
  return found.sort((a, b) => b.amps - a.amps)
}
