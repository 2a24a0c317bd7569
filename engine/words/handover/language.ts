import type { Chemistry } from '../../calc/handover/stores'

/** Chapters of the handover pack, in their order; keys are permanent. */
export const CHAPTERS = [
  'emergency',
  'finder',
  'switches',
  'picture',
  'places',
  'readings',
  'everyday',
  'storage',
  'care',
  'cautions',
  'drawing',
  'tests',
  'contacts',
] as const
export type ChapterKey = (typeof CHAPTERS)[number]

interface Headed {
  readonly title: string
  /** The question that it answers, for the front page. */
  readonly question: string
  readonly lead: string
}

/**
 * Everything that the handover pack says, in one language. Names and places are the design's own words and stay as they
 * are written there; figures come with their unit. A language is one file that fills this in; `languages.ts` lists it.
 */
export interface HandoverWords {
  /** What the language is called in itself. */
  readonly name: string
  /** BCP 47, for figures and for the page. */
  readonly locale: string
  readonly and: string
  readonly chapters: Readonly<Record<ChapterKey, Headed>>
  /** Kinds of part by key, for parts without a name. */
  readonly kinds: Readonly<Record<string, string>>
  readonly chemistries: Readonly<Record<Chemistry, string>>
  /** Colours of fuse bodies, by their English name. */
  readonly colours: Readonly<Record<string, string>>
  readonly cover: {
    readonly title: string
    readonly forCustomer: string
    readonly vehicle: string
    readonly system: (volts: string) => string
    readonly builtBy: string
    readonly drawnBy: string
    readonly revision: string
    readonly notIssued: (revision: string) => string
    readonly changedSince: (revision: string) => string
    readonly date: string
    readonly find: string
    readonly chapter: (n: string) => string
    readonly notStated: string
  }
  /** The pack as a whole: its contents, its page numbers. */
  readonly pack: {
    readonly contents: string
    readonly living: string
    readonly others: string
    readonly attached: string
    readonly page: (n: string, of: string) => string
  }
  readonly emergency: {
    readonly first: string
    readonly engine: (name: string) => string
    readonly mains: (name: string) => string
    readonly battery: (name: string) => string
    readonly array: (name: string) => string
    readonly noBatterySwitch: string
    readonly staysLive: string
    readonly posts: (names: string) => string
    readonly unswitched: (names: string) => string
    readonly light: (names: string) => string
    readonly joined: (names: string) => string
    readonly goOn: (names: string) => string
    readonly lastFuse: (names: string) => string
    readonly gas: string
    readonly runOn: (names: string) => string
    readonly holds: (names: string) => string
    readonly sunFed: (names: string) => string
    readonly calm: string
    readonly practise: string
  }
  readonly finder: {
    readonly seek: string
    readonly none: string
    readonly rules: readonly string[]
    readonly allDead: string
    readonly mayBeEmpty: string
    readonly switchedItself: string
    readonly mustBeOn: (names: string) => string
    readonly next: string
    readonly fuse: (block: string, way: string, label: string) => string
    readonly breaker: (name: string) => string
    readonly several: (names: string) => string
    readonly group: (block: string) => string
    readonly together: (names: string) => string
    readonly switching: string
    readonly bolted: string
    readonly noRating: string
    readonly noFuse: string
    readonly notFed: string
  }
  readonly switches: {
    readonly hand: string
    readonly breaker: string
    readonly plug: string
    readonly itself: string
    readonly off: (names: string) => string
    readonly drawn: (names: string) => string
    readonly notUnderLoad: string
    readonly before: (name: string) => string
    readonly opens: (names: string) => string
    readonly nothing: string
    readonly goesOn: (names: string) => string
    readonly none: string
    readonly always: string
    readonly alwaysLead: (names: string) => string
    readonly alwaysNone: (names: string) => string
  }
  readonly picture: {
    readonly charging: string
    readonly stores: string
    readonly divided: string
    readonly ownFuse: string
    readonly behind: (fuse: string) => string
    readonly through: (name: string) => string
    readonly stands: string
  }
  readonly places: { readonly noPlace: string }
  readonly readings: {
    readonly battery: string
    readonly load: string
    readonly allOn: string
    readonly switchedOff: string
    readonly watching: string
    readonly out: (amps: string) => string
    readonly into: (amps: string) => string
    readonly upTo: (amps: string) => string
    readonly notKnown: string
    readonly rating: string
    readonly charging: string
    readonly chargingLead: string
    readonly from: (source: string) => string
    readonly voltage: string
    readonly voltageLead: (chemistry: string) => string
    readonly charge: (percent: string) => string
    readonly about: (figure: string) => string
    readonly limits: string
    readonly mostOut: string
    readonly mostIn: string
    readonly lasting: string
    readonly draws: string
    readonly drawsLead: string
    readonly mostOutEach: string
    readonly mostInEach: string
    readonly lossLine: (drawn: string, lost: string, percent: string) => string
    readonly lasts: (hours: string) => string
    readonly shorter: string
    readonly idle: (watts: string, days: string) => string
    readonly differ: string
    readonly leftOut: (names: string) => string
    readonly shownAt: (names: string) => string
    readonly noMeter: string
    readonly basis: string
  }
  readonly everyday: {
    readonly look: string
    readonly keep: Readonly<Record<Chemistry, string>>
    readonly sun: (names: string) => string
    readonly engine: (names: string) => string
    readonly mains: (names: string) => string
    readonly inverter: (names: string) => string
    readonly leaving: (names: string) => string
    readonly stayOn: (names: string) => string
    readonly cutOut: (names: string) => string
    readonly plugs: (names: string) => string
    readonly plugAfter: (plug: string, first: string) => string
    readonly maker: string
  }
  readonly storage: {
    readonly charge: Readonly<Record<Chemistry, string>>
    readonly stop: string
    readonly mains: (names: string) => string
    readonly cover: (names: string) => string
    readonly switchOff: (names: string) => string
    readonly cannot: string
    readonly drain: (days: string) => string
    readonly offDraws: string
    readonly again: Readonly<Record<Chemistry, string>>
    readonly starting: (names: string) => string
    readonly frost: string
    readonly back: string
  }
  readonly care: {
    readonly monthly: string
    readonly yearly: string
    readonly firstDrives: string
    readonly look: string
    readonly level: string
    readonly modules: string
    readonly inOrder: (names: string) => string
    readonly alone: (name: string) => string
    readonly dark: string
    readonly breakers: (names: string) => string
    readonly senders: (names: string) => string
    readonly spares: (ratings: string) => string
    readonly terminals: string
    readonly skilled: readonly string[]
    readonly mains: string
    readonly practice: string
  }
  readonly cautions: {
    readonly general: readonly string[]
    readonly lastWord: string
    readonly whoTitle: string
    readonly you: string
    readonly skilled: string
    readonly licensed: string
    readonly ruleSet: (title: string) => string
    readonly notJudged: string
  }
  readonly drawing: {
    readonly inside: string
    readonly show: string
    readonly state: (revision: string, date: string) => string
  }
  readonly tests: {
    readonly none: string
    readonly lead: string
    readonly passed: string
    readonly failed: string
    readonly outOfDate: string
    readonly notDone: string
    readonly mended: (count: string) => string
    readonly signed: (name: string, date: string) => string
    readonly unsigned: string
    readonly ask: string
  }
  readonly contacts: {
    readonly installer: string
    readonly contact: string
    readonly designer: string
    readonly owner: string
    readonly vehicle: string
    readonly askFor: string
  }
}
