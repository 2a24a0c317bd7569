import type { SourceKey } from '../sources'
import type { Amps, Celsius, Millimetres, SquareMillimetres } from '../units'
import { COPPER_OHM_MM2_PER_M } from './copper'

/**
 * metric: nominal mm² of IEC 60228. awg: American wire gauge, by law of diameters. auto: Australian "auto cable",
 * named by an outside diameter in mm. bs-au: B&S cable as sold in Australia, whose copper differs from the law. own: of the
 * designer's own catalogue.
 */
export type SizeSeries = 'metric' | 'awg' | 'auto' | 'bs-au' | 'own'

export interface Size {
  /** Permanent key, written to files: "16mm2", "6awg", "1/0awg", "3auto", "8bs". */
  readonly key: string
  /** As printed: "16 mm²", "6 AWG", "3 mm auto (1.13 mm²)". */
  readonly name: string
  readonly series: SizeSeries
  /** Cross-section of the copper; for the metric series the nominal figure, which the standard defines by resistance. */
  readonly sectionMm2: SquareMillimetres
  /** Direct-current resistance at 20 °C, Ω/km. Metric: the largest that the standard allows. */
  readonly ohmsPerKm: number
  /** Largest diameter over the insulation, where the standard gives one. */
  readonly overallMm: Millimetres | null
  readonly source: SourceKey
  /** False: the figure could not be confirmed. */
  readonly confirmed: boolean
  /** What the designer states of an own conductor; null: by section, and as the rule set has it. */
  readonly own?: { readonly amps: Amps | null; readonly insulationC: Celsius | null }
}

/** Nominal mm², Ω/km at 20 °C (IEC 60228 class 5, plain), mm over the insulation (DIN ISO 6722-3, thick wall). */
const CLASS_5: readonly (readonly [mm2: number, ohmsPerKm: number, overallMm: number | null])[] = [
  [0.5, 39.0, null],
  [0.75, 26.0, null],
  [1, 19.5, 2.7],
  [1.5, 13.3, 3.0],
  [2.5, 7.98, 3.6],
  [4, 4.95, 4.4],
  [6, 3.3, 5.0],
  [10, 1.91, 6.5],
  [16, 1.21, 8.3],
  [25, 0.78, 10.4],
  [35, 0.554, 11.6],
  [50, 0.386, 13.5],
  [70, 0.272, 15.5],
  [95, 0.206, 18],
  [120, 0.161, 19.7],
  [150, 0.129, null],
]

/** Gauge, mm², Ω/km at 20 °C, as printed for a solid conductor; a stranded one is commonly about 2 % higher. */
const GAUGES: readonly (readonly [gauge: string, mm2: number, ohmsPerKm: number])[] = [
  ['18', 0.823, 20.95],
  ['16', 1.309, 13.17],
  ['14', 2.081, 8.286],
  ['12', 3.309, 5.211],
  ['10', 5.261, 3.277],
  ['8', 8.366, 2.061],
  ['6', 13.3, 1.296],
  ['4', 21.15, 0.8152],
  ['3', 26.67, 0.6465],
  ['2', 33.63, 0.5127],
  ['1', 42.41, 0.4066],
  ['1/0', 53.48, 0.3224],
  ['2/0', 67.43, 0.2557],
  ['3/0', 85.03, 0.2028],
  ['4/0', 107.2, 0.1608],
]

/**
 * The trap of the trade: "6 mm auto" is an outside diameter, and holds 4.6 mm² of copper. Sections from the common
 * stranding. For 3 mm two published figures stand against each other, 1.13 and 0.85 mm²; the stranding that both
 * quote gives 1.13, marked unconfirmed.
 */
const AUTO_SIZES: readonly (readonly [mm: number, mm2: number, confirmed: boolean])[] = [
  [2, 0.56, true],
  [2.5, 0.64, true],
  [3, 1.13, false],
  [4, 1.84, true],
  [5, 2.9, true],
  [6, 4.59, true],
]

/** B&S cables as sold in Australia: up to 8 % less copper than the gauge of the same number. */
const BS_SIZES: readonly (readonly [gauge: string, mm2: number])[] = [
  ['8', 7.91],
  ['6', 13.56],
  ['3', 25.72],
  ['2', 32.15],
  ['1', 39.55],
  ['0', 49.2],
  ['00', 64.9],
  ['000', 85],
]

export const METRIC: readonly Size[] = CLASS_5.map(([mm2, ohmsPerKm, overallMm]) => ({
  key: `${mm2}mm2`,
  name: `${mm2} mm²`,
  series: 'metric',
  sectionMm2: mm2,
  ohmsPerKm,
  overallMm,
  source: 'iec-60228',
  confirmed: true,
}))

export const AWG: readonly Size[] = GAUGES.map(([gauge, mm2, ohmsPerKm]) => ({
  key: `${gauge}awg`,
  name: `${gauge} AWG`,
  series: 'awg',
  sectionMm2: mm2,
  ohmsPerKm,
  overallMm: null,
  source: 'astm-b258',
  confirmed: true,
}))

export const AUTO: readonly Size[] = AUTO_SIZES.map(([mm, mm2, confirmed]) =>
  fromSection('auto', `${mm}auto`, `${mm} mm auto (${mm2} mm²)`, mm2, confirmed),
)

export const BS_AU: readonly Size[] = BS_SIZES.map(([gauge, mm2]) =>
  fromSection('bs-au', `${gauge}bs`, `${gauge} B&S (${mm2} mm²)`, mm2, true),
)

/** Where no resistance is published, it follows from the copper. */
function fromSection(series: SizeSeries, key: string, name: string, mm2: number, confirmed: boolean): Size {
  return {
    key,
    name,
    series,
    sectionMm2: mm2,
    ohmsPerKm: (1000 * COPPER_OHM_MM2_PER_M) / mm2,
    overallMm: null,
    source: 'au-cable-charts',
    confirmed,
  }
}
