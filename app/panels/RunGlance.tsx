import { type ReactNode, useState } from 'react'
import {
  type Answer,
  type Design,
  factorWords,
  figure,
  guardWords,
  type MaybeUnlimited,
  partName,
  RETURN_JUDGED,
  type RunAnswer,
  verdictWords,
  whyAmpacity,
  whyCurrent,
  whyNot,
  whyProtected,
} from '../../engine'
import { useOpen } from '../store/open'
import { type GlanceKey, glanceOf } from './glance'
import { LevelMark } from './LevelMark'

interface Props {
  readonly run: RunAnswer
  /** Name of the part at an end. */
  readonly at: (end: 'from' | 'to') => string
}

/** What decides, side by side: what it must carry, what its protection lets last, what it bears; and the verdict. */
export function RunGlance({ run, at }: Props) {
  const design = useOpen((s) => s.design)
  const [open, setOpen] = useState<GlanceKey | null>(null)
  const { carries, lets, bears, level } = glanceOf(run)
  const lines = {
    carries: () =>
      'value' in carries.witness
        ? [
            ...(run.ownFigure
              ? ['A figure of the designer\u2019s own stands in place of the computed one']
              : []),
            ...whyCurrent(carries.witness.value, design),
          ]
        : [whyNot(carries.witness, design)],
    lets: () => whyItLasts(run, at, design),
    bears: () =>
      'value' in run.ampacity ? whyAmpacity(run.ampacity.value, design) : [whyNot(run.ampacity, design)],
  }
  const cell = (key: GlanceKey, title: ReactNode, answer: Answer<MaybeUnlimited>, testId?: string) => (
    <div className={isBeyond(answer, key, run) ? 'beyond' : ''} data-testid={testId}>
      <dt>{title}</dt>
      <dd>
        <b>{'value' in answer ? shown(key, answer.value) : '?'}</b>
        {'value' in answer && key === 'bears' && 'value' in run.ampacity && !run.ampacity.value.confirmed && (
          <small>not confirmed</small>
        )}
        {!('value' in answer) && <small>not checked</small>}
        <button
          type="button"
          className="link"
          aria-expanded={open === key}
          onClick={() => setOpen(open === key ? null : key)}
        >
          why?
        </button>
      </dd>
    </div>
  )
  const guards = guardWords(run, design)
  const verdict = 'value' in run.verdict ? run.verdict.value : 'not-checked'
  return (
    <>
      <dl className="glance">
        {cell(
          'carries',
          <>Worst case {carries.way}</>,
          run.ownFigure ? run.design : carries.amps,
          carries.testId,
        )}
        {cell('lets', 'Protection', lets)}
        {cell('bears', 'Ampacity', bears)}
      </dl>
      {'value' in run.ampacity && run.ampacity.value.factors.length > 0 && (
        <p className="quiet">Ampacity {factorWords(run.ampacity.value)}</p>
      )}
      {open && (
        <ul className="witness">
          {lines[open]().map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      <p className={`verdict ${verdict}`}>
        {level && <LevelMark level={level} />}
        <b>
          {verdictWords(run, design)}
          {guards && `: ${guards}`}
        </b>
      </p>
    </>
  )
}

/** Protection that lets everything last is none. */
const shown = (key: GlanceKey, amps: MaybeUnlimited): string =>
  key === 'lets' && amps === 'unlimited' ? 'none' : figure(amps, 'A')

/** Beyond what it bears, told by more than colour: the verdict and the findings say so in words. */
const isBeyond = (answer: Answer<MaybeUnlimited>, key: GlanceKey, run: RunAnswer): boolean =>
  key === 'carries' &&
  'value' in answer &&
  'value' in run.ampacity &&
  (answer.value === 'unlimited' || answer.value > run.ampacity.value.amps)

/** What limits a fault from either end, and for a return what can last in it. */
function whyItLasts(run: RunAnswer, at: Props['at'], design: Design): string[] {
  const ends = (['from', 'to'] as const).flatMap((end) => {
    const answer = run[end]
    const lines = 'value' in answer ? whyProtected(answer.value, design) : [whyNot(answer, design)]
    return lines.map((line) => `Fed in at ${at(end)}: ${line}`)
  })
  if (!run.sustained) return ends
  const { sustained } = run
  const lasting =
    'value' in sustained
      ? sustained.value.guards.map(
          (g) => `${partName(design, g.part)} limits what lasts to ${figure(g.amps, 'A')}`,
        )
      : [whyNot(sustained, design)]
  return [...lasting, RETURN_JUDGED, ...ends]
}
