import { boxOf, terminalsOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { arrange } from './arrange/arrange'
import type { ArrangePart } from './arrange/part'
import type { Content } from './layout'

/** Room for the words of a part: above it, and its least width, mm. On the grid. */
const WORDS = { w: 37.5, h: 12.5 } as const

/**
 * The design with the parts of its data links moved together, hub first, for a sheet that shows nothing else: on
 * the main drawing they stand wherever their power comes from. Ways dragged by hand are let go.
 */
export function linkDesign(design: Design, { parts, shown }: Content): Design {
  const places = arrange(
    parts.map((p) => arranged(design, p)),
    shown.map(({ conductor: { from, to } }) => ({
      from: { part: from.part, port: from.terminal },
      to: { part: to.part, port: to.terminal },
    })),
  )
  return {
    ...design,
    parts: design.parts.map((p) => {
      const place = places.get(p.id)
      return place ? { ...p, x: place.x, y: place.y + WORDS.h } : p
    }),
    conductors: design.conductors.map((c) => (c.path.length === 0 ? c : { ...c, path: [] })),
  }
}

function arranged(design: Design, part: Part): ArrangePart {
  const { x, y, w, h } = boxOf(part, design.conductors)
  return {
    id: part.id,
    w: Math.max(w, WORDS.w),
    h: h + WORDS.h,
    column: 'data',
    ports: terminalsOf(part, design.conductors).map((t) => ({
      id: t.key,
      x: t.x - x,
      y: t.y - y + WORDS.h,
      side: t.side,
    })),
  }
}
