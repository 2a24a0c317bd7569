import { byTime } from '../../edit/commissioning'
import type { TestEntry, TestSigning } from '../../model/commissioning'
import type { Design } from '../../model/design'
import { partById } from '../../model/lookup'
import { asThen, heldTo, isSameExpectation } from './expected'
import { type EntryResult, resultOf } from './result'
import type { Expected, Reading, StepGroup, TestStep } from './step'
import { STEP_GROUPS } from './step'
import { commissioningSteps } from './steps'

/** How a reading stands: by its newest entry. A pass against other expectations than today's counts for nothing. */
export type ReadingState = 'passed' | 'failed' | 'out-of-date' | 'not-done'

export interface EntryRecord {
  readonly entry: TestEntry
  readonly result: EntryResult
  /** Something else was expected then than is today, or of something else. */
  readonly outOfDate: boolean
  /** First signature that covers it; null: none. */
  readonly signed: TestSigning | null
  /** It came after a signature, and none covers it. */
  readonly afterSigning: boolean
}

export interface ReadingRecord {
  readonly reading: Reading
  /** With what it is held against, where that has been measured. */
  readonly expected: Expected
  readonly state: ReadingState
  /** Oldest first. */
  readonly entries: readonly EntryRecord[]
}

export interface Counts {
  readonly passed: number
  readonly failed: number
  readonly outOfDate: number
  readonly notDone: number
}

export interface StepRecord {
  readonly step: TestStep
  /** Failed where one reading is; passed where all are. */
  readonly state: ReadingState
  readonly readings: readonly ReadingRecord[]
}

export interface GroupRecord {
  readonly group: StepGroup
  readonly steps: readonly StepRecord[]
  /** Of readings. */
  readonly counts: Counts
}

export interface CommissioningRecord {
  /** Those with steps, in order. */
  readonly groups: readonly GroupRecord[]
  readonly counts: Counts
  /** Entries of tests that the design does not ask for any more; they stay in the record. */
  readonly gone: readonly EntryRecord[]
  /** Oldest first. */
  readonly signings: readonly TestSigning[]
}

/** The record of a design as it stands: steps with what was found, computed anew from its lines. O(steps + lines). `asked`: its steps, where they are known. */
export function commissioningRecord(
  design: Design,
  asked: readonly TestStep[] = commissioningSteps(design),
): CommissioningRecord {
  const lines = [...(design.commissioning ?? [])].sort(byTime)
  const signings = lines.flatMap((r) => (r.is === 'signing' ? [r] : []))
  const signedBy = new Map<string, TestSigning>()
  for (const s of signings) for (const id of s.covers) if (!signedBy.has(id)) signedBy.set(id, s)
  const byReading = new Map<string, TestEntry[]>()
  for (const r of lines) {
    if (r.is !== 'entry') continue
    const key = keyOf(r.step, r.reading)
    byReading.set(key, [...(byReading.get(key) ?? []), r])
  }
  const recorded = (entry: TestEntry, outOfDate: boolean): EntryRecord => {
    const signed = signedBy.get(entry.id) ?? null
    const afterSigning = signed === null && signings.length > 0
    return { entry, result: resultOf(entry), outOfDate, signed, afterSigning }
  }
  const steps = asked.map((step) => stepRecord(design, step, byReading, recorded))
  const known = new Set(steps.flatMap((s) => s.readings.map((r) => keyOf(s.step.key, r.reading.key))))
  const gone = [...byReading].flatMap(([key, entries]) =>
    known.has(key) ? [] : entries.map((e) => recorded(e, true)),
  )
  const groups = STEP_GROUPS.flatMap((group): GroupRecord[] => {
    const own = steps.filter((s) => s.step.group === group)
    return own.length === 0 ? [] : [{ group, steps: own, counts: countsOf(own) }]
  })
  return { groups, counts: countsOf(steps), gone, signings }
}

const keyOf = (step: string, reading: string): string => `${step}\n${reading}`

function stepRecord(
  design: Design,
  step: TestStep,
  entries: ReadonlyMap<string, readonly TestEntry[]>,
  recorded: (entry: TestEntry, outOfDate: boolean) => EntryRecord,
): StepRecord {
  const of = subjectOf(design, step)
  const ofReading = (key: string): readonly TestEntry[] => entries.get(keyOf(step.key, key)) ?? []
  const readings = step.readings.map((reading): ReadingRecord => {
    const against = reading.expected.is === 'figure' ? reading.expected.against : undefined
    const other = against && ofReading(against.reading).at(-1)?.found
    const expected = heldTo(reading.expected, typeof other === 'number' ? other : undefined)
    const now = asThen(expected)
    const own = ofReading(reading.key).map((e) =>
      recorded(e, e.of !== of || !isSameExpectation(e.expected, now)),
    )
    return { reading, expected, state: stateOf(own), entries: own }
  })
  return { step, state: together(readings.map((r) => r.state)), readings }
}

function stateOf(entries: readonly EntryRecord[]): ReadingState {
  const last = entries.at(-1)
  if (!last) return 'not-done'
  if (last.result === 'failed') return 'failed'
  return last.outOfDate ? 'out-of-date' : 'passed'
}

function together(states: readonly ReadingState[]): ReadingState {
  if (states.includes('failed')) return 'failed'
  if (states.includes('out-of-date')) return 'out-of-date'
  return states.every((s) => s === 'passed') ? 'passed' : 'not-done'
}

function countsOf(steps: readonly StepRecord[]): Counts {
  const states = steps.flatMap((s) => s.readings.map((r) => r.state))
  const count = (state: ReadingState): number => states.filter((s) => s === state).length
  return {
    passed: count('passed'),
    failed: count('failed'),
    outOfDate: count('out-of-date'),
    notDone: count('not-done'),
  }
}

/** What a step is about, as an entry keeps it: designation and name of its part, or its place. */
export function subjectOf(design: Design, { parts, place }: TestStep): string {
  if (place !== undefined) return place
  const [part, ...more] = parts.map((id) => partById(design, id)!)
  if (!part || more.length > 0) return ''
  return part.name === '' ? part.designation : `${part.designation} ${part.name}`
}
