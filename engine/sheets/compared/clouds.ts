import type { ChangesSince } from '../../calc/compare/since'
import { designIn } from '../../edit/designin'
import type { Design } from '../../model/design'
import type { Mark } from '../../model/marks'
import { textMark, USUAL } from '../block'
import { fitInto } from '../drawing'
import { extentOf } from '../extent'
import type { Area } from '../paper'
import type { Placed } from '../places'
import { CLOUD, cloudMarks, revisionTriangle, TRIANGLE } from './cloud'
import { changedSpots, joinedAreas, touches } from './spots'

/** Room that a cloud takes beyond what it marks. */
const BEYOND = CLOUD.clear + CLOUD.bulge

/**
 * Clouds round everything on a sheet that has changed since the revision before, each with the triangle of its
 * revision where it covers least, and below the drawing what the triangle means. Nothing changed here: no marks.
 */
export function cloudsOn({ drawing, room }: Placed, design: Design, since: ChangesSince): Mark[] {
  const { layout, labels, area, tables } = drawing
  const { scale, dx, dy } = fitInto(drawing, room)
  const onSheet = ({ x, y, w, h }: Area): Area => ({
    x: x * scale + dx,
    y: y * scale + dy,
    w: w * scale,
    h: h * scale,
  })
  const [before, after] = [designIn(since.before, layout.view), designIn(design, layout.view)]
  const spots = changedSpots({ ...layout, labels }, since.comparison, before, after)
    .filter((spot) => touches(spot, area, 0))
    .map(onSheet)
  if (spots.length === 0) return []
  const clouds = joinedAreas(spots, 2 * BEYOND).map((cloud) => inside(cloud, room))
  const taken = [...layout.parts, ...labels.map(extentOf), ...layout.texts, ...tables].map(onSheet)
  const placed: Area[] = []
  const triangles = clouds.flatMap((cloud) => {
    const at = triangleAt(cloud, [...taken, ...clouds, ...placed], room)
    placed.push(at)
    return revisionTriangle(at.x, at.y, since.letter)
  })
  return [...clouds.flatMap(cloudMarks), ...triangles, ...keyMarks(since, room)]
}

/** A cloud keeps off the frame. */
function inside({ x, y, w, h }: Area, room: Area): Area {
  const [left, top] = [Math.max(x, room.x + BEYOND), Math.max(y, room.y + BEYOND)]
  const [right, bottom] = [
    Math.min(x + w, room.x + room.w - BEYOND),
    Math.min(y + h, room.y + room.h - BEYOND),
  ]
  return { x: left, y: top, w: Math.max(1, right - left), h: Math.max(1, bottom - top) }
}

/** At the corner or side of its cloud where the triangle covers least of what is drawn. */
function triangleAt({ x, y, w, h }: Area, taken: readonly Area[], room: Area): Area {
  const { w: tw, h: th } = TRIANGLE
  const [left, right] = [x - BEYOND - tw, x + w + BEYOND]
  const [above, below] = [y - BEYOND - th, y + h + BEYOND]
  const middle = x + w / 2 - tw / 2
  const places: readonly (readonly [number, number])[] = [
    [right - 1, above + 1],
    [left + 1, above + 1],
    [right - 1, below - 1],
    [left + 1, below - 1],
    [middle, above],
    [middle, below],
    [right, y + h / 2 - th / 2],
    [left, y + h / 2 - th / 2],
  ]
  const covered = ([px, py]: readonly [number, number]): number => {
    const box = { x: px, y: py, w: tw, h: th }
    const out = px < room.x || py < room.y || px + tw > room.x + room.w || py + th > room.y + room.h
    return (out ? 1000 : 0) + taken.reduce((sum, area) => sum + shared(box, area), 0)
  }
  const [px, py] = places.reduce((best, place) => (covered(place) < covered(best) ? place : best))
  return { x: px, y: py, w: tw, h: th }
}

const shared = (a: Area, b: Area): number =>
  Math.max(0, Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)) *
  Math.max(0, Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y))

/** Below the drawing, in its clear strip: what the triangle means. */
function keyMarks({ since, letter }: ChangesSince, room: Area): Mark[] {
  const issued = !letter.endsWith('+')
  const words = issued
    ? `Clouds: changed in revision ${letter}, against revision ${since}`
    : `Clouds: changed since revision ${since}, not issued`
  const [x, bottom] = [room.x + 8, room.y + room.h]
  return [
    ...revisionTriangle(x, bottom - TRIANGLE.h - 0.2, letter),
    textMark(x + TRIANGLE.w + 2, bottom - 1.2, { text: words, height: USUAL, ink: 'accent' }),
  ]
}
