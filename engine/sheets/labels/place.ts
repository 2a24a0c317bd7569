import type { Millimetres } from '../../units'
import { besideCandidates, type Candidate, outwardCandidates } from './candidates'
import { emptySheet, isFree, type Occupied, occupy, overlaps } from './occupied'
import type { LabelObstacles, LabelRequest, PlacedLabel, Rect, Stretch } from './request'

/** A line with what it is drawn with, either side of its middle. */
const LINE: Millimetres = 0.3
/** Free strip between labels, half of it round each. */
const APART: Millimetres = 0.4
const LEADER_WIDTH: Millimetres = 0.2
/** Places farther off that are looked at for a leader that crosses as little as can be. */
const CHOICES = 12

/**
 * Places labels beside what they name so that none lies on another, on a box or on a line; where there is no room, a
 * little farther off with a leader. Leaders may cross lines, never labels or boxes. Highest priority first, then
 * those that have the least choice. Deterministic. In the order of the requests.
 */
export function placeLabels(labels: readonly LabelRequest[], obstacles: LabelObstacles): PlacedLabel[] {
  const all = emptySheet()
  const solid = emptySheet()
  const lines = emptySheet()
  for (const box of obstacles.boxes) {
    occupy(all, box)
    occupy(solid, box)
  }
  for (const s of obstacles.segments) {
    const rect = rectOf(s)
    occupy(all, rect)
    occupy(lines, rect)
  }
  const choice = labels.map((l) =>
    l.near.reduce((sum, s) => sum + Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1), 0),
  )
  const order = labels
    .map((_, i) => i)
    .sort((a, b) => labels[b]!.priority - labels[a]!.priority || choice[a]! - choice[b]! || a - b)
  const placed = new Array<PlacedLabel>(labels.length)
  for (const i of order) {
    const label = labels[i]!
    const found = besideIt(label, all) ?? fartherOff(label, all, solid, lines) ?? lyingOnIt(label)
    placed[i] = found
    if (!found.placed) continue
    const room = padded(found)
    occupy(all, room)
    occupy(solid, room)
    if (found.leader) for (const piece of pieces(found.leader)) occupy(all, piece)
  }
  return placed
}

function besideIt(label: LabelRequest, all: Occupied): PlacedLabel | null {
  for (const c of besideCandidates(label))
    if (isFree(all, padded(c))) return { id: label.id, ...c, placed: true }
  return null
}

function fartherOff(
  label: LabelRequest,
  all: Occupied,
  solid: Occupied,
  lines: Occupied,
): PlacedLabel | null {
  let best: { label: PlacedLabel; cost: number } | null = null
  let choices = 0
  for (const { anchors, ...c } of outwardCandidates(label)) {
    if (!isFree(all, padded(c))) continue
    const leader = anchors()
      .map((anchor): Leader => [nearestPoint(c, anchor), anchor])
      .find((l) => passes(l, solid))
    if (!leader) continue
    const [from, to] = leader
    const cost = Math.hypot(from.x - to.x, from.y - to.y) + 2 * crossed(leader, lines)
    if (!best || cost < best.cost) best = { cost, label: { id: label.id, ...c, leader, placed: true } }
    if (++choices === CHOICES) break
  }
  return best?.label ?? null
}

function lyingOnIt(label: LabelRequest): PlacedLabel {
  const first: Candidate = besideCandidates(label).next().value ?? {
    x: 0,
    y: 0,
    w: label.w,
    h: label.h,
    turn: 0,
  }
  return { id: label.id, ...first, placed: false }
}

const padded = ({ x, y, w, h }: Rect): Rect => ({
  x: x - APART / 2,
  y: y - APART / 2,
  w: w + APART,
  h: h + APART,
})

const around = ({ x, y }: { x: number; y: number }): Rect => ({ x: x - 0.5, y: y - 0.5, w: 1, h: 1 })

const rectOf = (s: Stretch): Rect => ({
  x: Math.min(s.x1, s.x2) - LINE,
  y: Math.min(s.y1, s.y2) - LINE,
  w: Math.abs(s.x2 - s.x1) + 2 * LINE,
  h: Math.abs(s.y2 - s.y1) + 2 * LINE,
})

/** The point of the label's edge nearest to the anchor, at a corner or in the middle of a side. */
function nearestPoint({ x, y, w, h }: Rect, anchor: { x: number; y: number }): { x: number; y: number } {
  const px = anchor.x < x ? x : anchor.x > x + w ? x + w : x + w / 2
  const py = anchor.y < y ? y : anchor.y > y + h ? y + h : y + h / 2
  return { x: px, y: py }
}

type Leader = readonly [
  { readonly x: number; readonly y: number },
  { readonly x: number; readonly y: number },
]

/** Meets nothing solid but near its end. */
function passes(leader: Leader, solid: Occupied): boolean {
  const end = around(leader[1])
  for (let k = 0, n = piecesOf(leader); k < n; k++) {
    const piece = pieceOf(leader, k, n)
    if (!isFree(solid, piece) && !overlaps(piece, end)) return false
  }
  return true
}

function crossed(leader: Leader, lines: Occupied): number {
  let count = 0
  for (let k = 0, n = piecesOf(leader); k < n; k++) if (!isFree(lines, pieceOf(leader, k, n))) count++
  return count
}

/** A slanting line as small rectangles. */
function pieces(leader: Leader): Rect[] {
  const n = piecesOf(leader)
  return Array.from({ length: n }, (_, k) => pieceOf(leader, k, n))
}

const piecesOf = ([a, b]: Leader): number => Math.max(1, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y)))

function pieceOf([a, b]: Leader, k: number, n: number): Rect {
  const [x1, y1] = [a.x + ((b.x - a.x) * k) / n, a.y + ((b.y - a.y) * k) / n]
  const [x2, y2] = [a.x + ((b.x - a.x) * (k + 1)) / n, a.y + ((b.y - a.y) * (k + 1)) / n]
  return {
    x: Math.min(x1, x2) - LEADER_WIDTH / 2,
    y: Math.min(y1, y2) - LEADER_WIDTH / 2,
    w: Math.abs(x2 - x1) + LEADER_WIDTH,
    h: Math.abs(y2 - y1) + LEADER_WIDTH,
  }
}
