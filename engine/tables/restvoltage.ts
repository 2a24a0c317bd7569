import type { Volts } from '../units'

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
} as const satisfies Readonly<Record<string, readonly (readonly [charge: number, volts: Volts])[]>>
