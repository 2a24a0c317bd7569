import type { Celsius, Ohms } from '../units'
import { copperFactor } from './copper'
import { sizeByKey } from './sizes'

/** Ω for each metre of a size at a conductor temperature; undefined for a size that is not in the catalogue. */
export function resistancePerMetre(sizeKey: string, at: Celsius): Ohms | undefined {
  const size = sizeByKey(sizeKey)
  return size && (size.ohmsPerKm / 1000) * copperFactor(at)
}
