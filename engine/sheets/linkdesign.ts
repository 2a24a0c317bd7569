import { snap } from '../edit/grid'
import { boxOf, terminalsOf } from '../kinds/place'
import type { Design, Part, PartId, Place } from '../model/design'
import { arrange } from './arrange/arrange'
import type { ArrangePart } from './arrange/part'
import type { Content } from './layout'
import { sceneText, textsIn } from './sheettexts'

/** Room for the words of a part: above it, and its least width, mm. On the grid. */
const WORDS = { w: 37.5, h: 12.5 } as const

/**
 * The design with the parts of its data links moved together, hub first, for a sheet that shows nothing else: on
 * the main drawing they stand wherever their power comes from. Ways dragged by hand are let go.
 */
export function linkDesign(design: Design, content: Content): Design {
  const { parts } = content
  const places = linkPlaces(design, content)
  const { zones: _zones, texts: _texts, ...bare } = design
  return {
    ...bare,
    ...onSheet(design, parts, places),
    parts: design.parts.map((p) => {
      const place = places.get(p.id)
      return place ? { ...p, ...place } : p
    }),
    conductors: design.conductors.map((c) => (c.path.length === 0 ? c : { ...c, path: [] })),
  }
}

/** Where the parts of data links stand together, hub first, with room for their words; from 0, 0. */
export function linkPlaces(design: Design, { parts, shown }: Content): ReadonlyMap<PartId, Place> {
  const places = arrange(
    parts.map((p) => arranged(design, p)),
    shown.map(({ conductor: { from, to } }) => ({
      from: { part: from.part, port: from.terminal },
      to: { part: to.part, port: to.terminal },
    })),
  )
  return new Map([...places].map(([id, { x, y }]) => [id, { x, y: y + WORDS.h }]))
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

/** Room between the lowest part and the texts, and between texts, mm. */
const BELOW = 25
const BETWEEN = 5

/** Zones round parts go along, drawn anew; those round none stay behind. Texts of the view stand below, in a column. */
function onSheet(
  design: Design,
  parts: readonly Part[],
  places: ReadonlyMap<string, { readonly y: number }>,
): Pick<Design, 'zones' | 'texts'> {
  const zones = design.zones?.filter((z) => z.parts.length > 0)
  const bottoms = parts.map((p) => (places.get(p.id)?.y ?? 0) + boxOf(p, design.conductors).h)
  let y = snap(Math.max(0, ...bottoms) + BELOW)
  const texts = textsIn(design, 'data').map((text) => {
    const stacked = { ...text, x: 0, y }
    y = snap(y + sceneText(text).h + BETWEEN)
    return stacked
  })
  return { ...(zones ? { zones } : {}), ...(texts.length > 0 ? { texts } : {}) }
}
