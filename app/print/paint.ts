import type { jsPDF } from 'jspdf'
import { type ArcMark, type Mark, printable, type TextMark, typeSize, widthOf, type XY } from '../../engine'
import { DASHES, PEN_MM } from '../symbols/shape'
import { type Colouring, inkColour } from './inks'

/** Name under which both weights of the typeface are known in the document. */
export const FAMILY = 'Plex'

const POINTS_PER_MM = 72 / 25.4

/** Paints marks on the current page, in millimetres from its top left corner. */
export function paint(pdf: jsPDF, marks: readonly Mark[], colouring: Colouring): void {
  pdf.setLineCap('round').setLineJoin('round')
  for (const mark of marks) {
    if (mark.is === 'text') paintText(pdf, mark, colouring)
    else paintShape(pdf, mark, colouring)
  }
}

function paintShape(pdf: jsPDF, mark: Exclude<Mark, TextMark>, colouring: Colouring): void {
  const fill = mark.is === 'arc' ? undefined : mark.fill
  const dash = (mark.is === 'line' && mark.dash) || false
  pdf.setLineWidth(PEN_MM[mark.pen]).setDrawColor(inkColour(mark.ink ?? 'ink', colouring))
  if (fill) pdf.setFillColor(inkColour(fill, colouring))
  if (dash) pdf.setLineDashPattern([...DASHES[dash === true ? 'dash' : dash]], 0)
  const style = fill ? 'FD' : 'S'
  if (mark.is === 'circle') pdf.circle(mark.at[0], mark.at[1], mark.r, style)
  else if (mark.is === 'arc') {
    const { start, curves } = arcCurves(mark)
    pdf.lines(curves, start[0], start[1], [1, 1], 'S')
  } else {
    const [first, ...rest] = mark.points
    if (!first) return
    pdf.lines(steps(first, rest), first[0], first[1], [1, 1], style, mark.closed ?? false)
  }
  if (dash) pdf.setLineDashPattern([], 0)
}

function steps(first: XY, rest: readonly XY[]): number[][] {
  let [x, y] = first
  return rest.map(([nx, ny]) => {
    const step = [nx - x, ny - y]
    ;[x, y] = [nx, ny]
    return step
  })
}

/** An arc as Bézier curves of an eighth of a circle at most: off by less than a thousandth of the radius. */
function arcCurves({ at: [cx, cy], r, from, to }: ArcMark): { start: XY; curves: number[][] } {
  const count = Math.max(1, Math.ceil(Math.abs(to - from) / 45))
  const step = ((to - from) / count) * (Math.PI / 180)
  const reach = (4 / 3) * Math.tan(step / 4) * r
  let angle = from * (Math.PI / 180)
  const start: XY = [cx + r * Math.cos(angle), cy + r * Math.sin(angle)]
  const curves: number[][] = []
  for (let i = 0; i < count; i++) {
    const [c0, s0, c1, s1] = [
      Math.cos(angle),
      Math.sin(angle),
      Math.cos(angle + step),
      Math.sin(angle + step),
    ]
    const end = [r * (c1 - c0), r * (s1 - s0)] as const
    curves.push([-reach * s0, reach * c0, end[0] + reach * s1, end[1] - reach * c1, end[0], end[1]])
    angle += step
  }
  return { start, curves }
}

/** Text begins where the engine measured it to begin, so that sheet and measure agree. */
function paintText(pdf: jsPDF, mark: TextMark, colouring: Colouring): void {
  const text = printable(mark.text)
  if (text === '') return
  const weight = mark.weight ?? 'regular'
  pdf.setFont(FAMILY, weight === 'bold' ? 'bold' : 'normal')
  pdf.setFontSize(typeSize(mark.height) * POINTS_PER_MM)
  pdf.setTextColor(inkColour(mark.ink ?? 'ink', colouring))
  const width = widthOf(text, mark.height, weight)
  const back = mark.anchor === 'middle' ? width / 2 : mark.anchor === 'end' ? width : 0
  const [x, y] = mark.at
  if (mark.turn === 90) pdf.text(text, x, y + back, { angle: 90 })
  else pdf.text(text, x - back, y)
}
