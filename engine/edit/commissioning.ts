import type { TestEntry, TestRecord, TestSigning } from '../model/commissioning'
import type { Design } from '../model/design'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Longest text of a remark, letters. */
const MOST = 2000

/** Adds lines to the commissioning record. Lines are never changed: what was measured before stays. */
export function applyRecord(design: Design, { records }: EditOf<'record'>): EditResult {
  const ids = new Set(design.commissioning?.map((r) => r.id))
  for (const record of records) {
    if (ids.has(record.id)) return refuse('recorded-already', 'This line stands in the record already.')
    ids.add(record.id)
    const fault = record.is === 'entry' ? entryFault(record) : signingFault(record, design)
    if (fault) return fault
  }
  if (records.length === 0) return done(design)
  return done({ ...design, commissioning: joined(design.commissioning ?? [], records) })
}

function entryFault(entry: TestEntry): Refusal | null {
  if (typeof entry.found === 'number' && !Number.isFinite(entry.found))
    return refuse('not-a-figure', 'A measured value is a number.')
  if (entry.expected === null && entry.remark.trim() === '')
    return refuse('no-words', 'Nothing is known to expect here: write down in words why it is good, or not.')
  if (entry.expected === null && entry.judged === undefined)
    return refuse('no-judgement', 'Nothing is known to expect here: say whether it is good.')
  if (entry.expected !== null && entry.judged !== undefined)
    return refuse('judged-against-figures', 'What is expected is known here: the value decides.')
  if (entry.expected !== null && entry.found === null)
    return refuse('no-value', 'Enter what was measured or seen.')
  return remarkFault(entry)
}

function signingFault(signing: TestSigning, { commissioning = [] }: Design): Refusal | null {
  if (signing.name.trim() === '') return refuse('no-name', 'Whoever signs writes their name.')
  const entries = new Set(commissioning.flatMap((r) => (r.is === 'entry' ? [r.id] : [])))
  if (signing.covers.length === 0)
    return refuse('nothing-to-sign', 'There is no entry yet that could be signed.')
  if (!signing.covers.some((id) => entries.has(id)))
    return refuse('no-entry', 'A signature covers entries of this record.')
  return remarkFault(signing)
}

const remarkFault = ({ remark, at }: TestRecord): Refusal | null => {
  if (remark.length > MOST) return refuse('long-remark', `A remark has at most ${MOST} letters.`)
  if (Number.isNaN(Date.parse(at))) return refuse('date', 'A line of the record has a date and a time.')
  return null
}

/** In the order in which they were made, so that the records of two devices come out alike whichever is added to which. */
const joined = (a: readonly TestRecord[], b: readonly TestRecord[]): readonly TestRecord[] =>
  [...a, ...b].sort(byTime)

/** By time, then by id, so that every device puts them in the same order. */
export const byTime = (a: TestRecord, b: TestRecord): number =>
  Date.parse(a.at) - Date.parse(b.at) || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0)
