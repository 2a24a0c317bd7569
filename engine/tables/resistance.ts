import type { Celsius, Ohms } from '../units'
import { copperFactor } from './copper'
import { type SizeLookup, sizeByKey } from './sizes'

/** Ω for each metre of a size at a conductor temperature; undefined for a size that is not in the catalogue. */
export function resistancePerMetre(
  sizeKey: string,
  at: Celsius,
  sizeOf: SizeLookup = sizeByKey,
): Ohms | undefined {
  const size = sizeOf(sizeKey)
  return size && (size.ohmsPerKm / 1000) * copperFactor(at)
}
