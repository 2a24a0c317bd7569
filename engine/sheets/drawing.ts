import type { Answers } from '../calc/answers'
import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { around, extentOf, extentOfLayout } from './extent'
import { flagsFor } from './flags'
import { type Content, type Layout, layoutOf } from './layout'
import type { Area } from './paper'
import { placePartLabels } from './placeparts'
import { placeRunLabels } from './placeruns'
import type { SceneLabel } from './scene'
import type { Shown } from './shown'
import { groupsFor, halved } from './split'

/** What one sheet shows: a layout with its words, and how it is enlarged. */
export interface Drawing {
  readonly layout: Layout
  readonly labels: readonly SceneLabel[]
  /** Conductors that had room for their number at most. */
  readonly short: readonly Shown[]
  readonly area: Area
}

/** Clear strip inside the frame, mm. */
const PAD = 6
/** Room for flags at the sides and conductors above and below that is tried when parts are shared out, mm. */
const EDGES = [
  { w: 40, h: 5 },
  { w: 60, h: 12 },
  { w: 90, h: 24 },
] as const

/**
 * The content of a view in as few drawings as have room in `room` at full size: lettering is never made smaller.
 * What is too large is cut into groups of parts, each laid out for itself; a conductor between two of them ends in a
 * flag on both. Parts keep their places to each other.
 */
export function drawingsOf(design: Design, answers: Answers | null, content: Content, room: Area): Drawing[] {
  const [w, h] = [room.w - 2 * PAD, room.h - 2 * PAD]
  const partLabels = placePartLabels(design, content.parts, answers)
  const known = new Map<string, Drawing>()
  const draw = (parts: readonly Part[]): Drawing => {
    const key = parts
      .map((p) => p.id)
      .sort()
      .join(' ')
    const drawing = known.get(key) ?? drawingOf(design, answers, content, parts, w, h)
    known.set(key, drawing)
    return drawing
  }
  const all = around([...content.parts.map((p) => boxOf(p, design.conductors)), ...partLabels])
  if ((all.w <= w && all.h <= h) || content.parts.length < 2) {
    const whole = draw(content.parts)
    if (fits(whole, w, h) || content.parts.length < 2) return [whole]
  }
  const labelOf = (parts: readonly Part[]) => parts.map((p) => partLabels[content.parts.indexOf(p)]!)
  const lay = (parts: readonly Part[]): Group[] => {
    const drawing = draw(parts)
    if (fits(drawing, w, h) || parts.length < 2) return [{ parts, drawing }]
    return halved(design, parts, labelOf(parts), content.shown).flatMap(lay)
  }
  const fewest = Math.ceil(all.w / w) * Math.ceil(all.h / h)
  let best: Group[] | null = null
  for (const edge of EDGES) {
    if (best && best.length <= fewest) break
    const split = groupsFor(design, content.parts, partLabels, content.shown, w - edge.w, h - edge.h)
    const tried = split.flatMap(lay)
    if (!best || tried.length < best.length) best = tried
  }
  return merged(best ?? [], draw, w, h).map((group) => group.drawing)
}

interface Group {
  readonly parts: readonly Part[]
  readonly drawing: Drawing
}

/** Groups of which two have room on one sheet together, joined; the smallest first. */
function merged(
  groups: readonly Group[],
  draw: (parts: readonly Part[]) => Drawing,
  w: number,
  h: number,
): Group[] {
  for (const small of [...groups].sort((a, b) => a.parts.length - b.parts.length))
    for (const other of groups) {
      const box = around([small, other].flatMap((g) => g.drawing.layout.parts))
      if (other === small || box.w > w || box.h > h) continue
      const parts = [...other.parts, ...small.parts]
      const drawing = draw(parts)
      if (!fits(drawing, w, h)) continue
      const rest = groups.filter((g) => g !== small).map((g) => (g === other ? { parts, drawing } : g))
      return merged(rest, draw, w, h)
    }
  return [...groups]
}

const fits = ({ area }: Drawing, w: number, h: number): boolean => area.w <= w && area.h <= h

function drawingOf(
  design: Design,
  answers: Answers | null,
  content: Content,
  parts: readonly Part[],
  w: number,
  h: number,
): Drawing {
  const here = new Set(parts.map((p) => p.id))
  const inside = (id: string): boolean => here.has(id)
  const shown = content.shown.filter(({ conductor: c }) => inside(c.from.part) || inside(c.to.part))
  const box = around([
    ...parts.map((p) => boxOf(p, design.conductors)),
    ...placePartLabels(design, parts, answers),
  ])
  const flags = flagsFor(design, shown, inside, box)
  const layout = layoutOf(design, answers, { ...content, parts, shown }, flags)
  const drawn = extentOfLayout(layout, layout.partLabels)
  const placed = placeRunLabels(design, answers, layout, roomAround(drawn, w, h))
  const labels = [...layout.partLabels, ...placed.labels]
  const area = around([drawn, ...placed.labels.map(extentOf)])
  return { layout, labels, short: placed.short, area }
}

/** An area of the size of the sheet around what is drawn; where that is larger already, just around it. */
function roomAround(drawn: Area, w: number, h: number): Area {
  const [dx, dy] = [Math.max(0, w - drawn.w) / 2, Math.max(0, h - drawn.h) / 2]
  return { x: drawn.x - dx, y: drawn.y - dy, w: drawn.w + 2 * dx, h: drawn.h + 2 * dy }
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
