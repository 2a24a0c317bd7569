import { kindOf } from '../kinds/all'
import { boxOf } from '../kinds/place'
import type { Design, Part, Zone } from '../model/design'
import { blockOf, moved, USUAL } from './block'
import { around, extentOf } from './extent'
import { drawnAt, holds, meets, piecesRound } from './outlinepieces'
import type { Area } from './paper'
import type { SceneLabel, SceneOutline, SceneText } from './scene'
import { signHeight, warningSign } from './warningsign'

/**
 * Outlines of the zones and round the mains parts that stand among `parts`, each with its name where it is clear of
 * parts, words and `taken`. A zone is drawn as it was put while nothing but its own parts lies in it; where others lie
 * between them, or some are on another sheet, round those that stand together, each time with its name.
 */
export function outlinesOf(
  design: Design,
  parts: readonly Part[],
  labels: readonly SceneLabel[],
  taken: readonly Area[],
): SceneOutline[] {
  const areas = parts.map((p, i) => around([boxOf(p, design.conductors), extentOf(labels[i]!)]))
  const boxes = parts.map((p) => boxOf(p, design.conductors))
  const all = around(areas)
  const isWhole = parts.length === design.parts.length
  const round = (isMember: (p: Part) => boolean): Area[] =>
    piecesRound(
      areas.filter((_, i) => isMember(parts[i]!)),
      boxes.filter((_, i) => !isMember(parts[i]!)),
    )
  const found: { zone: Zone | null; area: Area }[] = [
    ...round((p) => kindOf(p.kind)?.group === 'mains').map((area) => ({ zone: null, area })),
    ...(design.zones ?? []).flatMap((zone) => {
      const own = new Set(zone.parts)
      if (own.size === 0) return isWhole || meets(zone, all) ? [{ zone, area: drawnAt(zone) }] : []
      const inside = boxes.filter((_, i) => own.has(parts[i]!.id))
      const stands =
        inside.length === own.size &&
        inside.every((box) => holds(zone, box)) &&
        !boxes.some((box, i) => !own.has(parts[i]!.id) && meets(zone, box))
      return (stands ? [drawnAt(zone)] : round((p) => own.has(p.id))).map((area) => ({ zone, area }))
    }),
  ]
  const blocked = [...boxes, ...labels.map(extentOf), ...taken]
  return found.map(({ zone, area: { x, y, w, h } }): SceneOutline => {
    const name = placedName({ x, y, w, h }, zone ? zoneName(zone) : LICENSED, blocked)
    blocked.push(name)
    return { zone: zone?.id ?? null, x, y, w, h, name }
  })
}

const zoneName = ({ id, name }: Zone): SceneText => ({
  ...{ id, x: 0, y: 0 },
  ...blockOf([[{ text: name, height: USUAL }]]),
})

const LICENSED = licensedName()

/** Who may work inside, with the warning sign before it. */
function licensedName(): SceneText {
  const side = 6.5
  const words = blockOf([
    [{ text: 'Mains', height: USUAL, weight: 'bold' }],
    [{ text: 'licensed persons only' }],
  ])
  const h = Math.max(words.h, signHeight(side) + 0.6)
  return {
    ...{ id: '', x: 0, y: 0, w: side + 1.5 + words.w, h },
    marks: [
      ...warningSign(0.3, (h - signHeight(side)) / 2, side),
      ...moved(words.marks, side + 1.5, (h - words.h) / 2),
    ],
  }
}

/** Between an outline and its name, mm. */
const GAP = 0.8

/** Inside the corners first, then beside them: the first place that is clear, else the one that is least in the way. */
function placedName({ x, y, w, h }: Area, name: SceneText, blocked: readonly Area[]): SceneText {
  const [left, right] = [x + GAP, x + w - GAP - name.w]
  const [top, bottom] = [y + GAP, y + h - GAP - name.h]
  const [above, below] = [y - GAP - name.h, y + h + GAP]
  const inside = name.w + 2 * GAP <= w && name.h + 2 * GAP <= h
  const places = [
    ...(inside ? [top, bottom].flatMap((at) => [left, right].map((across) => [across, at] as const)) : []),
    ...[above, below].flatMap((at) => [x, x + w - name.w].map((across) => [across, at] as const)),
    [x + w + GAP, y] as const,
    [x - GAP - name.w, y] as const,
  ]
  const costs = places.map(([px, py]) => overlapOf({ x: px, y: py, w: name.w, h: name.h }, blocked))
  const [px, py] = places[costs.indexOf(Math.min(...costs))]!
  return { ...name, x: px, y: py }
}

/** Area, mm², that a rectangle shares with others. */
function overlapOf(a: Area, others: readonly Area[]): number {
  let area = 0
  for (const b of others) {
    if (!meets(a, b)) continue
    area +=
      (Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) *
      (Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y))
  }
  return area
}
