import type { Amps, Celsius, Seconds, SquareMillimetres } from '../units'

/** IEC 60364-5-54 annex A, copper: heat of 1 mm³ for 1 K, J; resistivity, Ω·mm; the temperature of the linear law, °C. */
const HEAT = 3.45e-3
const RESISTIVITY_OHM_MM = 17.241e-6
const BETA_C = 234.5

/** Highest temperature of a short circuit: PVC 160 °C; crosslinked and better insulation, from 125 °C on, 250 °C. */
export const shortCircuitLimitC = (insulationC: Celsius): Celsius => (insulationC < 125 ? 160 : 250)

/**
 * k of the adiabatic law, A·√s/mm², for a conductor that starts as hot as its insulation may be: the careful start.
 * The inputs of the formula are from memory; it reproduces the tabulated k of IEC 60364-4-43 within 0.5 %.
 */
export function withstandK(insulationC: Celsius, limitC: Celsius = shortCircuitLimitC(insulationC)): number {
  const rise = Math.log((BETA_C + limitC) / (BETA_C + insulationC))
  return Math.sqrt(((HEAT * (BETA_C + 20)) / RESISTIVITY_OHM_MM) * rise)
}

/** How long a conductor bears a fault current, t = (k·S/I)²; holds up to 5 s, beyond which heat is given off as well. */
export const withstandSeconds = (k: number, sectionMm2: SquareMillimetres, fault: Amps): Seconds =>
  ((k * sectionMm2) / fault) ** 2

/** Least cross-section that bears a fault current for so long, S = I·√t/k; t up to 5 s. */
export const withstandSection = (k: number, fault: Amps, lasts: Seconds): SquareMillimetres =>
  (fault * Math.sqrt(lasts)) / k
