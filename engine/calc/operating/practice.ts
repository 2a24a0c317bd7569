import type { Amps, Ohms, Volts } from '../../units'

/** Figures that stand in where a design says nothing. Common practice, no source, all of them. */

/** Share of its nominal voltage at which a coil pulls in, and at which it lets go again. */
export const PULLS_IN = 0.7
export const LETS_GO = 0.1

/** Under this share of the voltage without load a load is taken as stopped: no source can give more power than there. */
export const STOPS = 0.5

/** Of a 12 V battery whose internal resistance is not typed; in proportion for others. */
const BATTERY_OHMS: Ohms = 0.005
export const typicalOhms = (emfV: Volts): Ohms => (BATTERY_OHMS * Math.max(1, emfV)) / 12

/** A converter that holds a voltage, or an array held at most power: share of its voltage lost at its full current. */
const HELD_DROP = 0.001
export const heldOhms = (volts: Volts, amps: Amps): Ohms => (HELD_DROP * volts) / amps

/** Voltage of a battery that is being charged, above its nominal one: 14.4 V of 12 V. */
export const CHARGING = 14.4 / 12

/** Float voltage of a charger that does not state its own, above the nominal one: 13.6 V of 12 V. */
export const FLOATING = 13.6 / 12

/** What a full battery takes at the voltage that a charger holds: next to nothing. */
export const STANDING_A: Amps = 0.1

/** Coils are made for the circuit that they stand in: the nominal voltage nearest to what feeds it. */
export function nominalOf(restV: Volts): Volts {
  const off = (nominal: Volts): number => Math.abs(Math.log(Math.abs(restV) / nominal))
  return [12, 24, 48].reduce((best, nominal) => (off(nominal) < off(best) ? nominal : best))
}
