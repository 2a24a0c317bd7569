import { memo } from 'react'
import {
  type Accepted,
  conductorById,
  type Finding,
  figure,
  LEVEL_WORDS,
  lookedFor,
  partById,
  sentence,
  sourceWords,
} from '../../engine'
import { useOpen } from '../store/open'
import { showFinding } from '../store/view'
import { AcceptForm } from './AcceptForm'
import { LevelMark } from './LevelMark'
import { Mend } from './Mend'
import { TakeBack } from './TakeBack'

interface Props {
  readonly finding: Finding
  readonly accepted?: Accepted
  readonly shown: boolean
}

/** One finding: level, what, where, figure against limit, source, what to do, what mends it, or why it stands. */
export const FindingRow = memo(function FindingRow({ finding: f, accepted, shown }: Props) {
  const design = useOpen((s) => s.design)
  const words = sentence(f, design)
  const places = [
    ...f.conductors.map((id) => conductorById(design, id)?.number),
    ...f.parts.map((id) => partById(design, id)?.designation),
  ].filter((x) => x !== undefined)
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
            Check {f.rule}: {lookedFor(f.rule)}. {sourceWords(f.source)}
          </p>
          {accepted ? (
            <TakeBack accepted={accepted} />
          ) : (
            <>
              <Mend finding={f} />
              <AcceptForm finding={f} />
            </>
          )}
        </div>
      )}
    </li>
  )
})
