import type { Answers, Metered, RunAnswer } from '../../calc/answers'
import { contextOf } from '../../calc/network'
import { electricalIn } from '../../edit/terminal'
import { bodyColour, fuseClass } from '../../kinds/fuseforms'
import type { Design, Part } from '../../model/design'
import type { PartBranch } from '../../model/kind'
import { conductorsAt } from '../../model/lookup'
import { isRows } from '../../model/values'
import { ampsCell } from './amount'
import { figures, words } from './columns'
import { leadsTo } from './downstream'
import { titleOf } from './ends'
import { type Column, natural, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('block', 'Block', 20, { band: true }),
  words('way', 'Way', 5),
  figures('rating', 'Fuse', 'A', 5),
  words('colour', 'Body', 11),
  words('label', 'Label', 20),
  words('leads', 'Leads to', 28),
  words('conductors', 'Conductor', 9),
  figures('current', 'Worst case', 'A', 7),
  words('metered', 'Load-side shunt', 14),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Every fuse and breaker: blocks way by way, then those that stand alone. */
export function fuseChart(design: Design, answers: Answers): Schedule<Key> {
  const fused = design.parts
    .map((part) => ({ part, fuses: fusesOf(design, part) }))
    .filter(({ fuses }) => fuses.length > 0)
    .sort((a, b) => natural(a.part.designation, b.part.designation))
  const blocks = fused.filter(({ part }) => hasWays(part))
  const single = fused.filter(({ part }) => !hasWays(part))
  return {
    key: 'fuses',
    title: 'Fuse chart',
    columns: COLUMNS,
    rows: [...blocks, ...single].flatMap(({ part, fuses }) =>
      fuses.map((fuse, i) => rowOf(design, answers, part, fuse, i)),
    ),
    notes: [
      'Body: standard colour of blade fuses (DIN 72581-3, ISO 8820, restated); other forms have none.',
      'Leads to: what stands behind the fuse, as far as it is drawn; where that is a source, the fuse guards it from the batteries.',
      'A fuse is replaced by one of the same rating and form only.',
    ],
  }
}

const fusesOf = (design: Design, part: Part): readonly PartBranch[] =>
  electricalIn(part, contextOf(design))?.branches.filter((b) => b.kind === 'fuse') ?? []

export const hasWays = (part: Part): boolean => isRows(part.values.ways ?? null)

function rowOf(
  design: Design,
  answers: Answers,
  part: Part,
  fuse: PartBranch,
  index: number,
): ScheduleRow<Key> {
  const inBlock = hasWays(part)
  const behind = conductorsAt(design, part.id, fuse.to)
  const reached = leadsTo(design, { part: part.id, terminal: fuse.to })
  const block = [titleOf(part), fuseClass(part), part.location].filter((s) => s !== '').join(' · ')
  return {
    key: `${part.id}/${fuse.key}`,
    name: inBlock ? `${part.designation}:${fuse.key}` : part.designation,
    cells: {
      block: inBlock ? block : SINGLE,
      way: inBlock ? fuse.key : part.designation,
      rating: fuse.ratingA ?? NO_FUSE,
      colour: fuse.ratingA === null ? NO_FUSE : bodyColour(part, fuse.ratingA),
      label: inBlock ? wayLabel(part, index) : labelOfSingle(part),
      leads: reached.length > 0 ? reached.map(titleOf).join(', ') : behind.length === 0 ? 'spare' : '',
      conductors: behind.map((c) => c.number).join(', '),
      current: behind.length === 0 ? '' : ampsCell(currentOf(answers, part, fuse), design),
      metered: meteredCell(behind.map((c) => meteredOf(answers.runs.get(c.id)))),
    },
    parts: [part.id],
    conductors: behind.map((c) => c.id),
  }
}

const SINGLE = 'Fuses and breakers that stand alone'
const NO_FUSE = { notKnown: 'no fuse is chosen' }

const labelOfSingle = (part: Part): string => [part.name, part.location].filter((s) => s !== '').join(', ')

/** What the designer wrote beside a way, counted from 0. */
export function wayLabel(part: Part, index: number): string {
  const ways = part.values.ways ?? null
  const label = isRows(ways) ? ways[index]?.label : ''
  return typeof label === 'string' ? label : ''
}

function currentOf(answers: Answers, part: Part, fuse: PartBranch) {
  const worst = answers.branches.get(`${part.id}/${fuse.key}`)?.worst
  return worst && 'value' in worst ? { value: worst.value.amps } : worst
}

const METERED: Readonly<Record<Metered, string>> = {
  measured: 'measured',
  bypasses: 'NOT measured',
  shared: 'partly measured',
  'source-side': 'source side',
  'no-load-shunt': 'no such shunt',
}

/** What carries no current, as a sense lead, is not there to be measured. */
const meteredOf = (run: RunAnswer | undefined): Metered | null =>
  run && 'value' in run.design && run.design.value === 0 ? null : (run?.metered ?? null)

const meteredCell = (found: readonly (Metered | null)[]): ScheduleCell =>
  [...new Set(found.flatMap((m) => (m === null ? [] : [METERED[m]])))].join(', ')
