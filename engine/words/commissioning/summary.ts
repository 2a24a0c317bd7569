import { type CommissioningRecord, type Counts, commissioningRecord } from '../../calc/commissioning/record'
import type { StepGroup } from '../../calc/commissioning/step'
import type { Design } from '../../model/design'
import { GROUP_WORDS } from './groups'
import { readingWords } from './readings'
import { foundWords, momentWords, total } from './states'
import { stepWords } from './steps'

/** What the customer is told of the commissioning. Words stand beside the facts that they are made from. */
export interface CommissioningSummary {
  /** Nothing measured yet; some; every reading passed. */
  readonly state: 'none' | 'some' | 'all-passed'
  readonly counts: Counts
  readonly groups: readonly { readonly group: StepGroup; readonly title: string; readonly counts: Counts }[]
  /** Readings that stand as failed, or were never taken anew after the design changed. */
  readonly open: readonly {
    readonly group: StepGroup
    readonly title: string
    readonly reading: string
    readonly found: string
    readonly state: 'failed' | 'out-of-date'
  }[]
  /** Readings that failed once and passed when they were taken again. */
  readonly mended: number
  readonly signings: readonly { readonly name: string; readonly at: string; readonly remark: string }[]
  /** Entries that no signature covers. */
  readonly unsigned: number
  /** One or two plain sentences. It says what was measured and found, and judges nothing. */
  readonly text: string
}

/** The commissioning of a design for the handover pack. Pure; costs what the steps cost. */
export function commissioningSummary(design: Design): CommissioningSummary {
  const record = commissioningRecord(design)
  const all = readingsIn(record)
  const entries = [...all.flatMap((r) => r.reading.entries), ...record.gone]
  const unsigned = entries.filter((e) => e.signed === null).length
  const mended = all.filter(
    ({ reading: r }) => r.state === 'passed' && r.entries.some((e) => e.result === 'failed'),
  ).length
  const done = total(record.counts) - record.counts.notDone
  const state = done === 0 ? 'none' : record.counts.passed === total(record.counts) ? 'all-passed' : 'some'
  return {
    state,
    counts: record.counts,
    groups: record.groups.map(({ group, counts }) => ({ group, title: GROUP_WORDS[group].title, counts })),
    open: all.flatMap(({ group, step, reading }) => {
      const last = reading.entries.at(-1)
      if (!last || (reading.state !== 'failed' && reading.state !== 'out-of-date')) return []
      const { title } = stepWords(step, design)
      const words = readingWords(reading.reading, design)
      return [{ group, title, reading: words, found: foundWords(last), state: reading.state }]
    }),
    mended,
    signings: record.signings.map(({ name, at, remark }) => ({ name, at: momentWords(at), remark })),
    unsigned,
    text: sentences(state, record, done, mended),
  }
}

const readingsIn = ({ groups }: CommissioningRecord) =>
  groups.flatMap(({ group, steps }) =>
    steps.flatMap(({ step, readings }) => readings.map((reading) => ({ group, step, reading }))),
  )

function sentences(
  state: CommissioningSummary['state'],
  { counts }: CommissioningRecord,
  done: number,
  mended: number,
): string {
  const all = total(counts)
  if (state === 'none') return `None of the ${all} readings of the commissioning has been taken.`
  const again = mended === 0 ? '' : ` ${mended} of them failed first and passed when taken again.`
  if (state === 'all-passed')
    return `All ${all} readings of the commissioning were taken and lay within what was expected.${again}`
  const rest = [
    ...(counts.failed > 0 ? [`${counts.failed} failed`] : []),
    ...(counts.outOfDate > 0 ? [`${counts.outOfDate} were taken before the design was changed`] : []),
    ...(counts.notDone > 0 ? [`${counts.notDone} were not taken`] : []),
  ]
  return `${done} of ${all} readings of the commissioning were taken: ${[`${counts.passed} passed`, ...rest].join(', ')}.${again}`
}
