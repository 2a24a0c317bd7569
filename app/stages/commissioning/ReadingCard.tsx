import {
  expectedWords,
  INSTRUMENT_WORDS,
  probeWords,
  type ReadingRecord,
  readingWords,
  type TestStep,
} from '../../../engine'
import { useOpen } from '../../store/open'
import { EntryForm } from './EntryForm'
import { EntryList } from './EntryList'
import { StateMark } from './StateMark'

interface Props {
  readonly step: TestStep
  readonly record: ReadingRecord
}

/** A figure keeps its unit on its line. */
const withUnits = (text: string): string => text.replaceAll(/(?<=\d) (?=[%VAΩk])/g, '\u00a0')

/** One reading: with what, where to touch, what is expected; below it the entry, and what was entered before. */
export function ReadingCard({ step, record }: Props) {
  const design = useOpen((s) => s.design)
  const { reading, entries, state } = record
  const { bounds, from } = expectedWords(record, step, design)
  const name = readingWords(reading, design)
  return (
    <section className={`test-reading ${state}`} aria-label={name}>
      <h2>
        {name} <StateMark state={state} word />
      </h2>
      <div className="test-where">
        <p className="with">{INSTRUMENT_WORDS[reading.instrument]}</p>
        {probeWords(reading, design).map((line) => (
          <p key={line} className="probe">
            {line}
          </p>
        ))}
      </div>
      {(reading.asks !== 'so' || from !== '') && (
        <p className="test-expected">
          <span>Expected</span>
          <strong>
            {reading.asks === 'so' && from !== '' && record.expected.is === 'seen' ? from : bounds}
          </strong>
          {record.expected.is !== 'seen' && from !== '' && <span>{withUnits(from)}</span>}
        </p>
      )}
      <EntryForm step={step} record={record} name={name} />
      <EntryList entries={entries} />
    </section>
  )
}
