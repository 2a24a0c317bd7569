import { useEffect, useState } from 'react'
import { type Finding, LEVEL_WORDS, type Level } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { countByLevel, LEVELS } from '../store/tally'
import { useView } from '../store/view'
import { FindingRow } from './FindingRow'
import { LevelMark } from './LevelMark'

/** All findings, the gravest first, with a switch for each level. */
export function Findings() {
  const findings = useLatest((s) => s.findings)
  const checked = useLatest((s) => s.checked)
  const failure = useLatest((s) => s.failure)
  const empty = useOpen((s) => s.design.parts.length === 0)
  const shown = useView((s) => s.finding)
  const [only, setOnly] = useState<Level | null>(null)
  const tally = countByLevel(findings)
  useEffect(() => {
    if (shown) document.querySelector('.finding.shown')?.scrollIntoView({ block: 'nearest' })
  }, [shown])

  return (
    <section className="findings" aria-label="Findings">
      <header>
        <h2>Findings</h2>
        <fieldset className="levels" aria-label="Show one level only">
          {LEVELS.map((level) => (
            <button
              type="button"
              key={level}
              aria-pressed={only === level}
              aria-label={`${LEVEL_WORDS[level]}: ${tally[level]}`}
              title={LEVEL_WORDS[level]}
              disabled={tally[level] === 0}
              onClick={() => setOnly(only === level ? null : level)}
            >
              <LevelMark level={level} /> {tally[level]}
            </button>
          ))}
        </fieldset>
      </header>
      {failure && (
        <p className="failure" role="alert">
          The checks broke off: {failure}. What is shown is from before.
        </p>
      )}
      <ol>
        {ordered(findings, only).map((f) => (
          <FindingRow key={f.key} finding={f} shown={shown === f.key} />
        ))}
      </ol>
      {!findings.length && !failure && (
        <p className="quiet">
          {empty
            ? 'Nothing is drawn yet. Each check is made while you draw; what it finds is listed here.'
            : checked
              ? 'The checks that were made found nothing. Local codes and a licensed person still have the last word.'
              : 'Checking…'}
        </p>
      )}
    </section>
  )
}

const ordered = (findings: readonly Finding[], only: Level | null): readonly Finding[] =>
  LEVELS.filter((level) => only === null || only === level).flatMap((level) =>
    findings.filter((f) => f.level === level),
  )
