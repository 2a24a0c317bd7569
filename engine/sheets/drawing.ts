import type { Answers } from '../calc/answers'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import type { Millimetres } from '../units'
import { LETTERING_STEP } from './block'
import { around, extentOf } from './extent'
import { flagsFor } from './flags'
import { type Content, type Layout, layoutOf } from './layout'
import { extentOfLayout } from './layoutextent'
import type { Area } from './paper'
import { placePartLabels } from './placeparts'
import { placeRunLabels } from './placeruns'
import { placeRunTables, type RunTable } from './runtable'
import type { SceneLabel } from './scene'
import { sceneText, textsWith } from './sheettexts'
import type { Shown } from './shown'

/** What one sheet shows: a layout with its words, and how it is enlarged. */
export interface Drawing {
  readonly layout: Layout
  readonly labels: readonly SceneLabel[]
  /** Tables of conductors that carry their number alone. */
  readonly tables: readonly RunTable[]
  /** Conductors that had room for their number at most, and stand in no table. */
  readonly short: readonly Shown[]
  readonly area: Area
}

/** Clear strip inside the frame, mm. */
export const CLEAR: Millimetres = 6

/** What a sheet offers a drawing inside its clear strip. */
export const roomIn = (room: Area): { readonly w: Millimetres; readonly h: Millimetres } => ({
  w: room.w - 2 * CLEAR,
  h: room.h - 2 * CLEAR,
})

/** Parts of a view laid out, before its conductors have their words. */
export interface Draft {
  readonly layout: Layout
  /** What is drawn: parts with their words, conductors, flags. */
  readonly drawn: Area
}

/** Words of conductors keep to the room: what fits without them fits with them. */
export const fits = ({ drawn }: Draft, w: Millimetres, h: Millimetres): boolean =>
  drawn.w <= w && drawn.h <= h

export function draftOf(
  design: Design,
  answers: Answers | null,
  content: Content,
  parts: readonly Part[],
): Draft {
  const here = new Set(parts.map((p) => p.id))
  const inside = (id: string): boolean => here.has(id)
  const shown = content.shown.filter(({ conductor: c }) => inside(c.from.part) || inside(c.to.part))
  const texts = textsWith(design, content.texts, content.parts, inside)
  const box = around([
    ...texts.map(sceneText),
    ...parts.map((p) => boxOf(p, design.conductors)),
    ...placePartLabels(design, parts, answers),
  ])
  const flags = flagsFor(design, shown, inside, box)
  const layout = layoutOf(design, answers, { ...content, parts, shown, texts }, flags)
  return { layout, drawn: extentOfLayout(layout, layout.partLabels) }
}

/** A draft as a drawing; its words keep to the size of the sheet, `w` × `h`. */
export function drawingOf(
  design: Design,
  answers: Answers | null,
  { layout, drawn }: Draft,
  w: Millimetres,
  h: Millimetres,
): Drawing {
  const within = roomAround(drawn, w, h)
  const placed = placeRunLabels(design, answers, layout, within)
  const labels = [...layout.partLabels, ...placed.labels]
  const { tables, rest } = placeRunTables(design, answers, layout, labels, placed.short, within)
  const area = around([drawn, ...placed.labels.map(extentOf), ...tables])
  return { layout, labels, tables, short: rest, area }
}

/** An area of the size of the sheet around what is drawn; where that is larger already, just around it. */
function roomAround(drawn: Area, w: number, h: number): Area {
  const [dx, dy] = [Math.max(0, w - drawn.w) / 2, Math.max(0, h - drawn.h) / 2]
  return { x: drawn.x - dx, y: drawn.y - dy, w: drawn.w + 2 * dx, h: drawn.h + 2 * dy }
}

/** How a drawing is enlarged and moved into the middle of the room: not at all, or by one step of ISO 3098. */
export function fitInto({ area }: Drawing, room: Area): { scale: number; dx: number; dy: number } {
  const most = Math.min((room.w - 2 * CLEAR) / area.w, (room.h - 2 * CLEAR) / area.h)
  const scale = most >= LETTERING_STEP ? LETTERING_STEP : 1
  return {
    scale,
    dx: room.x + (room.w - area.w * scale) / 2 - area.x * scale,
    dy: room.y + (room.h - area.h * scale) / 2 - area.y * scale,
  }
}
