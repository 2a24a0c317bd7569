import { useEffect, useRef } from 'react'
import { type Counts, GROUP_WORDS, type GroupRecord, stepWords } from '../../../engine'
import { useOpen } from '../../store/open'
import { takeStep } from './looking'
import { StateMark } from './StateMark'

interface Props {
  readonly groups: readonly GroupRecord[]
  readonly at: string | null
}

/** Every group with how far it is; the steps of each below it. */
export function StepList({ groups, at }: Props) {
  const design = useOpen((s) => s.design)
  const here = useRef<HTMLButtonElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever another step is in hand
  useEffect(() => {
    here.current?.scrollIntoView({ block: 'nearest' })
  }, [at])
  let number = 0
  return (
    <nav className="test-list" aria-label="Steps in their order">
      {groups.map(({ group, steps, counts }) => (
        <section key={group} aria-label={GROUP_WORDS[group].title}>
          <h2>
            <span>{GROUP_WORDS[group].title}</span>
            <Progress counts={counts} />
          </h2>
          <ol>
            {steps.map(({ step, state }) => {
              number += 1
              const isHere = step.key === at
              return (
                <li key={step.key}>
                  <button
                    ref={isHere ? here : undefined}
                    type="button"
                    aria-current={isHere ? 'step' : undefined}
                    onClick={() => takeStep(step.key)}
                  >
                    <span className="n">{number}</span>
                    <span className="t">{stepWords(step, design).title}</span>
                    <StateMark state={state} />
                  </button>
                </li>
              )
            })}
          </ol>
        </section>
      ))}
    </nav>
  )
}

/** Readings taken and passed of all, with what failed or is out of date beside them. */
export function Progress({ counts, whole = false }: { counts: Counts; whole?: boolean }) {
  const all = counts.passed + counts.failed + counts.outOfDate + counts.notDone
  return (
    <span className="test-progress" role={whole ? 'status' : undefined}>
      <progress
        max={Math.max(1, all)}
        value={counts.passed}
        aria-label={whole ? 'Whole record' : 'This group'}
        aria-valuetext={`${counts.passed} of ${all} readings passed`}
      />
      <span>
        {counts.passed} / {all}
        {whole ? ' readings passed' : ''}
      </span>
      {counts.failed > 0 && <b className="failed">{counts.failed} failed</b>}
      {counts.outOfDate > 0 && <b className="out-of-date">{counts.outOfDate} out of date</b>}
    </span>
  )
}
