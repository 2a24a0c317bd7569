import { useMemo } from 'react'
import { complete, type Field, kindOf, type Part, resultsOf } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { FieldRow } from './FieldRow'
import { NoteFlags } from './NoteFlags'
import { PartAnswers } from './PartAnswers'
import { TerminalList } from './TerminalList'
import { TextInput } from './TextInput'

/** The card of a part, grown from the fields of its kind: no kind has a form of its own. */
export function PartCard({ part }: { part: Part }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const kind = kindOf(part.kind)
  const design = useOpen((s) => s.design)
  const values = useMemo(
    () => (kind ? { ...complete(kind.fields, part.values), ...resultsOf(design, part) } : {}),
    [kind, part, design],
  )
  const set = (change: 'designation' | 'name' | 'location') => (text: string) =>
    doEdit(`Change ${change} of ${part.designation}`, { do: 'part', part: part.id, set: { [change]: text } })
  return (
    <>
      <header>
        <h2>
          {part.designation} <span className="kind">{kind?.title ?? `Unknown kind "${part.kind}"`}</span>
        </h2>
      </header>
      <div className="fields">
        <label className="field" htmlFor="part-name">
          <span className="label">Name</span>
          <TextInput id="part-name" value={part.name} disabled={disabled} onChange={set('name')} />
        </label>
        <label className="field" htmlFor="part-designation">
          <span className="label">Designation</span>
          <TextInput
            id="part-designation"
            value={part.designation}
            disabled={disabled}
            onChange={set('designation')}
          />
        </label>
        <label className="field" htmlFor="part-location">
          <span className="label">Location</span>
          <TextInput
            id="part-location"
            value={part.location}
            disabled={disabled}
            onChange={set('location')}
          />
        </label>
      </div>
      {kind ? (
        grouped(Object.entries(kind.fields)).map(([group, fields]) => (
          <div className="fields" key={group}>
            {group && <h3>{group}</h3>}
            {fields.map(([key, field]) => (
              <FieldRow
                key={key}
                field={field}
                value={values[key] ?? null}
                disabled={disabled}
                onChange={(value) =>
                  doEdit(`Change ${field.label.toLowerCase()} of ${part.designation}`, {
                    do: 'value',
                    part: part.id,
                    field: key,
                    value,
                  })
                }
              />
            ))}
          </div>
        ))
      ) : (
        <p className="quiet">
          This version does not know this kind of part. It is kept and written back unchanged; no check counts
          it.
        </p>
      )}
      <NoteFlags part={part} />
      <PartAnswers part={part} />
      <TerminalList part={part} />
      {kind && <p className="quiet">{kind.about}</p>}
    </>
  )
}

/** Fields in the order declared, those of one group together, those without one first. */
function grouped(fields: readonly (readonly [string, Field])[]) {
  const groups = new Map<string, (readonly [string, Field])[]>([['', []]])
  for (const entry of fields) {
    const group = entry[1].group ?? ''
    const list = groups.get(group)
    if (list) list.push(entry)
    else groups.set(group, [entry])
  }
  return [...groups].filter(([, list]) => list.length > 0)
}
