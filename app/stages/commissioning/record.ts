import {
  type CommissioningRecord,
  type EntryRecord,
  newEntry,
  newSigning,
  type ReadingRecord,
  resultOf,
  stepWords,
  type TestEntry,
  type TestStep,
} from '../../../engine'
import { doEdit, useOpen } from '../../store/open'
import { refuse } from '../../store/say'
import { useLooking } from './looking'

/** Now, as the clock on the wall shows it to the millisecond, with its offset: entries are put in order by it. */
function now(): string {
  const date = new Date()
  const minutes = -date.getTimezoneOffset()
  const wall = new Date(date.getTime() + minutes * 60_000).toISOString().slice(0, 23)
  const two = (n: number): string => String(Math.floor(Math.abs(n))).padStart(2, '0')
  return `${wall}${minutes < 0 ? '-' : '+'}${two(minutes / 60)}:${two(minutes % 60)}`
}

/** Adds an entry to the record: one step that can be undone. What it came to; null: it was refused. */
export function enter(
  step: TestStep,
  record: ReadingRecord,
  entered: Pick<TestEntry, 'found' | 'remark' | 'judged'>,
): EntryRecord['result'] | null {
  const { by } = useLooking.getState()
  if (by.trim() === '') {
    refuse('Write who measures first, at the top of the page.')
    document.querySelector<HTMLInputElement>('.commissioning .by input')?.focus()
    return null
  }
  const { design } = useOpen.getState()
  const entry = newEntry(design, step, record, { ...entered, id: crypto.randomUUID(), by, at: now() })
  const done = doEdit(`Reading: ${stepWords(step, design).title}`, { do: 'record', records: [entry] })
  return done ? resultOf(entry) : null
}

export const sign = (record: CommissioningRecord, name: string, remark: string): boolean =>
  doEdit(`Signature of ${name.trim()}`, {
    do: 'record',
    records: [newSigning(record, { id: crypto.randomUUID(), name, remark, at: now() })],
  })
