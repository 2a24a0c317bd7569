import type { TestEntry, TestSigning } from '../../model/commissioning'
import type { Design } from '../../model/design'
import { laterThan } from './clock'
import { asThen } from './expected'
import { type CommissioningRecord, type ReadingRecord, subjectOf } from './record'
import type { TestStep } from './step'

/** What a person enters for a reading. `id` is unlike any other; `at` an ISO 8601 date and time. */
export type Entered = Pick<TestEntry, 'id' | 'by' | 'at' | 'remark' | 'found'> & Pick<TestEntry, 'judged'>

/** An entry with what is expected of the reading at this moment, later than all that was entered for it before. */
export function newEntry(design: Design, step: TestStep, record: ReadingRecord, entered: Entered): TestEntry {
  const { expected, reading } = record
  const { id, by, at, remark, found, judged } = entered
  return {
    is: 'entry',
    id,
    step: step.key,
    reading: reading.key,
    of: subjectOf(design, step),
    found,
    unit: expected.is === 'figure' ? expected.unit : '',
    expected: asThen(expected),
    ...(judged === undefined ? {} : { judged }),
    remark: remark.trim(),
    by: by.trim(),
    at: laterThan(
      at,
      record.entries.map((e) => e.entry.at),
    ),
  }
}

/** A signature under everything that stands in the record at this moment. */
export function newSigning(
  record: CommissioningRecord,
  signed: Pick<TestSigning, 'id' | 'name' | 'remark' | 'at'>,
): TestSigning {
  const entries = record.groups.flatMap((g) => g.steps.flatMap((s) => s.readings.flatMap((r) => r.entries)))
  const covers = [...entries, ...record.gone].map((e) => e.entry.id)
  const { name, remark } = signed
  return { is: 'signing', ...signed, name: name.trim(), remark: remark.trim(), covers, ...record.counts }
}
