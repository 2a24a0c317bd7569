import type { Volts } from '../units'

/** Chemistries of battery: the figures of this file, for each 12 V. */
export type Chemistry = 'lfp' | 'agm' | 'gel' | 'flooded'

/**
 * Voltage that capacity is multiplied by for the rated energy: four cells of 3.2 V, as printed on data sheets of
 * lithium iron phosphate packs; six of 2 V. Common practice, no source.
 */
export const NOMINAL_V: Readonly<Record<Chemistry, Volts>> = { lfp: 12.8, agm: 12, gel: 12, flooded: 12 }

/**
 * The voltage on which the factors of fault currents stand (`calc/faultsystem.ts`): at the greatest a battery of any
 * chemistry has 14.6 V, its highest charge voltage, at the least 10 V, its cut-off. No rest voltage, and not shown as one.
 */
export const FAULT_BASE_V: Volts = 12.8

/**
 * Rest voltage of a 12 V battery by state of charge (0 to 1), after some hours without current. Common practice, no
 * source: the figures that the trade quotes, rounded; of lithium iron phosphate four cells, of lead-acid six. A
 * battery that has just been charged stands higher, one that has just been used lower, a cold one lower.
 */
export const REST_VOLTAGE = {
  lfp: [
    [0, 10],
    [0.1, 12.8],
    [0.2, 12.9],
    [0.3, 13],
    [0.5, 13.1],
    [0.7, 13.2],
    [0.9, 13.3],
    [1, 13.4],
  ],
  agm: [
    [0, 11.6],
    [0.25, 12],
    [0.5, 12.3],
    [0.75, 12.6],
    [1, 12.85],
  ],
  gel: [
    [0, 11.6],
    [0.25, 12],
    [0.5, 12.3],
    [0.75, 12.6],
    [1, 12.85],
  ],
  flooded: [
    [0, 11.6],
    [0.25, 12.05],
    [0.5, 12.25],
    [0.75, 12.45],
    [1, 12.65],
  ],
} as const satisfies Readonly<Record<Chemistry, readonly (readonly [charge: number, volts: Volts])[]>>

/** Rest voltage of a full battery for each 12 V: the upper end of its curve. */
export const fullRestVoltage = (chemistry: Chemistry): Volts => REST_VOLTAGE[chemistry].at(-1)![1]
