import type { Amps, Celsius, SquareMillimetres } from '../units'
import { COPPER_OHM_MM2_PER_M } from './copper'
import type { Size } from './sizerows'

/** A conductor of the designer's own catalogue: cable at hand that the tables do not have. */
export interface OwnConductor {
  /** Written to files as the size of conductors: "own:1". */
  readonly key: string
  /** As it is called, whatever it is sold by: "Welding lead 35", "6 mm trade size". */
  readonly name: string
  /** True cross-section of the copper. */
  readonly sectionMm2: SquareMillimetres
  /** At 20 °C. null: worked out from the section, annealed copper. */
  readonly ohmsPerKm: number | null
  /** Continuous current alone in free air, at the rule set's reference. null: by section, from the rule set's table. */
  readonly amps: Amps | null
  /** Highest continuous temperature of the insulation. null: the rule set's usual one. */
  readonly insulationC: Celsius | null
  /** Sizing may choose it. */
  readonly offered: boolean
}

/** Bounds of each figure, in its unit. */
export const OWN_CONDUCTOR_BOUNDS = {
  sectionMm2: [0.05, 1000],
  ohmsPerKm: [0.001, 1000],
  amps: [0.1, 5000],
  insulationC: [40, 300],
} as const satisfies Readonly<Partial<Record<keyof OwnConductor, readonly [least: number, most: number]>>>

/** Keys of own conductors; no built-in size has such a one. */
export const OWN_SIZE_KEY = /^own:[1-9]\d{0,5}$/

/** An own conductor as a row of the size catalogue, marked in its name. */
export const ownSize = (own: OwnConductor): Size => ({
  key: own.key,
  name: `${own.name} (${own.sectionMm2} mm², own figure)`,
  series: 'own',
  sectionMm2: own.sectionMm2,
  ohmsPerKm: own.ohmsPerKm ?? (1000 * COPPER_OHM_MM2_PER_M) / own.sectionMm2,
  overallMm: null,
  source: 'own',
  confirmed: true,
  own: { amps: own.amps, insulationC: own.insulationC },
})
