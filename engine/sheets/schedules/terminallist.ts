import type { Answers } from '../../calc/answers'
import { terminalsIn } from '../../edit/terminal'
import type { Conductor, Design, Part, TerminalRef } from '../../model/design'
import type { Pole } from '../../model/kind'
import { conductorsAt } from '../../model/lookup'
import { formWords } from '../../words/forms'
import { terminalWords } from '../../words/names'
import { natureIn } from '../nature'
import { words } from './columns'
import { endOf, titleOf } from './ends'
import { lugAt, lugCell, NOT_STATED, sizeOf } from './lug'
import { type Column, natural, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('part', 'Part', 20, { band: true }),
  words('terminal', 'Terminal', 18),
  words('stud', 'Form', 12),
  words('number', 'Conductor', 9),
  words('size', 'Size', 9),
  words('colour', 'Colour', 6),
  words('lug', 'Fitting', 14),
  words('far', 'From', 30),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** What lands where: every terminal of every part in the order of its studs, with the conductors on it. */
export function terminalList(design: Design, answers: Answers): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const landing = (part: Part, at: Place, c: Conductor, ref: TerminalRef): ScheduleRow<Key> => {
    const there = ref === c.from ? c.to : c.from
    const [here, far] = [endOf(design, ref), endOf(design, there)]
    const size = sizeOf(design, c)
    return {
      key: `${part.id}/${ref.terminal}/${c.id}`,
      name: c.number,
      cells: {
        ...heading(part, at),
        number: c.number,
        size: 'notKnown' in size ? size : size.name,
        colour: c.colour,
        lug: lugCell(lugAt(design, c, here, natureOf(c))),
        far: `${far.part}, ${far.terminal}`,
      },
      parts: [part.id],
      conductors: [c.id],
    }
  }
  return {
    key: 'terminals',
    title: 'Terminals',
    columns: COLUMNS,
    rows: [...design.parts]
      .sort((a, b) => natural(a.designation, b.designation))
      .flatMap((part) =>
        placesOf(design, part).flatMap((at) => {
          const rows = at.terminals.flatMap((terminal) =>
            conductorsAt(design, part.id, terminal).flatMap((c) =>
              [c.from, c.to]
                .filter((ref) => ref.part === part.id && ref.terminal === terminal)
                .map((ref) => landing(part, at, c, ref)),
            ),
          )
          return rows.length > 0 ? rows : [freeRow(part, at)]
        }),
      ),
    notes: [
      'Lugs that share a stud: the one for the greatest current against the bar, nothing between lug and bar (common practice).',
      'Torque: the figure of the maker of the part. Published sets differ by a factor of two, so none is printed.',
    ],
  }
}

/** A place to land on: terminals that a drawing shows apart and a part has as one, as the two sides of a stud. */
interface Place {
  readonly name: string
  readonly stud: string | null
  readonly pole: Pole | null
  readonly terminals: readonly string[]
}

/** Places in the order of the kind; of an unknown kind, what conductors refer to. */
function placesOf(design: Design, part: Part): readonly Place[] {
  const terminals = terminalsIn(part)
  if (!terminals) {
    const referred = design.conductors.flatMap((c) => [c.from, c.to]).filter((ref) => ref.part === part.id)
    return [...new Set(referred.map((ref) => ref.terminal))]
      .sort(natural)
      .map((key) => ({ name: key, stud: null, pole: null, terminals: [key] }))
  }
  const places = new Map<string, Place>()
  for (const t of terminals) {
    const name = terminalWords(t)
    const before = places.get(name)
    places.set(name, {
      name,
      stud: t.stud ?? null,
      pole: t.pole,
      terminals: [...(before?.terminals ?? []), t.key],
    })
  }
  return [...places.values()]
}

const heading = (part: Part, { name, stud }: Place) => ({
  part: [titleOf(part), part.location].filter((s) => s !== '').join(' · '),
  terminal: name,
  stud: stud === null ? NOT_STATED : formWords(stud),
})

/** A power terminal that nothing is joined to is free for what comes; one for data, sensing or mains is not used. */
function freeRow(part: Part, at: Place): ScheduleRow<Key> {
  const canWait = at.pole !== 'data' && at.pole !== 'sense' && at.pole !== 'mains'
  const none: ScheduleCell = ''
  return {
    key: `${part.id}/${at.terminals.join('+')}`,
    name: `${part.designation}, ${at.name}`,
    cells: {
      ...heading(part, at),
      number: canWait ? 'free' : 'not used',
      size: none,
      colour: none,
      lug: none,
      far: none,
    },
    parts: [part.id],
    conductors: [],
  }
}
