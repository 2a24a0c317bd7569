import type { Answers } from '../../calc/answers'
import { contextOf } from '../../calc/network'
import { electricalIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import { bodyColour, fuseClass } from '../../kinds/fuseforms'
import { makingOf } from '../../model/buying'
import type { Design, Part, PartId } from '../../model/design'
import { complete } from '../../model/values'
import type { Making } from '../../tables/making'
import { type ArticleKey, articlesIn } from './articles'
import { cablesOf, copperKg } from './cable'
import { figures, words } from './columns'
import { cableName, insulationWords } from './cutlist'
import { hasWays } from './fusechart'
import { type Column, natural, rounded, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('section', 'Section', 12, { band: true }),
  words('what', 'What', 26),
  words('ratings', 'Ratings', 24),
  figures('quantity', 'Quantity', '', 7),
  words('per', 'Unit', 4),
  words('where', 'Designations', 30),
  figures('copper', 'Copper', 'kg', 7, { decimals: 2 }),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key'] | ArticleKey
type Row = ScheduleRow<Key>
/** A row before the workshop's own figures. */
type Counted = ScheduleRow<(typeof COLUMNS)[number]['key']>

/** What to put on the bench: parts of one kind and rating together, fuses of the ways, cable by the metre as cut. */
export function partsList(
  design: Design,
  answers: Answers,
  making: Making = makingOf(design),
): Schedule<Key> {
  const articles = articlesIn(design)
  const rows = [...partRows(design), ...fuseRows(design), ...cableRows(design, answers, making)].map(
    (row): Row => ({ ...row, cells: { ...row.cells, ...articles.of(row.key, Number(row.cells.quantity)) } }),
  )
  return {
    key: 'parts',
    title: 'Parts list',
    columns: [...COLUMNS, ...articles.columns],
    rows,
    notes: [
      'Ratings are those of the drawing. Article numbers, prices and weights are those that the workshop has stated.',
      ...articles.sums(rows),
      'Fuses: one for each way that holds one; spares are added by the workshop.',
      'Copper: nominal section × drawn length × 8.89 g/cm³ (IEC 60028, from memory).',
    ],
  }
}

/** One thing that is counted. */
interface Item {
  readonly key: string
  readonly what: string
  readonly ratings: ScheduleCell
  readonly name: string
  readonly part: PartId
}

function counted(section: string, items: readonly Item[]): Counted[] {
  const groups = new Map<string, Item[]>()
  for (const item of items) groups.set(item.key, [...(groups.get(item.key) ?? []), item])
  return [...groups].map(([key, group]) => ({
    key: `${section}/${key}`,
    name: group[0]!.what,
    cells: {
      section,
      what: group[0]!.what,
      ratings: group[0]!.ratings,
      quantity: group.length,
      per: 'pcs',
      where: group.map((i) => i.name).join(', '),
      copper: '',
    },
    parts: [...new Set(group.map((i) => i.part))],
    conductors: [],
  }))
}

const inOrder = (design: Design): readonly Part[] =>
  [...design.parts].sort((a, b) => natural(a.designation, b.designation))

function partRows(design: Design): Counted[] {
  const items = inOrder(design).map((part): Item => {
    const kind = kindOf(part.kind)
    const what = kind?.title ?? part.kind
    const caption = kind ? kind.caption(complete(kind.fields, part.values)) : []
    const ratings = [...caption, ...polesOf(design, part)].join(', ')
    return { key: `${part.kind}/${ratings}`, what, ratings, name: part.designation, part: part.id }
  })
  return counted('Parts', items)
}

/** Of a breaker, how many poles it opens: it is ordered by them. */
function polesOf(design: Design, part: Part): string[] {
  if (part.kind !== 'breaker') return []
  const poles = electricalIn(part, contextOf(design))?.branches.length ?? 0
  return [poles === 1 ? '1 pole' : `${poles} poles`]
}

function fuseRows(design: Design): Counted[] {
  const items = inOrder(design)
    .filter(hasWays)
    .flatMap((part) => {
      const fuses = electricalIn(part, contextOf(design))?.branches.filter((b) => b.kind === 'fuse') ?? []
      return fuses.flatMap((fuse): Item[] => {
        if (fuse.ratingA === null) return []
        const form = fuseClass(part)
        const colour = bodyColour(part, fuse.ratingA)
        const ratings = `${fuse.ratingA} A${colour === '' ? '' : `, ${colour}`}`
        const what = form === '' ? 'Fuse' : form
        const name = `${part.designation}:${fuse.key}`
        return [{ key: `${form}/${fuse.ratingA}`, what, ratings, name, part: part.id }]
      })
    })
    .sort((a, b) => natural(a.key, b.key))
  return counted('Fuses in blocks', items)
}

function cableRows(design: Design, answers: Answers, making: Making): Counted[] {
  return cablesOf(design, answers, making).flatMap((cable): Counted[] => {
    const { size, plan } = cable
    if (size === null || plan.cuts.length === 0) return []
    return [
      {
        key: `Cable/${cable.key}`,
        name: cableName(cable),
        cells: {
          section: 'Cable',
          what: `Cable ${cableName(cable)}`,
          ratings: insulationWords(cable),
          quantity: rounded(
            plan.cuts.reduce((sum, c) => sum + c.lengthM, 0),
            2,
          ),
          per: 'm',
          where: `${plan.cuts.length} ${plan.cuts.length === 1 ? 'conductor' : 'conductors'}: see cut list`,
          copper: rounded(
            plan.cuts.reduce((sum, c) => sum + copperKg(size, c.item.lengthM!), 0),
            2,
          ),
        },
        parts: [],
        conductors: plan.cuts.map((c) => c.item.id),
      },
    ]
  })
}
