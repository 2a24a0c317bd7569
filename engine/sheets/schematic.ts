import type { Answers } from '../calc/answers'
import { changesSince } from '../calc/compare/since'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import type { Finding } from '../rules/finding'
import { moved } from './block'
import { cloudsOn } from './compared/clouds'
import type { FlowPage } from './flow'
import { holdsOf, type IndexRow } from './front'
import { frontPages, legendInFront, notePages } from './notes'
import { PAPERS, type Paper, type PaperSize } from './paper'
import { paperDrawings } from './paperdrawings'
import { placedLinks, placedMarks, placedOn } from './placed'
import { bySheet, type Placed, type Places, placesOn } from './places'
import { revisionTable } from './revisions'
import type { SceneView } from './scene'
import type { Sheet } from './sheet'
import { baseMarks, drawingArea, titleBlockTop } from './sheetbase'
import { TITLE_BLOCK } from './titleblock'

export interface SchematicOptions {
  /** Default A3. A part that is larger than the sheet gets a larger one. */
  readonly paper?: PaperSize
  /** Default single-line. Data links have sheets of their own. */
  readonly view?: Exclude<SceneView, 'data'>
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
  /** Clouds round what has changed since the revision before. Default: none. */
  readonly clouds?: boolean
}

const DOCUMENT: Readonly<Record<SceneView | 'front' | 'notes', string>> = {
  front: 'Sheet index and legend',
  'single-line': 'Single-line wiring diagram',
  'both-poles': 'Wiring diagram, both poles',
  data: 'Data link diagram',
  notes: 'Findings and rule set',
}

/**
 * The schematic of a design as sheets: the index with drawing notes, revisions and as much of the legend as has room;
 * the drawing as laid out, data links; findings, the rest of the legend, rule set.
 * Lettering is 1.8 mm at least; what has no room at full size is spread over sheets with references at each cut.
 * Pure and deterministic. Cost: that of the router, twice where the drawing is spread.
 */
export function schematicSheets(
  design: Design,
  answers: Answers | null,
  findings: readonly Finding[],
  options: SchematicOptions = {},
): Sheet[] {
  const paper = PAPERS[options.paper ?? 'A3']
  const date = options.date ?? design.settings.date
  const room = drawingArea(paper)
  const revisions = revisionTable(design)
  const tableTop = titleBlockTop(paper) - revisions.h
  const frontRoom = { ...room, h: Math.min(room.h, tableTop - room.y) }
  const drawings = drawnSheets(design, answers, options.view ?? 'single-line', paper)

  const book = (before: number): Book => {
    const drawn = drawings.map((placed) => ({ ...placed, number: placed.number + before }))
    const places = placesOn(drawn)
    const sheets = bySheet(drawn)
    const rows = (notes: readonly FlowPage[]): IndexRow[] => [
      ...sheets.map((on) => ({
        number: on[0]!.number,
        title: titled(on[0]!.drawing.layout.view, partOf(on[0]!, drawn)),
        holds: holdsOf(
          on.map((p) => p.drawing),
          design,
        ),
      })),
      ...notes.map(({ titles }, i) => ({
        number: before + sheets.length + i + 1,
        title: DOCUMENT.notes,
        holds:
          titles.length > 0
            ? titles.join(', ')
            : `${notes
                .slice(0, i)
                .flatMap((n) => n.titles)
                .at(-1)}, continued`,
      })),
    ]
    const behind = (legend: number) =>
      notePages(design, answers, findings, drawn, places, legend, paper, room)
    const legend = legendInFront(design, rows(behind(0)), paper, frontRoom)
    const notes = behind(legend)
    return { drawn, places, notes, front: frontPages(design, rows(notes), legend, paper, frontRoom) }
  }
  const first = book(1)
  const { drawn, places, notes, front } = first.front.length === 1 ? first : book(first.front.length)

  const sheets = bySheet(drawn)
  const of = front.length + sheets.length + notes.length
  const sheet = (
    number: number,
    is: keyof typeof DOCUMENT,
    on: Paper,
    part: string,
  ): Omit<Sheet, 'links'> => ({
    title: `${number} ${titled(is, part)}`,
    w: on.w,
    h: on.h,
    marks: baseMarks(on, design, { documentType: DOCUMENT[is], subtitle: part, number, of, date }),
  })
  const worded =
    (is: 'front' | 'notes', before: number, more: readonly Mark[]) =>
    ({ marks, links }: FlowPage, i: number): Sheet => {
      const base = sheet(before + i + 1, is, paper, '')
      return { ...base, marks: [...base.marks, ...marks, ...(i === 0 ? more : [])], links }
    }
  const since = options.clouds ? changesSince(design) : null
  const table = moved(revisions.marks, room.x + room.w - TITLE_BLOCK.w, tableTop)
  return [
    ...front.map(worded('front', 0, table)),
    ...sheets.map((on): Sheet => {
      const { number, paper: size, drawing } = on[0]!
      const base = sheet(number, drawing.layout.view, size, partOf(on[0]!, drawn))
      return {
        ...base,
        marks: [
          ...base.marks,
          ...on.flatMap((placed) => placedMarks(placed, places)),
          ...(since ? on.flatMap((placed) => cloudsOn(placed, design, since)) : []),
        ],
        links: on.flatMap((placed) => placedLinks(placed, places)),
      }
    }),
    ...notes.map(worded('notes', front.length + sheets.length, [])),
  ]
}

/** Everything on its sheet. */
interface Book {
  readonly front: readonly FlowPage[]
  readonly drawn: readonly Placed[]
  readonly places: Places
  readonly notes: readonly FlowPage[]
}

const titled = (is: keyof typeof DOCUMENT, part: string): string =>
  `${DOCUMENT[is]}${part === '' ? '' : `, ${part}`}`

function drawnSheets(
  design: Design,
  answers: Answers | null,
  view: Exclude<SceneView, 'data'>,
  paper: Paper,
): Placed[] {
  const { power, links } = paperDrawings(design, answers, view, drawingArea(paper))
  const first = placedOn(power.drawings, paper, 1)
  return [...first, ...placedOn(links?.drawings ?? [], paper, (first.at(-1)?.number ?? 0) + 1)]
}

/** "part 2 of 3" where a view is spread over sheets. */
function partOf({ number, drawing }: Placed, drawn: readonly Placed[]): string {
  const alike = bySheet(drawn.filter((d) => d.drawing.layout.view === drawing.layout.view))
  if (alike.length < 2) return ''
  return `part ${alike.findIndex((on) => on[0]!.number === number) + 1} of ${alike.length}`
}
