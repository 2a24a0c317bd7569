import type { Answers } from '../../calc/answers'
import type { Conductor, ConductorId, Design, TerminalRef } from '../../model/design'
import { sizeIn } from '../../model/sizes'
import { fittingOf } from '../../tables/fittings'
import { lugHole } from '../../tables/lugs'
import { SIZES } from '../../tables/sizes'
import { formWords } from '../../words/forms'
import { type Nature, natureIn } from '../nature'
import { type ArticleKey, articlesIn } from './articles'
import { figures, words } from './columns'
import { type End, endOf } from './ends'
import { endsOf, type Lug, lugAt, NO_SIZE, NOT_STATED, sleeveOver } from './lug'
import {
  type Column,
  type NotKnown,
  natural,
  type Schedule,
  type ScheduleCell,
  type ScheduleRow,
} from './schedule'

const COLUMNS = [
  words('section', 'Section', 12, { band: true }),
  words('what', 'What', 20),
  words('size', 'Conductor', 14),
  words('stud', 'Goes on', 14),
  figures('hole', 'Hole', 'mm', 6, { decimals: 1 }),
  figures('over', 'Over', 'mm', 6, { decimals: 1 }),
  figures('count', 'Count', '', 6),
] as const satisfies readonly Column[]

type Counted = (typeof COLUMNS)[number]['key']
type Key = Counted | ArticleKey

/** Something of which one stands at each end, on the way to being counted. */
interface Piece {
  /** Order and identity. */
  readonly key: string
  readonly cells: Readonly<Record<Exclude<Counted, 'count'>, ScheduleCell>>
  readonly conductors: readonly ConductorId[]
}

/** Lugs, ferrules and joints by conductor and form of terminal, sleeves by the diameter that they go over: one of each for every end. */
export function lugCount(design: Design, answers: Answers): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const ends = design.conductors.flatMap((c) =>
    endsOf(c).map((ref): MetEnd => ({ c, ref, end: endOf(design, ref), nature: natureOf(c) })),
  )
  const fitted = endPieces(design, ends)
  const sleeves = ends.flatMap(({ c, nature }): Piece[] => {
    const over = sleeveOver(design, c, nature)
    if (over === null) return []
    const size = sizeIn(design, c.size)
    const cells = { section: SLEEVES, what: 'Sleeve', size: size?.name ?? NO_SIZE, stud: '', hole: '', over }
    return [{ key: `${order(size?.key)}`, cells, conductors: [c.id] }]
  })
  const articles = articlesIn(design)
  const rows = [...countedRows('lug', fitted), ...countedRows('sleeve', sleeves)].map(
    (row): ScheduleRow<Key> => ({
      ...row,
      cells: { ...row.cells, ...articles.of(row.key, Number(row.cells.count)) },
    }),
  )
  return {
    key: 'lugs',
    title: 'Lugs, ferrules and sleeves',
    columns: [...COLUMNS, ...articles.columns],
    rows,
    notes: [
      ...articles.sums(rows),
      'Hole: clearance for the stud after DIN 46234 and DIN 46235, from memory; M6 is 6.4 or 6.5 mm. The lug is for the class of the conductor at hand.',
      'Forms of terminals are those of the parts as drawn; where nobody has changed them, the usual ones of the kind (common practice, no source). Look at the part before ordering.',
      'Crimp joints, splices and post clamps are counted once a terminal, by the thickest conductor. Two conductors on one tab or in one clamp share a double receptacle or a twin ferrule.',
      'Over: diameter over the insulation; a sleeve has to pass it and the barrel of the lug. One sleeve and one marker for each end.',
      'Spares are added by the workshop.',
    ],
  }
}

/** One end of a conductor, as it is met in the design. */
interface MetEnd {
  readonly c: Conductor
  readonly ref: TerminalRef
  readonly end: End
  readonly nature: Nature
}

/**
 * What is made up on the ends: a piece an end; one for all that meet at a terminal or at a part, by the thickest; one for
 * both ends on a tab or in a clamp.
 */
function endPieces(design: Design, ends: readonly MetEnd[]): Piece[] {
  const shared = new Map<string, { readonly piece: Piece; readonly mm2: number }>()
  const paired = new Map<string, Made[]>()
  const pieces: Piece[] = []
  const share = (place: string, piece: Piece, mm2: number): void => {
    const before = shared.get(place)
    if (!before || before.mm2 < mm2) shared.set(place, { piece, mm2 })
  }
  for (const { c, ref, end, nature } of ends) {
    const lug = lugAt(design, c, end, nature)
    if (lug === null) continue
    const fitting = end.stud === null ? undefined : fittingOf(end.stud)
    const terminal = `${ref.part}/${ref.terminal}`
    if (end.stud !== null && fitting?.double !== undefined)
      paired.set(terminal, [...(paired.get(terminal) ?? []), { c, form: end.stud, lug }])
    else if (!fitting || fitting.one === 'end') pieces.push(pieceOf(c, end.stud, lug))
    else {
      const mm2 = 'notKnown' in lug ? 0 : lug.size.sectionMm2
      share(`${fitting.one} ${fitting.one === 'part' ? ref.part : terminal}`, pieceOf(c, end.stud, lug), mm2)
    }
    if (fitting?.also !== undefined) share(`also ${terminal}`, alsoPiece(fitting.also, c), 0)
  }
  return [...pieces, ...[...paired.values()].flatMap(pairOf), ...[...shared.values()].map((s) => s.piece)]
}

/** What is made up on one end of a conductor, for a terminal whose form is known. */
interface Made {
  readonly c: Conductor
  readonly form: string
  readonly lug: Lug | NotKnown
}

/** Two ends at one terminal take one double piece; where a size is missing, or more of them meet, each is counted alone. */
function pairOf(met: readonly Made[]): Piece[] {
  const [a, b, more] = [...met].sort((p, q) => sectionOf(q) - sectionOf(p))
  const double = a && fittingOf(a.form)?.double
  if (!a || !b || more || double === undefined || 'notKnown' in a.lug || 'notKnown' in b.lug)
    return met.map(({ c, form, lug }) => pieceOf(c, form, lug))
  const single = pieceOf(a.c, a.form, a.lug)
  const [thick, thin] = [a.lug.size.name, b.lug.size.name]
  const size = thick === thin ? `2 × ${thick}` : `${thick} + ${thin}`
  return [
    {
      ...single,
      key: `${single.key}/double ${order(b.lug.size.key)}`,
      cells: { ...single.cells, what: double, size },
      conductors: [a.c.id, b.c.id],
    },
  ]
}

const sectionOf = ({ lug }: Made): number => ('notKnown' in lug ? 0 : lug.size.sectionMm2)

function pieceOf(c: Conductor, form: string | null, lug: Lug | NotKnown): Piece {
  const size = 'notKnown' in lug ? undefined : lug.size
  const stud = form === null ? NOT_STATED : formWords(form)
  const fitting = form === null ? undefined : fittingOf(form)
  const bolt = form === null ? null : (/M\d+$/.exec(form)?.[0] ?? null)
  return {
    key: `${form === null ? 'z' : 'a'}${order(size?.key)}/${form ?? ''}`,
    cells: {
      section: FITTINGS,
      what: fitting?.piece ?? 'by the part at hand',
      size: size?.name ?? NO_SIZE,
      stud,
      hole: bolt === null ? '' : (lugHole(bolt)?.value ?? NO_HOLE),
      over: '',
    },
    conductors: [c.id],
  }
}

const alsoPiece = (what: string, c: Conductor): Piece => ({
  key: `y/${what}`,
  cells: { section: FITTINGS, what, size: '', stud: '', hole: '', over: '' },
  conductors: [c.id],
})

const FITTINGS = 'Lugs, ferrules and joints'
const SLEEVES = 'Sleeves'
const NO_HOLE = { notKnown: 'the table of lugs has no such stud' }

/** Place in the size catalogue; what is not in it comes last. */
const order = (size: string | undefined): number => {
  const at = SIZES.findIndex((s) => s.key === size)
  return at < 0 ? SIZES.length : at
}

function countedRows(what: string, pieces: readonly Piece[]): ScheduleRow<Counted>[] {
  const groups = new Map<string, Piece[]>()
  for (const piece of [...pieces].sort((a, b) => natural(a.key, b.key)))
    groups.set(piece.key, [...(groups.get(piece.key) ?? []), piece])
  return [...groups].map(([key, group]) => ({
    key: `${what}/${key}`,
    name: nameOf(group[0]!),
    cells: { ...group[0]!.cells, count: group.length },
    parts: [],
    conductors: [...new Set(group.flatMap((p) => p.conductors))],
  }))
}

/** A row goes by its conductor. */
const nameOf = ({ cells }: Piece): string => (typeof cells.size === 'string' ? cells.size : 'no size')
