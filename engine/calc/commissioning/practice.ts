import type { Amps, Ohms, Volts } from '../../units'

/** Tolerances of commissioning. Common practice, no source, unless a line says otherwise. */

/** A load against its typed current: rating plates are round figures, and a clamp meter for direct current drifts. */
export const LOAD_SHARE = 0.1
export const LOAD_AMPS: Amps = 0.2
/** An inverter against its rated power: its efficiency is known at one point only. */
export const INVERTER_SHARE = 0.15

/** A shunt's display against the clamp meter. Shunts themselves: 0.25 % typical, a maker's public guide. */
export const DISPLAY_SHARE = 0.03
export const DISPLAY_AMPS: Amps = 0.2
/** What a display may show with nothing switched on, as a share of the shunt's rating, and at least. */
export const ZERO_SHARE = 0.001
export const ZERO_AMPS: Amps = 0.1

/** A hand multimeter on direct voltage. */
export const METER_SHARE = 0.01
export const METER_VOLTS: Volts = 0.05
/** A dead conductor: a high-impedance meter may show a trace. */
export const DEAD_VOLTS: Volts = 0.5
/** What holds a voltage, against its setting. */
export const HELD_SHARE = 0.03
/** A threshold, against its setting. */
export const THRESHOLD_SHARE = 0.02

/** A battery as it comes: not emptier than this, and not higher than a little above its rest voltage when full. */
export const LOW_CHARGE = 0.2
export const SURFACE_SHARE = 0.04

/** Leads and contacts of an ohmmeter. */
export const LEAD_OHMS: Ohms = 0.5
/** Between poles that are apart, everything that draws taken off. */
export const APART_KILOHMS = 10

/** The drop of a load against the calculation. */
export const DROP_SHARE = 0.25
export const DROP_VOLTS: Volts = 0.05

/** A charger gives its full current to a battery that is not nearly full only; less is no fault. */
export const CHARGES_AT: Amps = 0.1
/** State of charge at which charging is tried. */
export const HALF = 0.5
/** How many of the loads with the greatest drop are measured, besides the critical ones. */
export const FAR_LOADS = 5
