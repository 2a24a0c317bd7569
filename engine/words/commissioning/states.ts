import type { Counts, EntryRecord, ReadingRecord, ReadingState } from '../../calc/commissioning/record'
import type { TestStep } from '../../calc/commissioning/step'
import type { TestSigning } from '../../model/commissioning'
import type { Design } from '../../model/design'
import { againstWords, amountWords, boundsWords, notExpectedWords, usualWords } from './amounts'
import { seenWords } from './readings'

export const STATE_WORDS: Readonly<Record<ReadingState, string>> = {
  passed: 'Pass',
  failed: 'Fail',
  'out-of-date': 'Out of date',
  'not-done': 'Not done',
}

/** What is expected of a reading: in short, and where it comes from. */
export interface ExpectedWords {
  readonly bounds: string
  readonly from: string
}

export function expectedWords(
  { expected, reading }: ReadingRecord,
  step: TestStep,
  design: Design,
): ExpectedWords {
  if (expected.is === 'not-known') return { bounds: 'Not known,', from: notExpectedWords(expected, design) }
  if (expected.is === 'seen') return { bounds: 'As described', from: seenWords(reading, step) }
  const against = againstWords(expected)
  return {
    bounds: boundsWords(expected.least, expected.most, expected.unit),
    from: [usualWords(expected), ...(against === '' ? [] : [`as ${against}`])]
      .filter((s) => s !== '')
      .join('; '),
  }
}

/** What was found: "13.1 V", "As described", "Judged good". */
export function foundWords({ entry }: EntryRecord): string {
  const { found, unit, judged } = entry
  const words =
    typeof found === 'number'
      ? amountWords(found, unit)
      : found === null
        ? ''
        : found
          ? 'As described'
          : 'Not as described'
  const verdict = judged === undefined ? '' : judged === 'good' ? 'judged good' : 'judged not good'
  return [words, verdict].filter((s) => s !== '').join(', ')
}

/** "J. Smith, 2026-03-04 10:31" */
export const whoWhen = ({ by, at }: { readonly by: string; readonly at: string }): string =>
  [by, momentWords(at)].filter((s) => s !== '').join(', ')

/** A moment as the clock on the wall showed it. */
export const momentWords = (at: string): string => at.slice(0, 16).replace('T', ' ')

/** What an entry was held against, where that is not what is expected now; and whether it came after a signature. */
export function entryNotes({ entry, outOfDate, afterSigning }: EntryRecord): readonly string[] {
  const { expected, unit } = entry
  const bounds =
    expected === null
      ? 'nothing was known to expect'
      : expected.seen !== undefined
        ? 'what was to be seen has changed'
        : `then expected: ${boundsWords(expected.least ?? null, expected.most ?? null, unit)}`
  return [...(outOfDate ? [`Out of date, ${bounds}`] : []), ...(afterSigning ? ['After the signature'] : [])]
}

/** Whose signature covers an entry; empty: nobody's. */
export const signedWords = ({ signed }: EntryRecord): string => (signed ? `Signed by ${signed.name}` : '')

/** "12 passed, 1 failed, 3 not done" */
export const countsWords = ({ passed, failed, outOfDate, notDone }: Counts): string =>
  [
    `${passed} passed`,
    ...(failed > 0 ? [`${failed} failed`] : []),
    ...(outOfDate > 0 ? [`${outOfDate} out of date`] : []),
    ...(notDone > 0 ? [`${notDone} not done`] : []),
  ].join(', ')

/** "Signed by J. Smith, 2026-03-04 10:31: 12 passed, 3 not done" */
export const signingWords = (s: TestSigning): string =>
  `Signed by ${s.name}, ${momentWords(s.at)}: ${countsWords(s)}${s.remark === '' ? '' : `. ${s.remark}`}`

export const total = ({ passed, failed, outOfDate, notDone }: Counts): number =>
  passed + failed + outOfDate + notDone
