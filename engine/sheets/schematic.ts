import type { Answers } from '../calc/answers'
import type { Design } from '../model/design'
import type { Finding } from '../rules/finding'

import { type Content, contentOf } from './layout'
import { linkDesign } from './linkdesign'
import { natureIn } from './nature'
import { notePages } from './notes'
import { PAPERS, type Paper, type PaperSize } from './paper'
import { placedLinks, placedMarks, placedOn } from './placed'
import { type Placed, placesOn } from './places'
import type { SceneView } from './scene'
import type { Sheet } from './sheet'
import { baseMarks, drawingArea } from './sheetbase'
import { drawingsOf } from './spread'

export interface SchematicOptions {
  /** Default A3. A part that is larger than the sheet gets a larger one. */
  readonly paper?: PaperSize
  /** Default single-line. Data links have sheets of their own. */
  readonly view?: Exclude<SceneView, 'data'>
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
}

const DOCUMENT: Readonly<Record<SceneView | 'notes', string>> = {
  'single-line': 'Single-line wiring diagram',
  'both-poles': 'Wiring diagram, both poles',
  data: 'Data link diagram',
  notes: 'Findings, legend, rule set',
}

/**
 * The schematic of a design as sheets: the drawing as laid out, data links, then findings, legend and rule set.
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
  const drawn = drawnSheets(design, answers, options.view ?? 'single-line', paper)
  const places = placesOn(drawn)
  const notes = notePages(design, answers, findings, drawn, places, paper, drawingArea(paper))
  const of = drawn.length + notes.length
  const date = options.date ?? design.settings.date
  const sheet = (number: number, is: SceneView | 'notes', on: Paper, part: string): Omit<Sheet, 'links'> => ({
    title: `${number} ${DOCUMENT[is]}${part === '' ? '' : `, ${part}`}`,
    w: on.w,
    h: on.h,
    marks: baseMarks(on, design, { documentType: DOCUMENT[is], subtitle: part, number, of, date }),
  })
  return [
    ...drawn.map((placed): Sheet => {
      const base = sheet(placed.number, placed.drawing.layout.view, placed.paper, partOf(placed, drawn))
      return {
        ...base,
        marks: [...base.marks, ...placedMarks(placed, places)],
        links: placedLinks(placed, places),
      }
    }),
    ...notes.map((marks, i): Sheet => {
      const base = sheet(drawn.length + i + 1, 'notes', paper, '')
      return { ...base, marks: [...base.marks, ...marks], links: [] }
    }),
  ]
}

function drawnSheets(
  design: Design,
  answers: Answers | null,
  view: Exclude<SceneView, 'data'>,
  paper: Paper,
): Placed[] {
  const room = drawingArea(paper)
  const power = drawingsOf(design, answers, withoutLinks(design, answers, view), room)
  const linked = contentOf(design, answers, 'data')
  if (linked.shown.length === 0) return placedOn(power, paper, 1)
  const near = linkDesign(design, linked)
  const links = drawingsOf(near, answers, contentOf(near, answers, 'data'), room)
  return [...placedOn(power, paper, 1), ...placedOn(links, paper, power.length + 1)]
}

/** A view without its data links, and without parts that hang on nothing else. */
function withoutLinks(design: Design, answers: Answers | null, view: Exclude<SceneView, 'data'>): Content {
  const natureOf = natureIn(design, answers)
  const content = contentOf(design, answers, view)
  const shown = content.shown.filter((s) => natureOf(s.conductor) !== 'data')
  const joined = new Set(
    design.conductors.filter((c) => natureOf(c) !== 'data').flatMap((c) => [c.from.part, c.to.part]),
  )
  const linked = new Set(design.conductors.flatMap((c) => [c.from.part, c.to.part]))
  return { ...content, shown, parts: content.parts.filter((p) => joined.has(p.id) || !linked.has(p.id)) }
}

/** "part 2 of 3" where a view is spread over sheets. */
function partOf({ number, drawing }: Placed, drawn: readonly Placed[]): string {
  const alike = drawn.filter((d) => d.drawing.layout.view === drawing.layout.view)
  if (alike.length < 2) return ''
  return `part ${alike.findIndex((d) => d.number === number) + 1} of ${alike.length}`
}
