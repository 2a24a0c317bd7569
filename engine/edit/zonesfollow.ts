import { boxOf } from '../kinds/place'
import type { Design, Part, Zone } from '../model/design'
import type { Millimetres } from '../units'
import { GRID, snap } from './grid'

/**
 * Zones after an edit: each edge keeps its distance from the parts that the zone is drawn round, whatever moved,
 * turned or grew them; parts that are gone leave it, and it goes with the last of them. A zone without parts stays,
 * and so does one that came with the edit itself. O(zones × their parts); nothing where no part has changed.
 */
export function withZonesFollowing(before: Design, after: Design): Design {
  if (!after.zones || before.parts === after.parts) return after
  const then = new Map(before.parts.map((p) => [p.id, p]))
  const now = new Map(after.parts.map((p) => [p.id, p]))
  const known = new Set(before.zones)
  const zones = after.zones.flatMap((zone): Zone[] => {
    if (zone.parts.length === 0 || !known.has(zone)) return [zone]
    const left = zone.parts.filter((id) => now.has(id))
    const from = edgesOf(
      zone.parts.flatMap((id) => then.get(id) ?? []),
      before,
    )
    const to = edgesOf(
      left.flatMap((id) => now.get(id) ?? []),
      after,
    )
    if (!to) return []
    const kept = left.length === zone.parts.length ? zone : { ...zone, parts: left }
    return [from ? shifted(kept, from, to) : kept]
  })
  if (zones.every((z, i) => z === after.zones![i]) && zones.length === after.zones.length) return after
  const { zones: _all, ...rest } = after
  return zones.length === 0 ? rest : { ...rest, zones }
}

interface Edges {
  readonly left: Millimetres
  readonly top: Millimetres
  readonly right: Millimetres
  readonly bottom: Millimetres
}

function edgesOf(parts: readonly Part[], { conductors }: Design): Edges | null {
  if (parts.length === 0) return null
  const boxes = parts.map((p) => boxOf(p, conductors))
  return {
    left: Math.min(...boxes.map((b) => b.x)),
    top: Math.min(...boxes.map((b) => b.y)),
    right: Math.max(...boxes.map((b) => b.x + b.w)),
    bottom: Math.max(...boxes.map((b) => b.y + b.h)),
  }
}

function shifted(zone: Zone, from: Edges, to: Edges): Zone {
  const same =
    from.left === to.left && from.top === to.top && from.right === to.right && from.bottom === to.bottom
  if (same) return zone
  const x = snap(zone.x + to.left - from.left)
  const y = snap(zone.y + to.top - from.top)
  const w = Math.max(GRID, snap(zone.x + zone.w + to.right - from.right) - x)
  const h = Math.max(GRID, snap(zone.y + zone.h + to.bottom - from.bottom) - y)
  return { ...zone, x, y, w, h }
}
