import { extentOf } from './extent'
import { placeLabels } from './labels/place'
import type { Stretch } from './labels/request'
import type { Area } from './paper'
import type { SceneConductor, SceneLabel } from './scene'

/** How near to a terminal words may wall it in, mm. */
const NEAR = 12.5

/** Labels near the ends of conductors that found no way. */
export function wallingIn(
  labels: readonly SceneLabel[],
  conductors: readonly SceneConductor[],
): ReadonlySet<SceneLabel> {
  const ends = conductors.filter((c) => !c.routed).flatMap((c) => [c.points[0]!, c.points.at(-1)!])
  return new Set(
    labels.filter((label) => {
      const { x, y, w, h } = extentOf(label)
      return ends.some(([ex, ey]) => ex > x - NEAR && ex < x + w + NEAR && ey > y - NEAR && ey < y + h + NEAR)
    }),
  )
}

/** Sets the loose labels beside their parts once more, clear of everything else, now that the conductors are laid. */
export function setAgain(
  labels: readonly SceneLabel[],
  loose: ReadonlySet<SceneLabel>,
  boxes: readonly Area[],
  solid: readonly Area[],
  conductors: readonly SceneConductor[],
): SceneLabel[] {
  const wanted = labels.flatMap((label, i) => (loose.has(label) ? [{ label, box: boxes[i]!, i }] : []))
  const places = placeLabels(
    wanted.map(({ label: { w, h }, box, i }) => ({ id: `${i}`, w, h, near: sidesOf(box), priority: 1 })),
    {
      boxes: [...solid, ...labels.filter((l) => !loose.has(l)).map(extentOf)],
      segments: conductors.flatMap(({ points }) =>
        points.slice(1).map(([x2, y2], k) => ({ x1: points[k]![0], y1: points[k]![1], x2, y2 })),
      ),
    },
  )
  const again = new Map(wanted.map(({ label }, k) => [label, places[k]!]))
  return labels.map((label) => {
    const place = again.get(label)
    if (!place?.placed || place.turn !== 0) return label
    const { x, y, leader } = place
    return {
      ...label,
      x,
      y,
      leader: leader
        ? [
            [leader[0].x, leader[0].y],
            [leader[1].x, leader[1].y],
          ]
        : null,
    }
  })
}

/** Points in the middle of the sides of a box. */
const sidesOf = ({ x, y, w, h }: Area): Stretch[] =>
  (
    [
      [x + w / 2, y],
      [x + w, y + h / 2],
      [x + w / 2, y + h],
      [x, y + h / 2],
    ] as const
  ).map(([px, py]) => ({ x1: px, y1: py, x2: px, y2: py }))
