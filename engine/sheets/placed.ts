import type { Mark } from '../model/marks'
import { moved } from './block'
import { type Drawing, fitInto } from './drawing'
import { drawingMarks } from './drawingmarks'
import { largerThan, type Paper } from './paper'
import { type Placed, type Places, partnerOf } from './places'
import type { SheetLink } from './sheet'
import { drawingArea } from './sheetbase'

/** Each drawing on its sheet, numbered from `first`; one that is larger than the sheet gets a larger sheet. */
export function placedOn(drawings: readonly Drawing[], paper: Paper, first: number): Placed[] {
  return drawings.map((drawing, i): Placed => {
    let fitting = paper
    for (let next = largerThan(paper); next && isLarger(drawing, fitting); next = largerThan(next))
      fitting = next
    return { drawing, number: first + i, paper: fitting, room: drawingArea(fitting) }
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
