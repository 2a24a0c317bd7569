import type { Celsius, Metres, SquareMillimetres } from '../units'
import { type AmbientFactor, cfrAmbient, iecAmbient } from './ambient'
import { type AmpacityTable, CFR_TABLE_5, ISO_6722_3 } from './ampacitytables'
import { abycBunched, type BunchFactor, iecBunched } from './bunching'
import { type Figured, figured, unconfirmed } from './figure'
import type { SizeSeries } from './sizes'
import { type SurroundFactor, usualSurround } from './surround'

/** How careful a circuit's voltage drop is looked at. critical: feeders, electronics, lights for safety, pumps for safety. */
export type CircuitClass = 'critical' | 'general'

/** A rule set: figures and factors with their sources. Local codes prevail over every one of them. */
export interface RuleSet {
  /** Permanent key, written to files. */
  readonly key: string
  readonly title: string
  readonly edition: string
  /** One or two sentences: what it stands on, and what it does not know. */
  readonly about: string
  /** Size series that sizing chooses from. */
  readonly series: readonly SizeSeries[]
  /** Insulation of a conductor that does not state its own. */
  readonly insulationC: Celsius
  readonly ampacity: AmpacityTable
  readonly ambientFactor: AmbientFactor
  readonly bunchFactor: BunchFactor
  readonly surroundFactor: SurroundFactor
  /** A device may be rated for this share of the ampacity of what it protects. */
  readonly deviceShare: Figured
  /** A device carries this share of its rating continuously, unless it is made for all of it. */
  readonly continuousShare: Figured
  /** Longest conductor between a source and the first device, m; `sheathed`: in a sheath or enclosure throughout. */
  readonly nearSource: { readonly open: Figured; readonly sheathed: Figured }
  /** Largest voltage drop, out and return together, % of the system voltage. */
  readonly dropPercent: Readonly<Record<CircuitClass, Figured>>
  /** Conductor temperature at which drop is worked out, °C. */
  readonly dropAtC: Figured
  /** Thinnest conductor laid by itself, and inside a sheath, mm² of copper. */
  readonly leastMm2: { readonly open: Figured; readonly sheathed: Figured }
  /** IEC 60757 letters by what a conductor carries. Those of sense, data and mains only tell them apart. */
  readonly colours: Readonly<Record<'positive' | 'negative' | 'sense' | 'data' | 'mains', string>>
}

const DROP_AT_C = figured(70, 'common-practice')
const CONTINUOUS = figured(0.8, 'nec-continuous')
const LEAST = { open: figured(1, 'iso-10133-least'), sheathed: figured(0.75, 'iso-10133-least') }

const US_CFR: RuleSet = {
  key: 'us-33cfr183',
  title: 'US 33 CFR 183, wiring below 50 V',
  edition: '33 CFR 183.425 and 183.455, with voltage drop and bundles after ABYC E-11',
  about:
    'Openly published federal law for boats with petrol engines, taken as a benchmark for vehicles. It allows a device of up to 150 % of the table current.',
  series: ['awg'],
  insulationC: 105,
  ampacity: CFR_TABLE_5,
  ambientFactor: cfrAmbient,
  bunchFactor: abycBunched,
  surroundFactor: usualSurround,
  deviceShare: figured(1.5, 'cfr-183-455'),
  continuousShare: CONTINUOUS,
  nearSource: { open: figured(0.1778, 'cfr-183-455'), sheathed: figured(1.016, 'cfr-183-455') },
  dropPercent: { critical: figured(3, 'abyc-e11-drop'), general: figured(10, 'abyc-e11-drop') },
  dropAtC: DROP_AT_C,
  leastMm2: { open: figured(1.309, 'cfr-183-425'), sheathed: figured(0.823, 'cfr-183-425') },
  colours: { positive: 'RD', negative: 'BK', sense: 'VT', data: 'GY', mains: 'BK' },
}

const METRIC_AUTOMOTIVE: RuleSet = {
  key: 'metric-automotive',
  title: 'Metric automotive cable',
  edition: 'DIN ISO 6722-3 guide currents; factors after IEC 60364-5-52',
  about:
    'Guide currents of 70 °C PVC, taken for every better insulation as well. A device is rated no higher than the conductor.',
  series: ['metric'],
  insulationC: 70,
  ampacity: ISO_6722_3,
  ambientFactor: iecAmbient,
  bunchFactor: iecBunched,
  surroundFactor: usualSurround,
  deviceShare: figured(1, 'iec-60364-4-43'),
  continuousShare: CONTINUOUS,
  nearSource: { open: unconfirmed(0.2, 'iso-10133-near'), sheathed: unconfirmed(0.2, 'iso-10133-near') },
  dropPercent: { critical: figured(3, 'abyc-e11-drop'), general: unconfirmed(10, 'iso-10133-drop') },
  dropAtC: DROP_AT_C,
  leastMm2: LEAST,
  colours: { positive: 'RD', negative: 'BN', sense: 'VT', data: 'GY', mains: 'BK' },
}

const CARAVAN_AU_NZ: RuleSet = {
  key: 'caravan-au-nz',
  title: 'Caravan and trailer practice, Australia and New Zealand',
  edition: 'lengths after AS/NZS 3001.2:2022 section 5.4; currents after DIN ISO 6722-3',
  about:
    "The lengths were read in a public guide. The standard's own current and drop figures are not free and are not used: currents are the guide currents of 70 °C PVC by true cross-section, drop limits are common practice.",
  series: ['metric', 'auto', 'bs-au'],
  insulationC: 70,
  ampacity: ISO_6722_3,
  ambientFactor: iecAmbient,
  bunchFactor: iecBunched,
  surroundFactor: usualSurround,
  deviceShare: figured(1, 'iec-60364-4-43'),
  continuousShare: CONTINUOUS,
  nearSource: { open: figured(0.2, 'au-nz-3001-2'), sheathed: figured(1, 'au-nz-3001-2') },
  dropPercent: { critical: unconfirmed(3, 'common-practice'), general: unconfirmed(5, 'mains-drop-au-nz') },
  dropAtC: DROP_AT_C,
  leastMm2: LEAST,
  colours: { positive: 'RD', negative: 'BK', sense: 'VT', data: 'GY', mains: 'BK' },
}

export const RULE_SETS: readonly RuleSet[] = [METRIC_AUTOMOTIVE, CARAVAN_AU_NZ, US_CFR]

/** The rule set of a key; undefined for one that this version does not know. */
export const ruleSetByKey = (key: string): RuleSet | undefined => RULE_SETS.find((set) => set.key === key)

/** Longest run that the rule set allows ahead of the first device. */
export const nearSourceM = (set: RuleSet, sheathed: boolean): Metres =>
  (sheathed ? set.nearSource.sheathed : set.nearSource.open).value

/** Thinnest copper that the rule set allows. */
export const leastSectionMm2 = (set: RuleSet, sheathed: boolean): SquareMillimetres =>
  (sheathed ? set.leastMm2.sheathed : set.leastMm2.open).value
