import type { Answers } from '../calc/answers'
import { rect } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { LEAST, textMark } from './block'
import { extentOf } from './extent'
import { emptySheet, isFree, occupy } from './labels/occupied'
import type { Layout } from './layout'
import { widthOf } from './measure'
import type { Area } from './paper'
import { onOneLine, runLines } from './runlabels'
import { obstaclesIn, withBoxes } from './runobstacles'
import type { SceneLabel } from './scene'
import type { Shown } from './shown'

/** A table on the drawing, from its top left corner. */
export interface RunTable extends Area {
  readonly marks: readonly Mark[]
}

const ROW: Millimetres = 3
const PAD: Millimetres = 1.2
/** Free strip round a table. */
const CLEAR: Millimetres = 1.5
const STEP: Millimetres = 2.5
const HEAD = 'By number'

/**
 * Everything that has no room on the conductors themselves, as small tables in free places of the same sheet: one where
 * there is room for it, else in parts. What finds no place at all is given back.
 */
export function placeRunTables(
  design: Design,
  answers: Answers | null,
  layout: Layout,
  labels: readonly SceneLabel[],
  short: readonly Shown[],
  within: Area,
): { readonly tables: readonly RunTable[]; readonly rest: readonly Shown[] } {
  const { boxes, segments } = withBoxes(
    obstaclesIn(layout, undefined, 0),
    labels.filter((l) => 'conductor' in l.of),
  )
  const taken = emptySheet()
  for (const box of boxes) occupy(taken, box)
  for (const s of segments)
    occupy(taken, {
      x: Math.min(s.x1, s.x2) - 0.3,
      y: Math.min(s.y1, s.y2) - 0.3,
      w: Math.abs(s.x2 - s.x1) + 0.6,
      h: Math.abs(s.y2 - s.y1) + 0.6,
    })
  const tables: RunTable[] = []
  const rest: Shown[] = []
  const place = (rows: readonly Shown[]): void => {
    if (rows.length === 0) return
    const table = tableOf(design, answers, rows)
    const at = freePlace(table, nearTo(rows, layout, labels), within, (area) => isFree(taken, area))
    if (at) {
      occupy(taken, grown({ ...at, w: table.w, h: table.h }))
      tables.push({ ...table, ...at })
    } else if (rows.length === 1) rest.push(...rows)
    else {
      const half = Math.ceil(rows.length / 2)
      place(rows.slice(0, half))
      place(rows.slice(half))
    }
  }
  place(short)
  return { tables, rest }
}

function tableOf(design: Design, answers: Answers | null, rows: readonly Shown[]): RunTable {
  const lines = rows.map((shown) => onOneLine(runLines(design, shown, answers)))
  const widths = lines.map((pieces) => pieces.reduce((sum, p) => sum + widthOf(p.text, LEAST, p.weight), 0))
  const w = Math.max(widthOf(HEAD, LEAST), ...widths) + 2 * PAD
  const h = (rows.length + 1) * ROW + PAD
  const baseline = (i: number): Millimetres => PAD / 2 + i * ROW + ROW / 2 + LEAST / 2
  return {
    ...{ x: 0, y: 0, w, h },
    marks: [
      rect(0, 0, w, h, { pen: 'thin' }),
      textMark(PAD, baseline(0), { text: HEAD, ink: 'faint' }),
      ...lines.flatMap((pieces, i) => {
        let x = PAD
        return pieces.map((piece) => {
          const mark = textMark(x, baseline(i + 1), piece)
          x += widthOf(piece.text, LEAST, piece.weight)
          return mark
        })
      }),
    ],
  }
}

/** The middle of the numbers that the rows belong to. */
function nearTo(
  rows: readonly Shown[],
  layout: Layout,
  labels: readonly SceneLabel[],
): readonly [number, number] {
  const ids = new Set(rows.map((r) => r.conductor.id))
  const own = labels.filter((l) => 'conductor' in l.of && ids.has(l.of.conductor)).map(extentOf)
  const spots =
    own.length > 0
      ? own.map((a) => [a.x + a.w / 2, a.y + a.h / 2] as const)
      : layout.conductors.filter((c) => ids.has(c.id)).flatMap((c) => c.points.slice(0, 1))
  const mean = (i: 0 | 1): number => spots.reduce((sum, s) => sum + s[i], 0) / Math.max(1, spots.length)
  return [mean(0), mean(1)]
}

/** The free place that is nearest. */
function freePlace(
  { w, h }: RunTable,
  [nx, ny]: readonly [number, number],
  within: Area,
  free: (area: Area) => boolean,
): { readonly x: Millimetres; readonly y: Millimetres } | null {
  let best: { x: number; y: number; far: number } | null = null
  for (let y = within.y + CLEAR; y + h + CLEAR <= within.y + within.h; y += STEP)
    for (let x = within.x + CLEAR; x + w + CLEAR <= within.x + within.w; x += STEP) {
      const far = Math.hypot(x + w / 2 - nx, y + h / 2 - ny)
      if ((!best || far < best.far) && free(grown({ x, y, w, h }))) best = { x, y, far }
    }
  return best
}

const grown = ({ x, y, w, h }: Area): Area => ({
  x: x - CLEAR,
  y: y - CLEAR,
  w: w + 2 * CLEAR,
  h: h + 2 * CLEAR,
})
