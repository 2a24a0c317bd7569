import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { moved } from './block'
import { CLEAR, type Drawing, fitInto } from './drawing'
import { drawingMarks } from './drawingmarks'
import { type Area, largerThan, type Paper } from './paper'
import { type Placed, type Places, partnerOf } from './places'
import type { SheetLink } from './sheet'
import { drawingArea } from './sheetbase'

/**
 * Each drawing on its sheet, numbered from `first`; one that is larger than the sheet gets a larger sheet. What leaves
 * room above or below is stacked with others on one sheet, each in a strip of its own. O(drawings × sheets).
 */
export function placedOn(drawings: readonly Drawing[], paper: Paper, first: number): Placed[] {
  const stacks: { readonly paper: Paper; readonly drawings: Drawing[] }[] = []
  for (const drawing of drawings) {
    const stack = stacks.find((s) => s.paper === paper && fitsBelow(drawing, s.drawings, paper))
    if (stack) stack.drawings.push(drawing)
    else stacks.push({ paper: paperFor(drawing, paper), drawings: [drawing] })
  }
  return stacks.flatMap(({ paper: on, drawings: stacked }, i) =>
    strips(stacked, drawingArea(on)).map((room, k): Placed => {
      return { drawing: stacked[k]!, number: first + i, paper: on, room }
    }),
  )
}

/** The smallest sheet from `paper` on that holds a drawing, or the largest there is. */
function paperFor(drawing: Drawing, paper: Paper): Paper {
  let fitting = paper
  for (let next = largerThan(paper); next && isLarger(drawing, fitting); next = largerThan(next))
    fitting = next
  return fitting
}

const heightOf = ({ area }: Drawing): Millimetres => area.h + 2 * CLEAR

function fitsBelow(drawing: Drawing, above: readonly Drawing[], paper: Paper): boolean {
  const { w, h } = drawingArea(paper)
  const high = [...above, drawing].reduce((sum, d) => sum + heightOf(d), 0)
  return drawing.area.w + 2 * CLEAR <= w && high <= h
}

/** The room of a sheet in strips from above, one a drawing; what is left over goes to all alike. */
function strips(drawings: readonly Drawing[], room: Area): Area[] {
  const spare = (room.h - drawings.reduce((sum, d) => sum + heightOf(d), 0)) / drawings.length
  let y = room.y
  return drawings.map((drawing) => {
    const strip = { ...room, y, h: heightOf(drawing) + spare }
    y += strip.h
    return strip
  })
}

function isLarger({ area }: Drawing, paper: Paper): boolean {
  const { w, h } = drawingArea(paper)
  return area.w > w || area.h > h
}

/** The marks of a drawing where they stand on the sheet. */
export function placedMarks({ drawing, room }: Placed, places: Places): Mark[] {
  const { scale, dx, dy } = fitInto(drawing, room)
  return moved(
    drawingMarks(drawing, (flag) => partnerOf(flag, places)),
    dx,
    dy,
    scale,
  )
}

/** Flags lead to the sheet of their partner. */
export function placedLinks({ drawing, room }: Placed, places: Places): SheetLink[] {
  const { scale, dx, dy } = fitInto(drawing, room)
  return drawing.layout.flags.flatMap((flag) => {
    const sheet = Number.parseInt(partnerOf(flag, places), 10)
    const { x, y, w, h } = flag.box
    return Number.isNaN(sheet)
      ? []
      : [{ x: x * scale + dx, y: y * scale + dy, w: w * scale, h: h * scale, sheet: sheet - 1 }]
  })
}
