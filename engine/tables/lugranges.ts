import type { SourceKey } from '../sources'
import type { SquareMillimetres } from '../units'

/** Cross-sections for which ring lugs with a hole for one stud are commonly made. */
export interface LugRange {
  readonly leastMm2: SquareMillimetres
  readonly mostMm2: SquareMillimetres
  readonly source: SourceKey
}

const range = (leastMm2: number, mostMm2: number): LugRange => ({ leastMm2, mostMm2, source: 'lug-ranges' })

/** By what a terminal takes, as the part kinds name it. Common practice, no source: makers' ranges differ at both ends. */
const RANGES: ReadonlyMap<string, LugRange> = new Map([
  ['blade 6.3', range(0.5, 6)],
  ['blade 8', range(0.5, 16)],
  ['PV connector', range(1.5, 10)],
  ['M4', range(0.5, 10)],
  ['M5', range(0.5, 25)],
  ['M6', range(0.5, 70)],
  ['M8', range(0.75, 120)],
  ['M10', range(1.5, 240)],
])

/** Range of a stud or blade; undefined for what is none, or that the table lacks. */
export const lugRange = (stud: string): LugRange | undefined => RANGES.get(stud)
