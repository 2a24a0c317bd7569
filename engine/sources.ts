/**
 * Where figures come from. confirmed: read in the source itself. restated: read in a public page that restates a
 * sold standard. from memory: not confirmed; marked so on screen and paper. common practice: the trade's habit,
 * no published source.
 */
export type SourceStatus = 'confirmed' | 'restated' | 'from memory' | 'common practice'

export interface Source {
  readonly title: string
  readonly edition: string
  readonly status: SourceStatus
  readonly note: string
}

export const SOURCES = {
  'cfr-183-425': {
    title: 'US 33 CFR 183.425, Conductors: general',
    edition: 'as published by the Office of the Federal Register',
    status: 'confirmed',
    note: 'Federal law for boats with petrol engines; a benchmark for vehicles, not a duty. Table 5, 30 °C ambient.',
  },
  'cfr-183-455': {
    title: 'US 33 CFR 183.455, Overcurrent protection: general',
    edition: 'as published by the Office of the Federal Register',
    status: 'confirmed',
    note: 'Lengths ahead of the first device; devices of up to 150 % of the table current below 50 V.',
  },
  'cfr-engine-space': {
    title: 'US 33 CFR 183.425, Table 5, note 1: engine spaces',
    edition: 'as published by the Office of the Federal Register',
    status: 'from memory',
    note: 'Factors other than that of 105 °C insulation, which three published ratings confirm. They follow √((T-50)/(T-30)) within 0.01, except at 200 °C.',
  },
  'iso-6722-3': {
    title: 'DIN ISO 6722-3, road vehicle cables, thick wall',
    edition: 'edition not stated by the page that restates it',
    status: 'restated',
    note: 'Guide currents of single PVC conductors, conductor at 70 °C, for 30 and 50 °C ambient.',
  },
  'iec-60228': {
    title: 'IEC 60228, conductors of insulated cables, class 5',
    edition: 'edition not stated by the pages that restate it',
    status: 'restated',
    note: 'Largest resistance at 20 °C, plain copper; three pages agree.',
  },
  'astm-b258': {
    title: 'ASTM B258, American wire gauge; NBS Handbook 100, copper wire tables',
    edition: 'NBS Handbook 100, 1966',
    status: 'restated',
    note: 'Diameters 0.127 mm · 92^((36-n)/39); three tables agree. Solid conductor; stranded is commonly about 2 % higher.',
  },
  'nbs-100': {
    title: 'NBS Handbook 100, copper wire tables: copper constants',
    edition: '1966',
    status: 'from memory',
    note: '1/58 Ω·mm²/m and 0.00393 for each kelvin at 20 °C; both reproduce published tables to four digits.',
  },
  'au-cable-charts': {
    title: 'Published strandings of Australian auto and B&S cable',
    edition: 'two trade charts',
    status: 'restated',
    note: 'Sections from strand counts. For 3 mm auto the charts differ (1.13 and 0.85 mm²).',
  },
  'au-nz-3001-2': {
    title: 'AS/NZS 3001.2:2022, section 5.4',
    edition: '2022, read in a public guide of the trade',
    status: 'restated',
    note: 'First device within 200 mm of the battery, directly outside its enclosure, or under 1.0 m where suitably enclosed.',
  },
  'abyc-e11-drop': {
    title: 'ABYC E-11, voltage drop',
    edition: 'edition not stated by the pages that restate it',
    status: 'restated',
    note: '3 % for critical circuits, 10 % for others; two pages agree.',
  },
  'abyc-e11-bundles': {
    title: 'ABYC E-11, conductors in a bundle',
    edition: 'edition not stated by the page that restates it',
    status: 'restated',
    note: 'Editions differ on whether it holds below 50 V; applied here, which is the careful reading.',
  },
  'iec-60364-5-52': {
    title: 'IEC 60364-5-52, ambient temperature and grouping',
    edition: 'edition not stated by the pages that restate it',
    status: 'restated',
    note: 'Ambient factors of PVC 70 °C at 40 to 55 °C confirmed through a printed table; grouping of 1 to 6, 8 and 20 circuits seen on pages, others from memory.',
  },
  'iec-60364-4-43': {
    title: 'IEC 60364-4-43, protection against overcurrent',
    edition: 'edition not stated by the guide that restates it',
    status: 'restated',
    note: 'Design current ≤ device rating ≤ current of the conductor; k of the short-circuit law.',
  },
  'gg-selectivity': {
    title: 'Published application guidance to gG fuse-links (IEC 60269)',
    edition: "a fuse maker's guide",
    status: 'restated',
    note: 'Two gG links are selective from a ratio of ratings of 1.6 on. Nothing like it is published for automotive classes.',
  },
  'lug-ranges': {
    title: 'Cross-sections for which ring lugs are commonly made',
    edition: '',
    status: 'common practice',
    note: 'No published source; makers differ at both ends of a range.',
  },
  'nec-continuous': {
    title: 'NFPA 70, 210.19 and 215.2: continuous loads at 125 %',
    edition: 'edition not stated by the article that restates it',
    status: 'restated',
    note: 'A device carries 80 % of its rating continuously unless made for 100 %.',
  },
  'nec-240-6': {
    title: 'NFPA 70, 240.6: standard ratings',
    edition: 'edition not stated by the page that restates it',
    status: 'restated',
    note: '15 to 600 A.',
  },
  'din-72581': {
    title: 'DIN 72581-3 and ISO 8820, ratings and colours of blade fuses',
    edition: 'edition not stated by the pages that restate it',
    status: 'restated',
    note: 'Blade 1 to 40 A, large blade 20 to 120 A; two pages agree. Operating times of the large blade from one.',
  },
  'iso-8820-3': {
    title: 'ISO 8820-3, blade fuses: operating times',
    edition: 'not confirmed',
    status: 'from memory',
    note: 'Limits of a class of fuses, not a curve; the data of the fuse at hand prevail.',
  },
  'iso-8820-5': {
    title: 'ISO 8820-5, bolt-in fuses',
    edition: 'not confirmed',
    status: 'from memory',
    note: 'Ratings up to 500 A and limits of operating times for the 51 mm hole spacing.',
  },
  'iso-10133-near': {
    title: 'ISO 10133, first device within 200 mm of the source',
    edition: 'not confirmed',
    status: 'from memory',
    note: 'Otherwise the conductor is in a protective covering up to the device.',
  },
  'iso-10133-drop': {
    title: 'ISO 10133, voltage drop of 10 % at full load',
    edition: 'not confirmed',
    status: 'from memory',
    note: '3 % for safety equipment and panel mains was read in an excerpt; the general 10 % was not.',
  },
  'ambient-law': {
    title: 'Current of a conductor goes with the square root of its temperature rise',
    edition: '',
    status: 'confirmed',
    note: 'Heat made goes with the square of the current, heat given off with the rise. Reproduces the printed factors of PVC 70 °C at 40 to 55 °C within 0.01.',
  },
  'mains-drop-au-nz': {
    title: 'AS/NZS 3000:2018, 3.6.2, voltage drop',
    edition: '2018, restated by one page',
    status: 'restated',
    note: '5 % from the supply to the load, written for low voltage. The limit of AS/NZS 3001.2 for extra-low voltage was not found.',
  },
  'iso-10133-least': {
    title: 'ISO 10133:2012, least conductor sizes',
    edition: '2012, excerpt',
    status: 'restated',
    note: '1 mm² laid alone, 0.75 mm² inside a sheath.',
  },
  'iec-60757': {
    title: 'IEC 60757, code of colours',
    edition: '2021, excerpt',
    status: 'restated',
    note: 'Letters of colours.',
  },
  'din-46234': {
    title: 'DIN 46234 and DIN 46235, cable lugs: holes for studs',
    edition: 'not confirmed',
    status: 'from memory',
    note: 'Trade practice. For M6 the standards differ, 6.4 and 6.5 mm.',
  },
  'iec-60028': {
    title: 'IEC 60028, annealed copper: 8.89 g/cm³ at 20 °C',
    edition: 'not confirmed',
    status: 'from memory',
    note: 'Mass of copper from the nominal section; the metric series may hold a little less copper than its name says.',
  },
  'abyc-colours': {
    title: 'ABYC E-11, colours of DC conductors',
    edition: 'edition not stated by the page that restates it',
    status: 'restated',
    note: 'Red positive, black or yellow negative.',
  },
  'din-72551': {
    title: 'DIN 72551, colours in road vehicles',
    edition: 'not confirmed',
    status: 'from memory',
    note: '31 brown, 30 red, 15 black.',
  },
  'battery-shunt': {
    title: 'The battery shunt stands in the only way between the battery and everything else',
    edition: '',
    status: 'common practice',
    note: 'Follows from where the current goes.',
  },
  'shunt-continuous': {
    title: "Makers' guidance on shunts",
    edition: 'two guides',
    status: 'restated',
    note: 'Two thirds of the rated current for continuous use.',
  },
  'nfpa-552': {
    title: 'NFPA 70 article 552, low voltage in recreational vehicles',
    edition: '2008, read in a public page that restates it',
    status: 'restated',
    note: 'The bond from a battery to the frame: copper of 8 AWG at least, and no thinner than the battery lead.',
  },
  'iec-62548': {
    title: 'IEC 62548 and NFPA 70 article 690, PV arrays',
    edition: 'read in published sample calculations',
    status: 'restated',
    note: 'Cold open-circuit voltage, 1.25 and 1.56 factors, string fuses of 1.5 to 2.4 times the short-circuit current.',
  },
  'load-side-shunt': {
    title: 'Every load returns through the load-side shunt and nothing else does',
    edition: '',
    status: 'common practice',
    note: 'Follows from where the current goes.',
  },
  method: {
    title: 'Computed from the drawing',
    edition: '',
    status: 'confirmed',
    note: "Kirchhoff's and Ohm's laws on the drawn network; no table stands behind it.",
  },
  rating: {
    title: 'The rating stated for the part',
    edition: '',
    status: 'confirmed',
    note: 'Typed on the card of the part, from its maker.',
  },
  'rule-set': {
    title: 'The rule set of the design',
    edition: '',
    status: 'confirmed',
    note: 'Its name, edition and the source of each of its figures are printed with the checks.',
  },
  'common-practice': {
    title: 'Common practice of the trade',
    edition: '',
    status: 'common practice',
    note: 'No published source.',
  },
  'laying-methods': {
    title: 'BS 7671 Table 4D1A (methods of IEC 60364-5-52)',
    edition: 'a public forum restates it: 25 mm², PVC 70 °C, A 80, B 101, C 114, F 126 A',
    status: 'restated',
    note: 'Method B against F, 0.80, taken for every size.',
  },
  'thermal-insulation': {
    title: 'IEC 60364-5-52 clause 523, cables in thermal insulation',
    edition: '',
    status: 'from memory',
    note: 'Half of the current where a cable lies wholly in thermal insulation for 0.5 m or more.',
  },
  own: {
    title: "The designer's own figure",
    edition: '',
    status: 'common practice',
    note: 'Typed by the designer of this drawing.',
  },
} as const satisfies Readonly<Record<string, Source>>

export type SourceKey = keyof typeof SOURCES

/** The source behind a key; undefined for a key that is not in the list. */
export function sourceOf(key: string): Source | undefined {
  return Object.hasOwn(SOURCES, key) ? SOURCES[key as SourceKey] : undefined
}
