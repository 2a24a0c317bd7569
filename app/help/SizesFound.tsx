import { Ruler } from 'lucide-react'
import {
  type ConductorId,
  choiceWords,
  conductorById,
  copperWords,
  type Design,
  type Finding,
  figure,
  keptWords,
  partById,
  type Sized,
  type SizingChoice,
  sortAccepted,
  type TerminalRef,
  whyChosen,
} from '../../engine'
import { keepPoint } from '../files/points'
import { terminalName } from '../store/join'
import { useLatest } from '../store/latest'
import { doEdit, useOpen } from '../store/open'
import { say } from '../store/say'
import { tallyWords } from '../store/tally'

interface Props {
  readonly sized: Sized
  /** Some of it could not be chosen, and is told apart. */
  readonly inPart: boolean
  /** What the checks find once everything has been taken. */
  readonly findings: readonly Finding[]
  readonly onClose: () => void
}

/** What would change and why, the copper before and after, what stays; then one step that can be undone. */
export function SizesFound({ sized, inPart, findings, onClose }: Props) {
  const { edit, changes, choices, kept, copperBeforeKg, copperAfterKg } = sized
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const before = sortAccepted(
    design,
    useLatest((s) => s.findings),
  )
  const after = sortAccepted(design, findings)
  const same = choices.filter((c) => !changes.includes(c))
  const take = async () => {
    // Undo is the first way back; a browser that keeps no restore points still has it.
    await keepPoint(design, 'Before Size it').catch(() => {})
    const name = `Size it: ${many(changes.length, 'change')}`
    if (doEdit(name, edit)) say(`${name}. Undo takes it back.`)
    onClose()
  }
  return (
    <>
      <div className="copper">
        <dl>
          <div>
            <dt>Copper now</dt>
            <dd>{copperBeforeKg === null ? 'not known' : figure(copperBeforeKg, 'kg')}</dd>
          </div>
          <div>
            <dt>Copper then</dt>
            <dd>{copperAfterKg === null ? 'not known' : figure(copperAfterKg, 'kg')}</dd>
          </div>
        </dl>{' '}
        <p>
          {copperWords(sized)}
          <br />
          Checks now: {tallyWords(before.open, before.accepted.length)}
          <br />
          Checks then: {tallyWords(after.open, after.accepted.length)}
        </p>
      </div>
      <h3>
        {changes.length === 0
          ? inPart
            ? 'Nothing else changes'
            : 'Nothing changes'
          : `${inPart ? 'What can be chosen: ' : ''}${many(changes.length, 'change')}`}
      </h3>
      <Choices choices={changes} />
      {kept.length > 0 && (
        <details open={changes.length === 0}>
          <summary>{many(kept.length, 'thing')} left as they are</summary>
          <ul className="choices">
            {keptWords(kept, design).map((words) => (
              <li key={words} className="words">
                {words}
              </li>
            ))}
          </ul>
        </details>
      )}
      {same.length > 0 && (
        <details>
          <summary>{same.length} already as they would be chosen</summary>
          <Choices choices={same} />
        </details>
      )}
      <div className="buttons stays">
        {changes.length > 0 && (
          <button type="button" className="main" disabled={!writing} onClick={() => void take()}>
            <Ruler size={16} aria-hidden /> Take{' '}
            {changes.length === 1 ? 'it' : `${inPart ? 'these' : 'all'} ${changes.length}`}
          </button>
        )}
        <button type="button" className="plain" onClick={onClose}>
          {changes.length > 0 ? 'Leave it' : 'Close'}
        </button>
      </div>
    </>
  )
}

function Choices({ choices }: { choices: readonly SizingChoice[] }) {
  const design = useOpen((s) => s.design)
  return (
    <ul className="choices">
      {choices.map((choice) => (
        <li key={'conductor' in choice ? choice.conductor : `${choice.part}/${choice.way}`}>
          <div>
            <b>{choiceWords(choice, design)}</b>
            {'conductor' in choice && <small>{endsOf(design, choice.conductor)}</small>}
          </div>
          <span>{whyChosen(choice, design)}</span>
        </li>
      ))}
    </ul>
  )
}

/** "F3 way 1 → E1 positive" */
function endsOf(design: Design, id: ConductorId): string {
  const conductor = conductorById(design, id)
  return conductor ? `${nameOfEnd(conductor.from)} → ${nameOfEnd(conductor.to)}` : ''

  function nameOfEnd(end: TerminalRef): string {
    const name = partById(design, end.part)?.name
    return name ? `${terminalName(end)} (${name})` : terminalName(end)
  }
}

const many = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`
