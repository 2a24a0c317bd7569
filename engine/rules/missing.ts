import { conductorOhms } from '../calc/network'
import { kindOf } from '../kinds/all'
import type { Part } from '../model/design'
import type { Fields } from '../model/fields'
import { sizeIn } from '../model/sizes'
import { complete } from '../model/values'
import { type Case, found, type Rule } from './rule'

/** D1: size or length of a conductor is not stated: shares, drop and the run ahead of the first device are not checked. */
export const missingRun: Rule = {
  id: 'D1',
  looksFor: 'conductors without a size or a length',
  check: ({ border, design }) =>
    [...border.conductors.values()].flatMap((c) => {
      if (conductorOhms(design, c) !== null) return []
      return [
        found(
          'D1',
          'not-checked',
          'method',
          { conductors: [c.id] },
          {
            conductor: c.id,
            size: !sizeIn(design, c.size),
            length: c.lengthM === null,
            gone: c.size !== null && !sizeIn(design, c.size),
          },
        ),
      ]
    }),
}

/** D2: a figure of a part is not stated, and some check needs it. */
export const missingField: Rule = {
  id: 'D2',
  looksFor: 'parts with a figure missing that a check needs',
  check: (c) => {
    const rows = unratedWays(c)
    const unknown = new Set([...c.border.unknownDevices].map((id) => c.border.devices.get(id)?.part))
    return c.design.parts.flatMap((part) => {
      const kind = kindOf(part.kind)
      if (!kind) return []
      const required = requiredOf(kind.fields, part)
      const lacking = [
        ...required,
        ...(rows.get(part.id) ?? []),
        ...(required.length === 0 && unknown.has(part.id) ? [currentOf(kind.fields, part)] : []),
      ]
      if (lacking.length === 0) return []
      return [found('D2', 'not-checked', 'method', { parts: [part.id] }, { part: part.id, fields: lacking })]
    })
  },
}

function requiredOf(fields: Fields, part: Part): string[] {
  const values = complete(fields, part.values)
  return Object.entries(fields)
    .filter(([key, field]) => field.required && (values[key] === null || values[key] === ''))
    .map(([, field]) => field.label)
}

/** What a device's current follows from, where no field is required by itself. */
function currentOf(fields: Fields, part: Part): string {
  if (fields.currentA && fields.powerW) return 'Running current or power'
  const values = complete(fields, part.values)
  const empty = Object.entries(fields).filter(
    ([key, field]) =>
      field.type === 'number' && field.role !== 'result' && field.unit === 'A' && values[key] === null,
  )
  const others = Object.entries(fields).filter(
    ([key, field]) => field.type === 'number' && field.role !== 'result' && values[key] === null,
  )
  return (empty[0] ?? others[0])?.[1].label ?? 'Current'
}

/** Ways of fuse blocks that are in use and have no rating, by part. */
function unratedWays({ border }: Case): Map<string, string[]> {
  const joined = new Set<string>()
  for (const c of border.conductors.values())
    for (const end of [c.from, c.to]) joined.add(`${end.part}/${end.terminal}`)
  const ways = new Map<string, string[]>()
  for (const id of border.unrated) {
    const ref = border.branches.get(id)
    if (!ref || ref.branch.name === undefined || ref.branch.kind !== 'fuse') continue
    if (!joined.has(`${ref.part}/${ref.branch.to}`)) continue
    const list = ways.get(ref.part)
    const rating = `Rating of ${ref.branch.name}`
    if (list) list.push(rating)
    else ways.set(ref.part, [rating])
  }
  return ways
}
