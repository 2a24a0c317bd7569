import type { Celsius } from '../units'

/** Resistivity of annealed copper of 100 % IACS at 20 °C, Ω·mm²/m: 1/58. Reproduces every row of the AWG table. */
export const COPPER_OHM_MM2_PER_M = 1 / 58

/** Change of resistance for each kelvin, taken at 20 °C. */
export const COPPER_PER_KELVIN = 0.00393

/** kg for 1 mm² of 1 m: 8.89 g/cm³ of annealed copper at 20 °C (IEC 60028, from memory). */
export const COPPER_KG_PER_MM2_M = 0.00889

/** Resistance at a temperature, as a multiple of that at 20 °C. Linear law, good from -50 to 200 °C. */
export const copperFactor = (at: Celsius): number => 1 + COPPER_PER_KELVIN * (at - 20)
