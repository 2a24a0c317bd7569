import type { Answers } from '../calc/answers'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { around, extentOfLayout } from './extent'
import { flagsFor } from './flags'
import { type Content, type Layout, layoutOf } from './layout'
import type { Area } from './paper'
import { placeRunLabels } from './placeruns'
import type { SceneLabel } from './scene'
import type { Shown } from './shown'
import { groupsFor, halved } from './split'

/** What one sheet shows: a layout with its words, and how it is enlarged. */
export interface Drawing {
  readonly layout: Layout
  readonly labels: readonly SceneLabel[]
  /** Conductors that found no room for their words. */
  readonly unlabelled: readonly Shown[]
  readonly area: Area
}

/** Clear strip inside the frame, mm. */
const PAD = 4
/** Room that flags and the conductors to them take at both sides, and conductors above and below. */
const EDGE = { w: 100, h: 20 } as const

/**
 * The content of a view in as few drawings as have room in `room` at full size: lettering is never made smaller.
 * What is too large is cut into groups of parts, each laid out for itself; a conductor between two of them ends in a
 * flag on both. Parts keep their places to each other.
 */
export function drawingsOf(design: Design, answers: Answers | null, content: Content, room: Area): Drawing[] {
  const [w, h] = [room.w - 2 * PAD, room.h - 2 * PAD]
  const whole = drawingOf(design, answers, content, content.parts)
  if (fits(whole, w, h)) return [whole]
  const { partLabels } = whole.layout
  const labelOf = (parts: readonly Part[]) => parts.map((p) => partLabels[content.parts.indexOf(p)]!)
  const lay = (parts: readonly Part[]): Drawing[] => {
    const drawing = drawingOf(design, answers, content, parts)
    if (fits(drawing, w, h) || parts.length < 2) return [drawing]
    return halved(design, parts, labelOf(parts), content.shown).flatMap(lay)
  }
  return groupsFor(design, content.parts, partLabels, content.shown, w - EDGE.w, h - EDGE.h).flatMap(lay)
}

const fits = ({ area }: Drawing, w: number, h: number): boolean => area.w <= w && area.h <= h

function drawingOf(
  design: Design,
  answers: Answers | null,
  content: Content,
  parts: readonly Part[],
): Drawing {
  const here = new Set(parts.map((p) => p.id))
  const inside = (id: string): boolean => here.has(id)
  const shown = content.shown.filter(({ conductor: c }) => inside(c.from.part) || inside(c.to.part))
  const box = around(parts.map((p) => boxOf(p, design.conductors)))
  const flags = flagsFor(design, shown, inside, box)
  const layout = layoutOf(design, answers, { ...content, parts, shown }, flags)
  const placed = placeRunLabels(design, answers, layout)
  const labels = [...layout.partLabels, ...placed.labels]
  return { layout, labels, unlabelled: placed.unplaced, area: extentOfLayout(layout, labels) }
}

/** Largest enlargement of a small design. */
const MOST = 1.6

/** How a drawing is enlarged and moved into the middle of the room. Never below full size. */
export function fitInto({ area }: Drawing, room: Area): { scale: number; dx: number; dy: number } {
  const most = Math.min((room.w - 2 * PAD) / area.w, (room.h - 2 * PAD) / area.h, MOST)
  const scale = Math.max(1, Math.floor(most * 20) / 20)
  return {
    scale,
    dx: room.x + (room.w - area.w * scale) / 2 - area.x * scale,
    dy: room.y + (room.h - area.h * scale) / 2 - area.y * scale,
  }
}
