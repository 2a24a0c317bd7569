import type { Range } from './chains'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** What a device is, by its bounds: a battery has an emf, a load never delivers, a source never draws. */
export type DeviceNature = 'battery' | 'load' | 'source' | 'two-way'

export function natureOf(p: Prepared, device: number): DeviceNature {
  if (isBattery(p, device)) return 'battery'
  if (!(p.max[device]! > 0)) return 'load'
  return p.min[device]! < 0 ? 'two-way' : 'source'
}

/** How one device's current passes a shunt. */
export interface Found {
  readonly device: number
  readonly nature: DeviceNature
  /**
   * Current through the shunt, positive from its `from` to its `to`, for each amp that the device draws (takes in
   * at its positive terminal), something else making up the balance. A range where it depends on what does; none
   * where nothing can. With `from` on the system's side of a shunt in the negative, a measured load has 1, and a
   * charger behind a battery shunt has 1 too: its current counts the other way because it draws less than nothing.
   */
  readonly range: Range | undefined
}

/** The same with what it should be. */
export interface Share extends Found {
  /** What the shunt's role asks for; none for devices of other circuits, about which this shunt says nothing. */
  readonly expected: 0 | 1 | undefined
}
