import { type Figured, figured, unconfirmed } from './figure'

/** Factor for a number of current-carrying conductors that run bunched, the one looked at included; null: no figure. */
export type BunchFactor = (conductors: number) => Figured | null

/** ABYC E-11: 3 conductors 0.70, 4 to 6 0.60, 7 to 24 0.50, from 25 on 0.40. */
export const abycBunched: BunchFactor = (n) => {
  if (n <= 2) return figured(1, 'abyc-e11-bundles')
  if (n === 3) return figured(0.7, 'abyc-e11-bundles')
  return figured(n <= 6 ? 0.6 : n <= 24 ? 0.5 : 0.4, 'abyc-e11-bundles')
}

/** IEC 60364-5-52 Table B.52.17, bunched circuits. Between two rows the next larger count is taken. */
const IEC_CIRCUITS: readonly (readonly [circuits: number, factor: Figured])[] = [
  [1, figured(1, 'iec-60364-5-52')],
  [2, figured(0.8, 'iec-60364-5-52')],
  [3, figured(0.7, 'iec-60364-5-52')],
  [4, figured(0.65, 'iec-60364-5-52')],
  [5, figured(0.6, 'iec-60364-5-52')],
  [6, figured(0.57, 'iec-60364-5-52')],
  [7, unconfirmed(0.54, 'iec-60364-5-52')],
  [8, figured(0.52, 'iec-60364-5-52')],
  [9, unconfirmed(0.5, 'iec-60364-5-52')],
  [12, unconfirmed(0.45, 'iec-60364-5-52')],
  [16, unconfirmed(0.41, 'iec-60364-5-52')],
  [20, figured(0.38, 'iec-60364-5-52')],
]

/** A circuit is two loaded conductors, feed and return; an odd one counts as a circuit. */
export const iecBunched: BunchFactor = (n) => {
  const circuits = Math.ceil(n / 2)
  return IEC_CIRCUITS.find(([rows]) => circuits <= rows)?.[1] ?? null
}
