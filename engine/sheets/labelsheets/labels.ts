import { contextOf } from '../../calc/network'
import { electricalIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import type { Design, Part } from '../../model/design'
import { complete } from '../../model/values'
import { endOf } from '../schedules/ends'
import { wayLabel } from '../schedules/fusechart'
import { natural } from '../schedules/schedule'
import type { Label } from './label'
import { warningsOf } from './warnings'

/** Every label of a design: markers for both ends of each conductor, fuse ways, parts, warnings and cautions. */
export function labelsOf(design: Design): readonly Label[] {
  const parts = [...design.parts].sort((a, b) => natural(a.designation, b.designation))
  return [
    ...markersOf(design),
    ...parts.flatMap((part) => wayLabels(design, part)),
    ...parts.map(partLabel),
    ...warningsOf(design, parts),
  ]
}

function markersOf(design: Design): Label[] {
  return [...design.conductors]
    .sort((a, b) => natural(a.number, b.number))
    .flatMap((c) => {
      const [from, to] = [endOf(design, c.from), endOf(design, c.to)]
      const lines = [c.number, `${from.short} / ${to.short}`]
      return [from, to].map(
        (end, i): Label => ({
          key: `${c.id}/${i}`,
          kind: 'conductor',
          place: `at ${end.short}`,
          lines,
          parts: [],
          conductors: [c.id],
        }),
      )
    })
}

function wayLabels(design: Design, part: Part): Label[] {
  const fuses = electricalIn(part, contextOf(design))?.branches.filter((b) => b.kind === 'fuse') ?? []
  if (fuses.length < 2) return []
  return fuses.map((fuse, i): Label => {
    const rating = fuse.ratingA === null ? '– A' : `${fuse.ratingA} A`
    const label = wayLabel(part, i)
    return {
      key: `${part.id}/${fuse.key}`,
      kind: 'way',
      place: `on ${part.designation}`,
      lines: [`${part.designation}:${fuse.key} ${rating}`, label === '' ? 'spare' : label],
      parts: [part.id],
      conductors: [],
    }
  })
}

const partLabel = (part: Part): Label => ({
  key: part.id,
  kind: 'part',
  place: part.location === '' ? `on ${part.designation}` : `on ${part.designation}, ${part.location}`,
  lines: [part.designation, ...(part.name === '' ? [] : [part.name]), ...captionOf(part).slice(0, 1)],
  parts: [part.id],
  conductors: [],
})

function captionOf(part: Part): readonly string[] {
  const kind = kindOf(part.kind)
  return kind ? kind.caption(complete(kind.fields, part.values)) : []
}
