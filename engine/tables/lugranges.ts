import type { SourceKey } from '../sources'
import type { SquareMillimetres } from '../units'

/** Cross-sections that go with one form of terminal: lugs that are commonly made for it, or what a clamp holds. */
export interface LugRange {
  readonly leastMm2: SquareMillimetres
  readonly mostMm2: SquareMillimetres
  readonly source: SourceKey
}

const range = (leastMm2: number, mostMm2: number): LugRange => ({ leastMm2, mostMm2, source: 'lug-ranges' })

/** By what a terminal takes, as the part kinds name it. Common practice, no source: makers' ranges differ at both ends. */
const RANGES: ReadonlyMap<string, LugRange> = new Map([
  ['blade 4.8', range(0.5, 2.5)],
  ['blade 6.3', range(0.5, 6)],
  ['blade 8', range(0.5, 16)],
  ['blade 9.5', range(1.5, 10)],
  ['clamp 2.5', range(0.2, 2.5)],
  ['clamp 4', range(0.5, 4)],
  ['clamp 10', range(0.75, 10)],
  ['clamp 16', range(1, 16)],
  ['clamp 35', range(2.5, 35)],
  ['PV connector', range(1.5, 10)],
  ['M4', range(0.5, 10)],
  ['M5', range(0.5, 25)],
  ['M6', range(0.5, 70)],
  ['M8', range(0.75, 120)],
  ['post M8', range(0.75, 120)],
  ['M10', range(1.5, 240)],
  ['M12', range(6, 300)],
])

/** Range of a form of terminal; undefined for one that takes any, or that the table lacks. */
export const lugRange = (stud: string): LugRange | undefined => RANGES.get(stud)
