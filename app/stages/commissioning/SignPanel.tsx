import { type FormEvent, useState } from 'react'
import { type CommissioningRecord, countsWords, signingWords } from '../../../engine'
import { useOpen } from '../../store/open'
import { say } from '../../store/say'
import { EntryList } from './EntryList'
import { useLooking } from './looking'
import { sign } from './record'

/** Signatures given so far, and the one to give: it covers what stands in the record at that moment. */
export function SignPanel({ record }: { record: CommissioningRecord }) {
  const writing = useOpen((s) => s.hold === 'writing')
  const [name, setName] = useState(useLooking.getState().by)
  const [remark, setRemark] = useState('')
  const entries = record.groups.flatMap((g) => g.steps.flatMap((s) => s.readings.flatMap((r) => r.entries)))
  const unsigned = [...entries, ...record.gone].filter((e) => e.signed === null).length
  const submit = (e: FormEvent) => {
    e.preventDefault()
    if (!sign(record, name, remark)) return
    setRemark('')
    say(`Signed by ${name.trim()}. What is entered from now on stands as after the signature.`)
  }
  return (
    <article className="test-step signing" aria-labelledby="test-title">
      <header>
        <h1 id="test-title" tabIndex={-1}>
          Signatures
        </h1>
      </header>
      <p className="test-text">
        As it stands: {countsWords(record.counts)}.{' '}
        {unsigned === 1 ? '1 entry is' : `${unsigned} entries are`} not under a signature.
      </p>
      {record.signings.length > 0 && (
        <ul className="test-signings" aria-label="Signatures given">
          {record.signings.map((s) => (
            <li key={s.id}>{signingWords(s)}</li>
          ))}
        </ul>
      )}
      <form className="test-entry" onSubmit={submit}>
        <label className="found">
          <span>Name</span>
          <input maxLength={200} value={name} disabled={!writing} onChange={(e) => setName(e.target.value)} />
        </label>
        <label className="remark">
          <span>Remark</span>
          <input
            maxLength={2000}
            value={remark}
            disabled={!writing}
            onChange={(e) => setRemark(e.target.value)}
          />
        </label>
        <div className="buttons">
          <button type="submit" className="main" disabled={!writing || unsigned === 0 || name.trim() === ''}>
            Sign what stands here
          </button>
        </div>
      </form>
      <p className="test-text">
        Whoever signs has taken or witnessed the readings, and judges the installation by the codes that apply
        to it. Signed entries cannot be changed; what is entered later stands as after the signature.
      </p>
      {record.gone.length > 0 && (
        <section className="test-reading" aria-label="Readings of tests no longer asked for">
          <h2>Readings of tests no longer asked for</h2>
          <p className="test-text">The design was changed since; they stay in the record.</p>
          <EntryList entries={record.gone} />
        </section>
      )}
    </article>
  )
}
