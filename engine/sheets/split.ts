import type { Part } from '../model/design'
import type { Millimetres } from '../units'
import { around } from './extent'
import type { Area } from './paper'
import type { Shown } from './shown'

/** A part with the room that it takes on the drawing, words included. */
interface Piece {
  readonly part: Part
  readonly area: Area
}

/** A row or a column of pieces, in order, that may be cut in two between any neighbours. */
interface Cut {
  readonly before: readonly Piece[]
  readonly after: readonly Piece[]
}

/**
 * Parts in groups that each fit into `w` × `h`, cut where the fewest conductors are cut, near the middle of what is
 * too large; read from left to right, then down. A part that is larger than the room stands alone. O(parts² ).
 */
export function groupsFor(
  parts: readonly Part[],
  areaOf: (part: Part) => Area,
  shown: readonly Shown[],
  w: Millimetres,
  h: Millimetres,
): Part[][] {
  const pieces = parts.map((part): Piece => ({ part, area: areaOf(part) }))
  return groups(pieces, shown, w, h).map((group) => group.map((p) => p.part))
}

/** Groups of parts, two at least, for a group that turned out not to fit. */
export function halved(
  parts: readonly Part[],
  areaOf: (part: Part) => Area,
  shown: readonly Shown[],
): Part[][] {
  const { w, h } = around(parts.map(areaOf))
  const limit = w > h ? { w: w * 0.75, h: Infinity } : { w: Infinity, h: h * 0.75 }
  const cut = groupsFor(parts, areaOf, shown, limit.w, limit.h)
  return cut.length > 1 ? cut : [parts.slice(0, parts.length / 2), parts.slice(parts.length / 2)]
}

function groups(pieces: readonly Piece[], shown: readonly Shown[], w: number, h: number): Piece[][] {
  const all = around(pieces.map((p) => p.area))
  const [across, down] = [all.w / w, all.h / h]
  if ((across <= 1 && down <= 1) || pieces.length < 2) return [[...pieces]]
  const level = across >= down
  const count = Math.ceil(level ? across : down)
  const share = Math.floor(count / 2) / count
  const { before, after } = bestCut(pieces, shown, level, share, count)
  return [...groups(before, shown, w, h), ...groups(after, shown, w, h)]
}

/** What one conductor cut weighs against a cut away from its ideal place, as a share of the whole length. */
const WEIGHT_OF_PLACE = 40

function bestCut(
  pieces: readonly Piece[],
  shown: readonly Shown[],
  level: boolean,
  share: number,
  count: number,
): Cut {
  const middle = ({ area: { x, y, w, h } }: Piece): number => (level ? x + w / 2 : y + h / 2)
  const sorted = [...pieces].sort((a, b) => middle(a) - middle(b))
  const rank = new Map(sorted.map((p, i) => [p.part.id, i]))
  const cutsAt = new Int32Array(sorted.length + 1)
  for (const { conductor: c } of shown) {
    const [a, b] = [rank.get(c.from.part), rank.get(c.to.part)]
    if (a === undefined || b === undefined || a === b) continue
    for (let i = Math.min(a, b) + 1; i <= Math.max(a, b); i++) cutsAt[i]!++
  }
  const start = middle(sorted[0]!)
  const length = Math.max(1, middle(sorted.at(-1)!) - start)
  let best = { at: 1, cost: Infinity }
  for (let i = 1; i < sorted.length; i++) {
    const place = ((middle(sorted[i - 1]!) + middle(sorted[i]!)) / 2 - start) / length
    const off = Math.abs(place - share) * count
    const cost = cutsAt[i]! + WEIGHT_OF_PLACE * off * off
    if (cost < best.cost) best = { at: i, cost }
  }
  return { before: sorted.slice(0, best.at), after: sorted.slice(best.at) }
}
