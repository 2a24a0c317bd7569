import type { Answers } from '../../calc/answers'
import type { ConductorId, Design } from '../../model/design'
import { lugHole } from '../../tables/lugs'
import { SIZES } from '../../tables/sizes'
import { natureIn } from '../nature'
import { figures, words } from './columns'
import { endOf } from './ends'
import { endsOf, lugAt, NO_SIZE, sleeveOver } from './lug'
import { type Column, natural, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('section', 'Section', 12, { band: true }),
  words('what', 'What', 20),
  words('size', 'Conductor', 14),
  words('stud', 'Stud', 10),
  figures('hole', 'Hole', 'mm', 6, { decimals: 1 }),
  figures('over', 'Over', 'mm', 6, { decimals: 1 }),
  figures('count', 'Count', '', 6),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Something of which one stands at each end, on the way to being counted. */
interface Piece {
  /** Order and identity. */
  readonly key: string
  readonly cells: Readonly<Record<Exclude<Key, 'count'>, ScheduleCell>>
  readonly conductor: ConductorId
}

/** Lugs by conductor and stud, sleeves by the diameter that they go over: one of each for every end. */
export function lugCount(design: Design, answers: Answers): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const ends = design.conductors.flatMap((c) =>
    endsOf(c).map((ref) => ({ c, end: endOf(design, ref), nature: natureOf(c) })),
  )
  const lugs = ends.flatMap(({ c, end, nature }): Piece[] => {
    const lug = lugAt(c, end, nature)
    if (lug === null) return []
    const conductor = c.id
    if ('notKnown' in lug) {
      const cells = {
        section: LUGS,
        what: 'by the part at hand',
        hole: '',
        over: '',
        stud: lug,
        size: NO_SIZE,
      }
      const known = SIZES.find((s) => s.key === c.size)
      return [
        {
          key: `z${order(known?.key)}/${lug.notKnown}`,
          cells: { ...cells, size: known?.name ?? NO_SIZE },
          conductor,
        },
      ]
    }
    const ring = /^M\d/.test(lug.stud)
    const hole = lugHole(lug.stud)?.value ?? (ring ? NO_HOLE : '')
    const what = ring ? 'Ring lug' : lug.stud.startsWith('blade') ? 'Blade receptacle' : 'As stated'
    const cells = { section: LUGS, what, size: lug.size.name, stud: lug.stud, hole, over: '' }
    return [{ key: `a${order(lug.size.key)}/${lug.stud}`, cells, conductor }]
  })
  const sleeves = ends.flatMap(({ c, nature }): Piece[] => {
    const over = sleeveOver(c, nature)
    if (over === null) return []
    const size = SIZES.find((s) => s.key === c.size)
    const cells = { section: SLEEVES, what: 'Sleeve', size: size?.name ?? NO_SIZE, stud: '', hole: '', over }
    return [{ key: `${order(size?.key)}`, cells, conductor: c.id }]
  })
  return {
    key: 'lugs',
    title: 'Lugs and sleeves',
    columns: COLUMNS,
    rows: [...countedRows('lug', lugs), ...countedRows('sleeve', sleeves)],
    notes: [
      'Hole: clearance for the stud after DIN 46234 and DIN 46235, from memory; M6 is 6.4 or 6.5 mm. The lug is for the class of the conductor at hand.',
      'Over: diameter over the insulation; a sleeve has to pass it and the barrel of the lug. One sleeve and one marker for each end.',
      'Spares are added by the workshop.',
    ],
  }
}

const LUGS = 'Lugs'
const SLEEVES = 'Sleeves'
const NO_HOLE = { notKnown: 'the table of lugs has no such stud' }

/** Place in the size catalogue; what is not in it comes last. */
const order = (size: string | undefined): number => {
  const at = SIZES.findIndex((s) => s.key === size)
  return at < 0 ? SIZES.length : at
}

function countedRows(what: string, pieces: readonly Piece[]): ScheduleRow<Key>[] {
  const groups = new Map<string, Piece[]>()
  for (const piece of [...pieces].sort((a, b) => natural(a.key, b.key)))
    groups.set(piece.key, [...(groups.get(piece.key) ?? []), piece])
  return [...groups].map(([key, group]) => ({
    key: `${what}/${key}`,
    name: nameOf(group[0]!),
    cells: { ...group[0]!.cells, count: group.length },
    parts: [],
    conductors: [...new Set(group.map((p) => p.conductor))],
  }))
}

/** A row goes by its conductor. */
const nameOf = ({ cells }: Piece): string => (typeof cells.size === 'string' ? cells.size : 'no size')
