import type { Edit, EditOf } from '../edit/edit'
import { snap } from '../edit/grid'
import { boxOf } from '../kinds/place'
import type { Design, Part, PartId, Zone } from '../model/design'
import { nextId } from '../model/naming'
import type { Millimetres } from '../units'
import { around, extentOf } from './extent'
import { meets, outwards } from './outlinepieces'
import type { Area } from './paper'
import { placePartLabels } from './placeparts'

/** Room inside the outline for its name, mm. */
const NAME = 5

/**
 * The edit that outlines parts, with room for their words and the name where no other part is in the way. Named as the place where most of them are;
 * where none says where it is, "Zone 1" and so on.
 */
export function outlineEdit(design: Design, ids: ReadonlySet<PartId>): EditOf<'zone'> {
  const parts = design.parts.filter((p) => ids.has(p.id))
  const labels = placePartLabels(design, parts, null)
  const boxes = parts.map((p) => boxOf(p, design.conductors))
  const others = design.parts.filter((p) => !ids.has(p.id)).map((p) => boxOf(p, design.conductors))
  const [bare, worded] = [around(boxes), around([...boxes, ...labels.map(extentOf)])]
  const roomy = { x: worded.x, y: worded.y - NAME, w: worded.w, h: worded.h + NAME }
  const clear = (area: Area): boolean => !others.some((o) => meets(outwards(area), o))
  const area = [roomy, worded, bare].find(clear) ?? roomy
  const zone = { id: nextId(design, 'z'), name: nameFor(design, parts), parts: parts.map((p) => p.id) }
  return { do: 'zone', zone: { ...zone, ...outwards(area) } }
}

function nameFor({ zones = [] }: Design, parts: readonly Part[]): string {
  const counts = new Map<string, number>()
  for (const { location } of parts)
    if (location.trim() !== '') counts.set(location, (counts.get(location) ?? 0) + 1)
  const [most] = [...counts].sort(([, a], [, b]) => b - a)
  return most ? most[0] : `Zone ${zones.length + 1}`
}

/** Moves a zone with the parts that it is drawn round; one round none moves alone. */
export function moveZoneEdit(design: Design, zone: Zone, dx: Millimetres, dy: Millimetres): Edit {
  const own = new Set(zone.parts)
  const parts = design.parts.filter((p) => own.has(p.id))
  if (parts.length === 0) return { do: 'zone', zone: { ...zone, x: zone.x + dx, y: zone.y + dy } }
  return { do: 'move', to: parts.map((p) => ({ part: p.id, x: p.x + dx, y: p.y + dy })) }
}

/** Gives a zone other edges; they never cut into its own parts. */
export function resizeZoneEdit(design: Design, zone: Zone, wanted: Area): EditOf<'zone'> {
  const own = new Set(zone.parts)
  const boxes = design.parts.filter((p) => own.has(p.id)).map((p) => boxOf(p, design.conductors))
  const area = around([wanted, ...boxes])
  const [x, y] = [snap(area.x), snap(area.y)]
  return {
    do: 'zone',
    zone: { ...zone, x, y, w: snap(area.x + area.w - x), h: snap(area.y + area.h - y) },
  }
}
