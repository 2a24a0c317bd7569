import { Check, Square, TriangleAlert } from 'lucide-react'
import {
  type BenchCard,
  BUILT_WORDS,
  builtWords,
  type Design,
  STEP_WORDS,
  type StepAnswer,
} from '../../../engine'
import { useOpen } from '../../store/open'
import { tick } from './record'

/** The steps of a conductor as big boxes to tick. Both ends are meant. */
export function Steps({ card }: { card: BenchCard }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  if (card.steps.length === 0) return null
  const again = card.steps.filter((s) => s.state === 'again')
  return (
    <>
      {again.length > 0 && (
        <ul className="bench-warning again" aria-label="To look at again">
          {again.map((answer) => (
            <li key={answer.step}>{againWords(design, answer)}</li>
          ))}
        </ul>
      )}
      <fieldset className="steps" aria-label="Steps, both ends">
        {card.steps.map((answer) => (
          <button
            key={answer.step}
            type="button"
            className={`step ${answer.state}`}
            aria-pressed={answer.state === 'done'}
            disabled={disabled}
            onClick={() => tick(card.conductor, answer.step, answer.state !== 'done')}
          >
            {answer.state === 'done' ? (
              <Check size={30} aria-hidden />
            ) : answer.state === 'again' ? (
              <TriangleAlert size={30} aria-hidden />
            ) : (
              <Square size={30} aria-hidden />
            )}
            <b>{STEP_WORDS[answer.step]}</b>
            {answer.state === 'again' && <small>look again</small>}
          </button>
        ))}
      </fieldset>
    </>
  )
}

/** "Cut before the drawing changed: size was 4 mm², is 6 mm²." */
const againWords = (design: Design, { step, since }: StepAnswer): string =>
  `${STEP_WORDS[step]} before the drawing changed: ${since
    .map(
      ({ key, was, now }) =>
        `${BUILT_WORDS[key].toLowerCase()} was ${builtWords(design, key, was)}, is ${builtWords(design, key, now)}`,
    )
    .join('; ')}.`
