import type { Celsius } from '../units'
import { type Figured, figured, unconfirmed } from './figure'

/** Temperature that engine spaces are rated for, °C (33 CFR 183.425 with its Table 5). */
export const ENGINE_SPACE_C: Celsius = 50

/** How a rule set lowers an ampacity for a warm place; null: it has no figure for that. */
export type AmbientFactor = (ambientC: Celsius, insulationC: Celsius, engineSpace: boolean) => Figured | null

/** 33 CFR 183.425 Table 5 note 1, by column. */
const CFR_ENGINE_SPACE: ReadonlyMap<Celsius, Figured> = new Map([
  [60, unconfirmed(0.58, 'cfr-engine-space')],
  [75, unconfirmed(0.75, 'cfr-engine-space')],
  [80, unconfirmed(0.78, 'cfr-engine-space')],
  [90, unconfirmed(0.82, 'cfr-engine-space')],
  [105, figured(0.85, 'cfr-183-425')],
  [125, unconfirmed(0.89, 'cfr-engine-space')],
  [200, unconfirmed(1, 'cfr-engine-space')],
])

/**
 * 33 CFR knows two places, 30 °C and engine spaces of 50 °C. What is warmer than its place follows the square-root
 * law, and never gives more than the table's own factor.
 */
export const cfrAmbient: AmbientFactor = (ambientC, insulationC, engineSpace) => {
  const printed = engineSpace ? (CFR_ENGINE_SPACE.get(insulationC) ?? null) : figured(1, 'cfr-183-425')
  if (!printed || ambientC <= (engineSpace ? ENGINE_SPACE_C : 30)) return printed
  const byLaw = rootFactor(ambientC, insulationC, 30)
  if (byLaw === null) return null
  return byLaw < printed.value ? figured(byLaw, 'ambient-law') : printed
}

/** IEC 60364-5-52, PVC 70 °C in air, base 30 °C. Between two steps the warmer one is taken; nothing is interpolated. */
const IEC_PVC_70: readonly (readonly [Celsius, Figured])[] = [
  [30, figured(1, 'iec-60364-5-52')],
  [35, unconfirmed(0.94, 'iec-60364-5-52')],
  [40, figured(0.87, 'iec-60364-5-52')],
  [45, figured(0.79, 'iec-60364-5-52')],
  [50, figured(0.71, 'iec-60364-5-52')],
  [55, figured(0.61, 'iec-60364-5-52')],
  [60, unconfirmed(0.5, 'iec-60364-5-52')],
]

/** Of 70 °C PVC whatever the insulation, as the currents it lowers are; beyond 60 °C there is no figure. */
export const iecAmbient: AmbientFactor = (ambientC, _insulationC, engineSpace) => {
  const at = engineSpace ? Math.max(ambientC, ENGINE_SPACE_C) : ambientC
  return IEC_PVC_70.find(([step]) => at <= step)?.[1] ?? null
}

/**
 * √((T − ambient) / (T − base)): currents with the same conductor temperature T at two ambients.
 * null where the surroundings are as warm as the insulation may get.
 */
export function rootFactor(ambientC: Celsius, insulationC: Celsius, baseC: Celsius): number | null {
  return ambientC >= insulationC ? null : Math.sqrt((insulationC - ambientC) / (insulationC - baseC))
}
