import { useEffect, useMemo, useState } from 'react'
import { LEVEL_WORDS, type Level, sentence, sortAccepted } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { countByLevel, LEVELS } from '../store/tally'
import { useView } from '../store/view'
import { AcceptedFindings } from './AcceptedFindings'
import { FindingGroup } from './FindingGroup'
import { FindingRow } from './FindingRow'
import { listed } from './findinglist'
import { LevelMark } from './LevelMark'

/** All findings, the gravest first, with a switch for each level; those that were accepted stand apart at the end. */
export function Findings() {
  const findings = useLatest((s) => s.findings)
  const checked = useLatest((s) => s.checked)
  const failure = useLatest((s) => s.failure)
  const design = useOpen((s) => s.design)
  const shown = useView((s) => s.finding)
  const [only, setOnly] = useState<Level | null>(null)
  const { open, accepted } = useMemo(() => sortAccepted(design, findings), [design, findings])
  const tally = countByLevel(open)
  const rows = useMemo(() => listed(open, only, (f) => sentence(f, design).title), [open, only, design])
  useEffect(() => {
    if (shown) showFrom(document.querySelector<HTMLElement>('.finding.shown'))
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
              disabled={tally[level] === 0 && only !== level}
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
        {rows.map((row) =>
          row.is === 'one' ? (
            <FindingRow key={row.finding.key} finding={row.finding} shown={shown === row.finding.key} />
          ) : (
            <FindingGroup key={row.title} findings={row.findings} shown={shown} />
          ),
        )}
      </ol>
      {!open.length && !failure && (
        <p className="quiet">
          {design.parts.length === 0
            ? 'Nothing is drawn yet. Each check is made while you draw; what it finds is listed here.'
            : !checked
              ? 'Checking…'
              : accepted.length
                ? 'Nothing else stands open. Local codes and a licensed person still have the last word.'
                : 'The checks that were made found nothing. Local codes and a licensed person still have the last word.'}
        </p>
      )}
      {accepted.length > 0 && <AcceptedFindings accepted={accepted} shown={shown} />}
    </section>
  )
}

/** Brings a finding into sight; one that is taller than the panel is read from its title. */
function showFrom(row: HTMLElement | null): void {
  row?.scrollIntoView({ block: 'nearest' })
  row?.querySelector('.what')?.scrollIntoView({ block: 'nearest' })
}
