import type { Answers } from '../../calc/answers'
import { contextOf } from '../../calc/network'
import { electricalIn, terminalsIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import type { Design, Part, TerminalRef } from '../../model/design'
import type { Electrical, PartBranch } from '../../model/kind'
import { partById } from '../../model/lookup'
import { ampsCell } from './amount'
import { figures, words } from './columns'
import { farEnds, leadsTo } from './downstream'
import { titleOf } from './ends'
import { type Column, natural, rounded, type Schedule, type ScheduleCell } from './schedule'

const COLUMNS = [
  words('part', 'Part', 20),
  words('location', 'Location', 12),
  words('kind', 'Kind', 16),
  words('contact', 'Contact', 10),
  words('feed', 'On its feed side', 20),
  words('switches', 'Switches', 26),
  figures('rating', 'Rating', 'A', 6),
  figures('current', 'Worst case', 'A', 6),
  figures('coilV', 'Coil', 'V', 5),
  figures('coil', 'Coil', 'A', 5, { decimals: 2 }),
  words('worked', 'Worked by', 20),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Relays, switches, isolators and contacts that work by themselves: one row a contact. */
export function switchTable(design: Design, answers: Answers): Schedule<Key> {
  return {
    key: 'switches',
    title: 'Relays and switches',
    columns: COLUMNS,
    rows: [...design.parts]
      .filter(switches)
      .sort((a, b) => natural(a.designation, b.designation))
      .flatMap((part) => {
        const model = electricalIn(part, contextOf(design))
        if (!model) return []
        return model.branches.map((contact) => ({
          key: `${part.id}/${contact.key}`,
          name: part.designation,
          cells: cellsOf(design, answers, part, model, contact),
          parts: [part.id],
          conductors: [],
        }))
      }),
    notes: [
      'Contacts by the marks on the part; relays by DIN 72552: 30 common, 87 make, 87a break, 86 and 85 coil.',
    ],
  }
}

function switches(part: Part): boolean {
  const group = kindOf(part.kind)?.group
  return group === 'switching' || group === 'control'
}

function cellsOf(
  design: Design,
  answers: Answers,
  part: Part,
  model: Electrical,
  contact: PartBranch,
): Record<Key, ScheduleCell> {
  const at = (terminal: string): TerminalRef => ({ part: part.id, terminal })
  const worst = answers.branches.get(`${part.id}/${contact.key}`)?.worst
  const coil = model.devices.find((d) => d.role === 'load' && d.minA !== null)
  return {
    part: titleOf(part),
    location: part.location,
    kind: kindOf(part.kind)?.title ?? part.kind,
    contact: `${markOf(part, contact.from)}–${markOf(part, contact.to)}`,
    feed: namesAt(design, at(contact.from)),
    switches: leadsTo(design, at(contact.to)).map(titleOf).join(', '),
    rating: contact.ratingA ?? { notKnown: 'no rating is typed' },
    current: ampsCell(worst && 'value' in worst ? { value: worst.value.amps } : worst, design),
    coil: coil && typeof coil.minA === 'number' ? rounded(-coil.minA, 3) : '',
    coilV: coilVolts(part),
    worked: workedBy(design, part, model),
  }
}

/** Rated voltage of what works it; nothing where a hand does. */
function coilVolts(part: Part): ScheduleCell {
  const field = kindOf(part.kind)?.fields.coilV
  if (!field) return ''
  const volts = part.values.coilV
  return typeof volts === 'number' ? volts : { notKnown: 'no coil voltage is typed' }
}

/** Who closes it: what the coil is fed from; without one, a hand or the thing itself. */
function workedBy(design: Design, part: Part, model: Electrical): string {
  const coils = model.devices.filter((d) => d.role === 'load')
  const own = coils.filter((d) => !model.branches.some((b) => b.from === d.positive || b.to === d.positive))
  if (own.length > 0) {
    const names = own.map((d) => namesAt(design, { part: part.id, terminal: d.positive }))
    return [...new Set(names.filter((n) => n !== ''))].join(', ')
  }
  return coils.length > 0 || kindOf(part.kind)?.group === 'control' ? 'itself' : 'hand'
}

const namesAt = (design: Design, ref: TerminalRef): string =>
  [...new Set(farEnds(design, ref).map((r) => partById(design, r.part)))]
    .flatMap((p) => (p ? [titleOf(p)] : []))
    .join(', ')

const markOf = (part: Part, key: string): string => {
  const mark = terminalsIn(part)?.find((t) => t.key === key)?.mark ?? ''
  return mark === '' ? key : mark
}
