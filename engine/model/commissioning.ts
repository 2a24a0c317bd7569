/** What was expected of a reading when it was taken: bounds of a figure, or words of what was to be seen. */
export interface ExpectedThen {
  /** In the unit of the entry; absent: no bound on that side. */
  readonly least?: number
  readonly most?: number
  /** What was to be seen, in short: "15 A". */
  readonly seen?: string
}

/** One reading that was taken. Entries are added and never changed, so what failed stays beside what was retested. */
export interface TestEntry {
  readonly is: 'entry'
  /** Unlike any other, on whichever device it was made. */
  readonly id: string
  /** Key of the step, and of the reading in it. */
  readonly step: string
  readonly reading: string
  /** What was tested, by the designation and name that it had then: "E4 Diesel heater". May be empty. */
  readonly of: string
  /** The figure measured, or whether it was as it should be. null: a judgement alone. */
  readonly found: number | boolean | null
  /** Of the figure; empty where there is none. */
  readonly unit: string
  /** null: nothing was known to expect; then a person judges, with the reason in `remark`. */
  readonly expected: ExpectedThen | null
  readonly judged?: 'good' | 'bad'
  readonly remark: string
  readonly by: string
  /** ISO 8601, date and time. */
  readonly at: string
}

/** Somebody put their name to what stood there: the entries listed, and what they came to. */
export interface TestSigning {
  readonly is: 'signing'
  readonly id: string
  readonly name: string
  readonly remark: string
  /** ISO 8601, date and time. */
  readonly at: string
  /** Entries that it covers, by id; what is not listed came later. */
  readonly covers: readonly string[]
  /** Readings as they stood then. */
  readonly passed: number
  readonly failed: number
  readonly outOfDate: number
  readonly notDone: number
}

export type TestRecord = TestEntry | TestSigning
