/**
 * The usual forms of terminal, and what is put on the end of a conductor for each. Keys stand in files. Common practice, no
 * source; widths of tabs as in IEC 61210, ferrules as in DIN 46228, both from memory.
 */
export const FITTING_TITLES = {
  M4: 'Screw M4',
  M5: 'Stud or screw M5',
  M6: 'Stud M6',
  M8: 'Stud M8',
  M10: 'Stud M10',
  M12: 'Stud M12',
  'post M8': 'Battery post, clamp with an M8 bolt',
  'blade 4.8': 'Tab 4.8 mm, push-on',
  'blade 6.3': 'Tab 6.3 mm, push-on',
  'blade 8': 'Tab 8 mm, push-on',
  'blade 9.5': 'Tab 9.5 mm, push-on',
  'clamp 2.5': 'Screw clamp to 2.5 mm²',
  'clamp 4': 'Screw clamp to 4 mm²',
  'clamp 10': 'Screw clamp to 10 mm²',
  'clamp 16': 'Screw clamp to 16 mm²',
  'clamp 35': 'Screw clamp to 35 mm²',
  tail: 'Wire tail, to be joined',
  splice: 'Splice, ends crimped together',
  contact: 'Contact of the connector',
  'PV connector': 'PV connector',
  unknown: 'Not stated',
} as const
export type FittingKey = keyof typeof FITTING_TITLES

/** What is made or fitted at a terminal of one form. */
export interface Fitting {
  /** One of it, as the workshop orders it: "Ring lug". */
  readonly piece: string
  /** Behind the size of the conductor: "× M8", "ferrule". */
  readonly short: string
  /** Who shares a piece: each end has its own, all ends at a terminal share one, or all at the part do. */
  readonly one: 'end' | 'terminal' | 'part'
  /** What two ends at one terminal share; absent: each has its own piece all the same. */
  readonly double?: string
  /** Fitted once to the terminal itself. */
  readonly also?: string
  /** How many conductors a terminal takes: four lugs to a stud, two in a double push-on or a twin ferrule. */
  readonly takes?: number
}

const ring = (stud: string): Fitting => ({ piece: 'Ring lug', short: `× ${stud}`, one: 'end', takes: 4 })
const pushOn = (tab: string): Fitting => ({
  piece: 'Push-on receptacle',
  double: 'Double push-on receptacle',
  short: `push-on ${tab}`,
  one: 'end',
  takes: 2,
})
const FERRULE: Fitting = { piece: 'Ferrule', double: 'Twin ferrule', short: 'ferrule', one: 'end', takes: 2 }

const FITTINGS: ReadonlyMap<string, Fitting> = new Map<FittingKey, Fitting>([
  ...(['M4', 'M5', 'M6', 'M8', 'M10', 'M12'] as const).map((stud): [FittingKey, Fitting] => [
    stud,
    ring(stud),
  ]),
  ['post M8', { ...ring('M8'), short: '× M8 on post clamp', also: 'Battery post clamp' }],
  ...(['4.8', '6.3', '8', '9.5'] as const).map((tab): [FittingKey, Fitting] => [`blade ${tab}`, pushOn(tab)]),
  ...(['2.5', '4', '10', '16', '35'] as const).map((to): [FittingKey, Fitting] => [`clamp ${to}`, FERRULE]),
  ['tail', { piece: 'Crimp joint', short: 'crimp joint', one: 'terminal', takes: 3 }],
  ['splice', { piece: 'Crimp splice', short: 'in splice', one: 'part' }],
  ['contact', { piece: 'Connector contact', short: 'connector contact', one: 'end', takes: 1 }],
  ['PV connector', { piece: 'PV connector', short: 'PV connector', one: 'end', takes: 1 }],
])

/** What belongs on a terminal of this form; undefined for a form that the table does not know. */
export const fittingOf = (form: string): Fitting | undefined => FITTINGS.get(form)
