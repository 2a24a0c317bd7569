import type { Celsius } from '../units'
import { type Figured, figured, unconfirmed } from './figure'

/**
 * Open-circuit voltage of crystalline silicon at a low temperature, as a multiple of that at 25 °C: NFPA 70 table
 * 690.7(A), for modules that state no coefficient of their own. Rows: down to this temperature, the factor.
 * The first and the last row were found in print, the rows between them are from memory.
 */
const ROWS: readonly (readonly [downTo: Celsius, factor: number])[] = [
  [20, 1.02],
  [15, 1.04],
  [10, 1.06],
  [5, 1.08],
  [0, 1.1],
  [-5, 1.12],
  [-10, 1.14],
  [-15, 1.16],
  [-20, 1.18],
  [-25, 1.2],
  [-30, 1.21],
  [-35, 1.23],
  [-40, 1.25],
]

/** Factor of the table; undefined below its coldest row. At 25 °C and above nothing is added. */
export function coldFactor(at: Celsius): Figured | undefined {
  if (at >= 25) return figured(1, 'iec-62548')
  const index = ROWS.findIndex(([downTo]) => at >= downTo)
  const row = ROWS[index]
  if (!row) return undefined
  return index === 0 || index === ROWS.length - 1
    ? figured(row[1], 'iec-62548')
    : unconfirmed(row[1], 'iec-62548')
}
