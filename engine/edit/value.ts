import { kindOf } from '../kinds/all'
import type { Design, Part } from '../model/design'
import { valueFault } from '../model/fieldfault'
import { conductorsAt, partById } from '../model/lookup'
import { done, withParts } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'
import { hasTerminal } from './terminal'

/** Sets one field of a part. Refused where the value does not fit, or would take away a terminal that is in use. */
export function applyValue(design: Design, edit: EditOf<'value'>): EditResult {
  const part = partById(design, edit.part)
  if (!part) return refuse('no-part', `There is no part ${edit.part}.`)
  const kind = kindOf(part.kind)
  if (!kind)
    return refuse('unknown-kind', `${part.designation} is of a kind that this version does not know.`)
  const field = Object.hasOwn(kind.fields, edit.field) ? kind.fields[edit.field] : undefined
  if (!field) return refuse('no-field', `${part.designation} has no field "${edit.field}".`)
  if (field.role === 'result') return refuse('computed', `"${field.label}" is computed and cannot be typed.`)
  const fault = valueFault(field, edit.value)
  if (fault) return refuse('value', `"${field.label}" takes ${fault.expected}.`)
  if (Object.is(part.values[edit.field], edit.value)) return done(design)
  const changed: Part = { ...part, values: { ...part.values, [edit.field]: edit.value } }
  return terminalInUse(design, changed) ?? done(withParts(design, (p) => (p === part ? changed : p)))
}

function terminalInUse(design: Design, part: Part): Refusal | null {
  for (const c of conductorsAt(design, part.id))
    for (const end of [c.from, c.to])
      if (end.part === part.id && !hasTerminal(part, end.terminal))
        return refuse(
          'terminal-in-use',
          `${c.number} is joined to terminal "${end.terminal}" of ${part.designation}; take it off first.`,
        )
  return null
}
