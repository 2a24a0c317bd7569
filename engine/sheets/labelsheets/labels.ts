import { contextOf } from '../../calc/network'
import { electricalIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import type { ConductorId, Design, Part, PartId } from '../../model/design'
import { complete } from '../../model/values'
import { endOf, titleOf } from '../schedules/ends'
import { wayLabel } from '../schedules/fusechart'
import { natural } from '../schedules/schedule'

export const LABEL_KINDS = {
  conductor: 'Conductor markers',
  way: 'Fuse ways',
  part: 'Parts',
  warning: 'Warnings',
} as const
export type LabelKind = keyof typeof LABEL_KINDS

/** One label to be stuck on or shrunk over. */
export interface Label {
  /** Unique in the design. */
  readonly key: string
  readonly kind: LabelKind
  /** Where it goes: "at F5:4". */
  readonly place: string
  /** The first line is the one that is read from afar. */
  readonly lines: readonly string[]
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
}

/** Every label of a design: markers for both ends of each conductor, fuse ways, parts, warnings. */
export function labelsOf(design: Design): readonly Label[] {
  const parts = [...design.parts].sort((a, b) => natural(a.designation, b.designation))
  return [
    ...markersOf(design),
    ...parts.flatMap((part) => wayLabels(design, part)),
    ...parts.map(partLabel),
    ...parts.flatMap(warningLabels),
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
      lines: [`${part.designation}:${fuse.key}  ${rating}`, label === '' ? 'spare' : label],
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

/** What has to be known before it is touched. Common practice, no source; local codes may ask for other words. */
const WARNINGS: Readonly<Record<string, readonly [head: string, text: string]>> = {
  battery: ['BATTERY', 'Thousands of amps in a short circuit. Insulate tools, take off rings and watches.'],
  'starting-battery': ['BATTERY', 'Thousands of amps in a short circuit. Insulate tools.'],
  'pv-array': ['PV ARRAY', 'Live in daylight, switched off or not. Cover it or disconnect it first.'],
  'solar-controller': ['PV INPUT', 'Live in daylight. Disconnect the array before the battery.'],
  inverter: ['MAINS', 'Makes mains voltage from the battery. Licensed persons only.'],
  'inverter-charger': ['MAINS', 'Two supplies: battery and shore. Licensed persons only.'],
  'mains-inlet': ['MAINS', 'Licensed persons only.'],
  'mains-distribution': ['MAINS', 'May be fed by an inverter as well. Licensed persons only.'],
  isolator: ['ISOLATOR', 'Turn off in an emergency, and before work. Chargers and PV stay live.'],
}

function warningLabels(part: Part): Label[] {
  const words = WARNINGS[part.kind]
  if (!words) return []
  return [
    {
      key: `${part.id}/warning`,
      kind: 'warning',
      place: `on ${titleOf(part)}`,
      lines: [`${words[0]} ${part.designation}`, words[1]],
      parts: [part.id],
      conductors: [],
    },
  ]
}
