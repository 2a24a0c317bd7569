import {
  BUILT_WORDS,
  builtWords,
  conductorById,
  type Difference,
  differencesOf,
  type Finding,
  figure,
  keptAside,
  sentence,
} from '../../../engine'
import { LevelMark } from '../../panels/LevelMark'
import { useBuilt } from '../../store/built'
import { useOpen } from '../../store/open'
import { tallyWords } from '../../store/tally'
import { takeUp } from './looking'
import { recordAsDrawn, takeOver } from './record'
import { UnsettledList } from './UnsettledList'

/** Everything that was built otherwise: as designed, as built, what to do with it; then the checks as built. */
export function BuiltList() {
  const design = useOpen((s) => s.design)
  const differences = differencesOf(design)
  const aside = keptAside(design)
  return (
    <section className="built-list" aria-label="Built otherwise">
      <h2>Built otherwise</h2>
      {differences.length === 0 ? (
        <p>
          Everything recorded is as it is drawn. What differs is recorded with its conductor: open the
          conductor, then “Built otherwise” below its steps.
        </p>
      ) : (
        <ul className="differences">
          {differences.map((d) => (
            <DifferenceRow key={`${d.conductor} ${d.what}`} difference={d} />
          ))}
        </ul>
      )}
      <UnsettledList />
      {differences.length > 0 && <ChecksAsBuilt />}
      {aside.length > 0 && (
        <>
          <h2>Not in the drawing any more</h2>
          <p>
            Something was recorded of {aside.map((a) => a.number).join(', ')}, which the drawing does not have
            any more. It is kept. Look whether {aside.length === 1 ? 'it is' : 'they are'} to come out of the
            vehicle.
          </p>
        </>
      )}
    </section>
  )
}

function DifferenceRow({ difference: d }: { difference: Difference }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const conductor = conductorById(design, d.conductor)!
  return (
    <li>
      <button type="button" className="number" onClick={() => takeUp(d.conductor)}>
        {conductor.number}
      </button>
      <p>
        <span>{BUILT_WORDS[d.what]}</span>
        <s>{builtWords(design, d.what, d.drawn)}</s> → <b>{builtWords(design, d.what, d.built)}</b>
        {!d.stands && <small>This terminal is not in the drawing any more: not checked as built.</small>}
      </p>
      <div className="buttons">
        <button
          type="button"
          className="main"
          disabled={disabled || !d.stands}
          onClick={() => takeOver(d, conductor.number)}
        >
          Draw it as built
        </button>
        <button
          type="button"
          className="plain"
          disabled={disabled}
          onClick={() => recordAsDrawn(conductor, [d.what])}
        >
          It is as drawn
        </button>
      </div>
    </li>
  )
}

/** What the checks find on the design as it was built, and what of it the drawing does not give. */
function ChecksAsBuilt() {
  const { built, failure } = useBuilt()
  if (failure) return <p className="bench-warning danger">The checks as built broke off: {failure}</p>
  if (!built) return <p role="status">Checking the design as built…</p>
  return (
    <>
      <h2>Checks as built</h2>
      <p role="status">
        {tallyWords(built.findings)}.{' '}
        {built.worse.length === 0
          ? 'Building otherwise has brought no new finding.'
          : 'These come from building otherwise:'}
      </p>
      <ul className="worse-list">
        {built.worse.map((f) => (
          <Worse key={f.key} finding={f} />
        ))}
      </ul>
    </>
  )
}

function Worse({ finding: f }: { finding: Finding }) {
  const built = useBuilt((s) => s.built)
  if (!built) return null
  const { title, text, todo } = sentence(f, built.design)
  return (
    <li className={`worse-row ${f.level}`} data-rule={f.rule}>
      <LevelMark level={f.level} size={22} />
      <p>
        <b>As built: {title}</b>
        <span>{text}</span>
        {f.actual && f.limit && (
          <span>
            {figure(f.actual.value, f.actual.unit)} against {figure(f.limit.value, f.limit.unit)}
          </span>
        )}
        <span>{todo}</span>
      </p>
    </li>
  )
}
