import {
  type ConductorChange,
  conductorById,
  type Design,
  type Edit,
  kindOf,
  partById,
  RUN_FIELDS,
  sizeIn,
  type Value,
} from '../../engine'

/** What an edit would change, one line each, so that a person sees it before it is done. */
export function changesOf(edit: Edit, design: Design): readonly string[] {
  const part = (id: string) => partById(design, id)?.designation ?? id
  const run = (id: string) => conductorById(design, id)?.number ?? id
  switch (edit.do) {
    case 'all':
      return edit.edits.flatMap((e) => changesOf(e, design))
    case 'conductor':
      return edit.conductors.flatMap((id) =>
        Object.entries(edit.set).map(([key, value]) => {
          const before = conductorById(design, id)?.[key as keyof ConductorChange]
          return `${run(id)}: ${runWord(key)} ${shown(design, key, before)} → ${shown(design, key, value)}`
        }),
      )
    case 'value': {
      const p = partById(design, edit.part)
      const field = p && kindOf(p.kind)?.fields[edit.field]
      const name = field?.label.toLowerCase() ?? edit.field
      if (Array.isArray(edit.value)) return [`${part(edit.part)}: ${name} changed`]
      return [
        `${part(edit.part)}: ${name} ${shown(design, '', p?.values[edit.field])} → ${shown(design, '', edit.value)}`,
      ]
    }
    case 'articles':
      return edit.articles.map((a) => `Article ${a.number || a.key}`)
    case 'making':
      return ['How conductors are made up is changed']
    case 'own conductors':
      return edit.own.map(({ name }) => `Own conductor: ${name}`)
    case 'reconnect': {
      const now = conductorById(design, edit.conductor)?.[edit.end].part
      const away = now === undefined || now === edit.to.part ? '' : ` from ${part(now)}`
      return [`${run(edit.conductor)} is moved${away} to ${part(edit.to.part)}, terminal ${edit.to.terminal}`]
    }
    case 'remove':
      return [...edit.conductors.map(run), ...edit.parts.map(part)].map((name) => `${name} is taken off`)
    case 'join':
      return [
        `New: ${edit.conductor.number}, ${part(edit.conductor.from.part)} to ${part(edit.conductor.to.part)}`,
      ]
    case 'add':
      return [...edit.parts.map((p) => p.designation), ...edit.conductors.map((c) => c.number)].map(
        (n) => `New: ${n}`,
      )
    case 'zone':
      return [`Outline ${edit.zone.name}`]
    case 'unzone':
      return [`Outline ${design.zones?.find((z) => z.id === edit.id)?.name ?? edit.id} is taken off`]
    case 'text':
      return [`Text: ${edit.text.text}`]
    case 'untext':
      return [`${edit.ids.length} texts on the sheet are taken off`]
    case 'notes':
      return edit.notes.map(({ text }, i) => `Note ${i + 1}: ${text}`)
    case 'refer':
      return [`${part(edit.part)}: notes ${edit.notes.join(', ') || 'none'}`]
    case 'part':
      return Object.entries(edit.set).map(([key, value]) => `${part(edit.part)}: ${key} → ${value}`)
    case 'mirror':
    case 'turn':
      return edit.parts.map((id) => `${part(id)} is ${edit.do === 'turn' ? 'turned' : 'mirrored'}`)
    case 'follow':
      return edit.parts.map((id) => `${part(id)} stands as in the single-line view`)
    case 'move':
      return edit.to.map((m) => `${part(m.part)} is moved`)
    case 'rules':
      return ['The rules of this design change']
    case 'accept':
      return [`A finding is accepted: ${edit.accepted.reason}`]
    case 'unaccept':
      return ['A finding stands open again']
    case 'bench':
      return ['The records of the bench change']
    case 'record':
      return ['The commissioning record changes']
    case 'handover':
      return ['The handover pack changes']
    case 'issue':
      return [`Revision ${edit.number} is issued: ${edit.reason}`]
    case 'take back':
      return [`Revision ${edit.number} is taken back as the present state`]
    case 'settings':
      return Object.entries(edit.set).map(([key, value]) => `Design: ${key} → ${value}`)
  }
}

const runWord = (key: string): string =>
  key in RUN_FIELDS ? RUN_FIELDS[key as keyof typeof RUN_FIELDS].label.toLowerCase() : key

function shown(design: Design, key: string, value: Value | object | undefined): string {
  if (value === null || value === undefined || value === '') return 'not set'
  if (key === 'size') return sizeIn(design, String(value))?.name ?? String(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return typeof value === 'object' ? 'changed' : String(value)
}
