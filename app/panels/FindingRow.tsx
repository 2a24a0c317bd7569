import { Wrench } from 'lucide-react'
import { memo, useState } from 'react'
import { conductorById, type Finding, figure, LEVEL_WORDS, partById, sentence, sourceOf } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { say } from '../store/say'
import { showFinding } from '../store/view'
import { changesOf } from './changes'
import { LevelMark } from './LevelMark'

interface Props {
  readonly finding: Finding
  readonly shown: boolean
}

/** One finding: level, what, where, figure against limit, source, what to do, and a fix with a look at it first. */
export const FindingRow = memo(function FindingRow({ finding: f, shown }: Props) {
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const [preview, setPreview] = useState(false)
  const words = sentence(f, design)
  const source = sourceOf(f.source)
  const places = [
    ...f.conductors.map((id) => conductorById(design, id)?.number),
    ...f.parts.map((id) => partById(design, id)?.designation),
  ].filter((x) => x !== undefined)
  const mend = () => {
    if (!f.fix || !doEdit(f.fix.title, f.fix.edit)) return
    say(`${f.fix.title}: done. Undo takes it back.`)
  }
  return (
    <li className={`finding ${f.level}${shown ? ' shown' : ''}`} data-rule={f.rule}>
      <button
        type="button"
        className="what"
        aria-expanded={shown}
        onClick={() => showFinding(f.key, f.parts, f.conductors)}
      >
        <LevelMark level={f.level} />
        <span>
          <span className="unseen">{LEVEL_WORDS[f.level]}: </span>
          <b>{words.title}</b>
          <span className="where">{places.slice(0, 6).join(' · ')}</span>
        </span>
      </button>
      {shown && (
        <div className="more">
          <p>{words.text}</p>
          {f.actual && (f.limit || f.actual.value !== 'unlimited') && (
            <p className="figures">
              <b>{figure(f.actual.value, f.actual.unit)}</b>
              {f.limit && (
                <>
                  {' against '}
                  <b>{figure(f.limit.value, f.limit.unit)}</b>
                </>
              )}
            </p>
          )}
          {words.todo && <p>{words.todo}</p>}
          <p className="source">
            {f.rule} · {source ? `${source.title} (${source.status})` : f.source}
          </p>
          {f.fix && !preview && (
            <button type="button" className="plain" disabled={!writing} onClick={() => setPreview(true)}>
              <Wrench size={14} aria-hidden /> Mend: {f.fix.title}
            </button>
          )}
          {f.fix && preview && (
            <fieldset className="preview" aria-label="What mending would do">
              <p>{f.fix.title}. One undo step takes it back.</p>
              <ul className="changes">
                {changesOf(f.fix.edit, design).map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              <button type="button" className="main" onClick={mend}>
                Do it
              </button>
              <button type="button" className="plain" onClick={() => setPreview(false)}>
                Leave it
              </button>
            </fieldset>
          )}
        </div>
      )}
    </li>
  )
})
