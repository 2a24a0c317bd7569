import { useState } from 'react'
import { conductorById, type Finding, LEVEL_WORDS, partById, sentence } from '../../engine'
import { useOpen } from '../store/open'
import { lookAt, select } from '../store/view'
import { FindingRow } from './FindingRow'
import { LevelMark } from './LevelMark'

interface Props {
  readonly findings: readonly Finding[]
  /** Key of the finding that is shown. */
  readonly shown: string | null
}

/** One note, or one check that could not be made, in many places: opening it selects them all, so that what is missing can be given at once. */
export function FindingGroup({ findings, shown }: Props) {
  const design = useOpen((s) => s.design)
  const [opened, setOpened] = useState(false)
  const open = opened || findings.some((f) => f.key === shown)
  const [first] = findings
  if (!first) return null
  const parts = [...new Set(findings.flatMap((f) => f.parts))]
  const conductors = [...new Set(findings.flatMap((f) => f.conductors))]
  const names = [
    ...conductors.map((id) => conductorById(design, id)?.number),
    ...parts.map((id) => partById(design, id)?.designation),
  ].filter((x) => x !== undefined)
  const toggle = () => {
    setOpened(!open)
    if (open) return
    select(parts, conductors)
    lookAt(parts, conductors)
  }
  return (
    <li className="finding-group">
      <div className={`finding ${first.level}`}>
        <button type="button" className="what" aria-expanded={open} onClick={toggle}>
          <LevelMark level={first.level} />
          <span>
            <span className="unseen">{LEVEL_WORDS[first.level]}: </span>
            <b>{sentence(first, design).title}</b> {findings.length} times
            <span className="where">
              {names.slice(0, MOST).join(' · ')}
              {names.length > MOST && ` and ${names.length - MOST} more`}
            </span>
          </span>
        </button>
      </div>
      {open && (
        <ol>
          {findings.map((f) => (
            <FindingRow key={f.key} finding={f} shown={shown === f.key} />
          ))}
        </ol>
      )}
    </li>
  )
}

/** Places named on the row. */
const MOST = 6
