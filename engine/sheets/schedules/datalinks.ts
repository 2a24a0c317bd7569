import type { Answers } from '../../calc/answers'
import { terminalsIn } from '../../edit/terminal'
import type { Design, Part } from '../../model/design'
import type { Terminal } from '../../model/kind'
import { conductorsAt } from '../../model/lookup'
import { plugWords } from '../../tables/plugs'
import { natureIn } from '../nature'
import { figures, words } from './columns'
import { endOf, titleOf } from './ends'
import { NO_LENGTH } from './lug'
import { type Column, natural, rounded, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('number', 'No.', 5),
  words('device', 'Device', 24),
  words('port', 'Its port', 18),
  words('plug', 'Plug', 18),
  words('location', 'Location', 14),
  words('hub', 'To', 24),
  words('hubPort', 'Port', 18),
  words('hubPlug', 'Plug there', 18),
  figures('length', 'Length', 'm', 7, { decimals: 2 }),
  words('remark', 'Remark', 20),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Data leads by number, then devices by radio, then ports of devices that no lead is drawn to. */
export function dataLinks(design: Design, answers: Answers): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const leads = [...design.conductors]
    .filter((c) => natureOf(c) === 'data')
    .sort((a, b) => natural(a.number, b.number))
    .map((c): ScheduleRow<Key> => {
      const [from, to] = [endOf(design, c.from), endOf(design, c.to)]
      return {
        key: c.id,
        name: c.number,
        cells: {
          number: c.number,
          device: from.part,
          port: from.terminal,
          plug: plugCell(from.stud),
          location: from.location,
          hub: to.part,
          hubPort: to.terminal,
          hubPlug: plugCell(to.stud),
          length: c.lengthM === null ? NO_LENGTH : rounded(c.lengthM, 2),
          remark: c.remark,
        },
        parts: [],
        conductors: [c.id],
      }
    })
  const parts = [...design.parts].sort((a, b) => natural(a.designation, b.designation))
  return {
    key: 'data-links',
    title: 'Data links',
    columns: COLUMNS,
    rows: [
      ...leads,
      ...parts.filter((p) => p.values.data === 'wireless').map((p) => withoutLead(p, '', null, 'by radio')),
      ...parts.flatMap((p) =>
        isGatherer(p)
          ? []
          : freePorts(design, p).map((t) => withoutLead(p, t.name, t.stud ?? null, 'NO LEAD DRAWN')),
      ),
    ],
    notes: parts.filter(isGatherer).map(
      (p) =>
        `${titleOf(p)}: ${
          freePorts(design, p)
            .map((t) => t.name)
            .join(', ') || 'no port'
        } free.`,
    ),
  }
}

/** Offers ports to others. */
const isGatherer = ({ kind }: Part): boolean => kind === 'monitor-hub' || kind === 'data-expander'

const freePorts = (design: Design, part: Part): readonly Terminal[] =>
  (terminalsIn(part) ?? []).filter(
    (t) => t.pole === 'data' && conductorsAt(design, part.id, t.key).length === 0,
  )

/** What the lead has at that end. */
const plugCell = (form: string | null): ScheduleCell =>
  plugWords(form) ?? { notKnown: 'the part does not state which plug its port takes' }

const withoutLead = (part: Part, port: string, form: string | null, remark: string): ScheduleRow<Key> => ({
  key: `${part.id}/${port}`,
  name: part.designation,
  cells: {
    number: '',
    device: titleOf(part),
    port,
    plug: port === '' ? '' : plugCell(form),
    location: part.location,
    hub: '',
    hubPort: '',
    hubPlug: '',
    length: '',
    remark,
  },
  parts: [part.id],
  conductors: [],
})
