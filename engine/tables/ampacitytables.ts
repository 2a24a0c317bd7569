import type { SourceKey } from '../sources'
import type { Amps, Celsius } from '../units'

/** Ampacity of single copper conductors by size and highest temperature of the insulation, at one ambient. */
export interface AmpacityTable {
  readonly ambientC: Celsius
  /** Insulation temperatures of the columns, °C, coolest first. */
  readonly insulationC: readonly Celsius[]
  /** Size key to amps for each column, thinnest first. */
  readonly rows: readonly (readonly [size: string, amps: readonly Amps[]])[]
  readonly source: SourceKey
  readonly confirmed: boolean
}

/** US 33 CFR 183.425 Table 5: below 50 V, insulated stranded copper. */
export const CFR_TABLE_5: AmpacityTable = {
  ambientC: 30,
  insulationC: [60, 75, 80, 90, 105, 125, 200],
  rows: [
    ['18awg', [10, 10, 15, 20, 20, 25, 25]],
    ['16awg', [15, 15, 20, 25, 25, 30, 35]],
    ['14awg', [20, 20, 25, 30, 35, 40, 45]],
    ['12awg', [25, 25, 35, 40, 45, 50, 55]],
    ['10awg', [40, 40, 50, 55, 60, 70, 70]],
    ['8awg', [55, 65, 70, 70, 80, 90, 100]],
    ['6awg', [80, 95, 100, 100, 120, 125, 135]],
    ['4awg', [105, 125, 130, 135, 160, 170, 180]],
    ['3awg', [120, 145, 150, 155, 180, 195, 210]],
    ['2awg', [140, 170, 175, 180, 210, 225, 240]],
    ['1awg', [165, 195, 210, 210, 245, 265, 280]],
    ['1/0awg', [195, 230, 245, 245, 285, 305, 325]],
    ['2/0awg', [225, 265, 285, 285, 330, 355, 370]],
    ['3/0awg', [260, 310, 330, 330, 385, 410, 430]],
    ['4/0awg', [300, 360, 385, 385, 445, 475, 510]],
  ],
  source: 'cfr-183-425',
  confirmed: true,
}

/** DIN ISO 6722-3 guide currents: single core, PVC, conductor at 70 °C. */
export const ISO_6722_3: AmpacityTable = {
  ambientC: 30,
  insulationC: [70],
  rows: [
    ['1mm2', [19]],
    ['1.5mm2', [24]],
    ['2.5mm2', [32]],
    ['4mm2', [42]],
    ['6mm2', [54]],
    ['10mm2', [73]],
    ['16mm2', [98]],
    ['25mm2', [129]],
    ['35mm2', [158]],
    ['50mm2', [198]],
    ['70mm2', [245]],
    ['95mm2', [292]],
    ['120mm2', [344]],
  ],
  source: 'iso-6722-3',
  confirmed: true,
}
