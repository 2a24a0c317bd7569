import { MapPin } from 'lucide-react'
import {
  builtOtherwiseWords,
  GROUP_WORDS,
  monitorWords,
  STEP_CAUTIONS,
  type StepRecord,
  settingWords,
  stepWords,
} from '../../../engine'
import { useOpen } from '../../store/open'
import { showOnDrawing } from '../goto'
import { ReadingCard } from './ReadingCard'
import { StateMark } from './StateMark'

interface Props {
  readonly record: StepRecord
  readonly number: number
  readonly of: number
}

/** One step, large: cautions first, then how the system is set, then what to read and what to expect. */
export function StepCard({ record: { step, state, readings }, number, of }: Props) {
  const design = useOpen((s) => s.design)
  const { title, text } = stepWords(step, design)
  const setting = [
    ...settingWords(step, design),
    monitorWords([step], design),
    builtOtherwiseWords(design),
  ].filter((s) => s !== '')
  const where = step.parts.length > 0 || step.conductors.length > 0
  return (
    <article className="test-step" aria-labelledby="test-title">
      <header>
        <p className="nr">
          Step {number} of {of} · {GROUP_WORDS[step.group].title}
        </p>
        <h1 id="test-title" tabIndex={-1}>
          {title}
        </h1>
        <StateMark state={state} word />
      </header>
      {step.cautions.length > 0 && (
        <ul className="test-cautions" aria-label="Cautions before this step">
          {step.cautions.map((caution) => (
            <li key={caution}>{STEP_CAUTIONS[caution]}</li>
          ))}
        </ul>
      )}
      {setting.length > 0 && (
        <ul className="test-setting" aria-label="How the system is set">
          {setting.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <p className="test-text">{text}</p>
      {readings.map((r) => (
        <ReadingCard key={`${step.key} ${r.reading.key} ${r.entries.length}`} step={step} record={r} />
      ))}
      <p className="test-foot">
        Expected figures come from the load flow of this state, from ratings and from settings. Tolerances are
        common practice, no source. Local codes and the judgement of a licensed practitioner prevail.
      </p>
      {where && (
        <button
          type="button"
          className="plain test-find"
          onClick={() => showOnDrawing({ parts: step.parts, conductors: step.conductors })}
        >
          <MapPin size={18} aria-hidden /> Show on the drawing
        </button>
      )}
    </article>
  )
}
