import type { Millimetres } from '../../units'
import type { RouteBox } from './request'

/** Distance of the lattice lines, mm. Parts and terminals stand on every second one. */
export const PITCH: Millimetres = 1.25

/** What lies on a lattice node, as bits. */
export const LEVEL = 1
export const UPRIGHT = 2
/** A corner of a conductor: nobody else may touch it. */
export const CORNER = 4
export const WALL = 8
/** The stub of a terminal: only its own conductors. */
export const STUB = 16

/** Costs, in quarters of a pitch. A bend is worth 11 mm of detour, a crossing 10 mm. */
export const STEP = 4
export const BEND = 36
export const CROSS = 32
const BESIDE_BOX = 8
const BESIDE_CONDUCTOR = 4

/**
 * The sheet as a lattice of nodes, row by row. Shapes: every array has cols × rows entries.
 * `toll` is what one step onto the node costs, by axis: the axis of a level step is 0, of an upright one 1.
 */
export interface Lattice {
  readonly left: Millimetres
  readonly top: Millimetres
  readonly cols: number
  readonly rows: number
  readonly bits: Uint8Array
  readonly toll: readonly [Uint8Array, Uint8Array]
  /** Number of the conductor that lies on the node, by axis; −1: none. Corners have it on both. */
  readonly owner: readonly [Int32Array, Int32Array]
}

/** A lattice that covers the area with a margin on all sides; nothing lies on it yet. O(nodes). */
export function latticeOf(area: RouteBox, margin: Millimetres): Lattice {
  const snap = (mm: Millimetres): number => Math.floor(mm / (2 * PITCH)) * 2 * PITCH
  const left = snap(area.x - margin)
  const top = snap(area.y - margin)
  const cols = Math.ceil((area.x + area.w + margin - left) / PITCH) + 2
  const rows = Math.ceil((area.y + area.h + margin - top) / PITCH) + 2
  const n = cols * rows
  const bits = new Uint8Array(n)
  for (let c = 0; c < cols; c++) bits[c] = bits[n - 1 - c] = WALL
  for (let r = 0; r < rows; r++) bits[r * cols] = bits[r * cols + cols - 1] = WALL
  return {
    left,
    top,
    cols,
    rows,
    bits,
    toll: [new Uint8Array(n).fill(STEP), new Uint8Array(n).fill(STEP)],
    owner: [new Int32Array(n).fill(-1), new Int32Array(n).fill(-1)],
  }
}

export function nodeAt(l: Lattice, x: Millimetres, y: Millimetres): number {
  const c = Math.min(l.cols - 1, Math.max(0, Math.round((x - l.left) / PITCH)))
  const r = Math.min(l.rows - 1, Math.max(0, Math.round((y - l.top) / PITCH)))
  return r * l.cols + c
}

export const xOf = (l: Lattice, node: number): Millimetres => l.left + (node % l.cols) * PITCH
export const yOf = (l: Lattice, node: number): Millimetres => l.top + Math.floor(node / l.cols) * PITCH

/** Nodes in and on the box become wall; the nodes around it grow dear. */
export function addBox(l: Lattice, box: RouteBox): void {
  const c1 = Math.max(1, Math.ceil((box.x - l.left) / PITCH - 1 + 1e-6))
  const c2 = Math.min(l.cols - 2, Math.floor((box.x + box.w - l.left) / PITCH + 1 - 1e-6))
  const r1 = Math.max(1, Math.ceil((box.y - l.top) / PITCH - 1 + 1e-6))
  const r2 = Math.min(l.rows - 2, Math.floor((box.y + box.h - l.top) / PITCH + 1 - 1e-6))
  for (let r = r1 - 1; r <= r2 + 1; r++)
    for (let c = c1 - 1; c <= c2 + 1; c++) {
      const node = r * l.cols + c
      if (r >= r1 && r <= r2 && c >= c1 && c <= c2) l.bits[node]! |= WALL
      else for (const axis of l.toll) axis[node] = Math.max(axis[node]!, STEP + BESIDE_BOX)
    }
}

/** Step from one node towards another on the same line. */
export function stride(l: Lattice, from: number, to: number): number {
  if (from === to) return 0
  const sameRow = Math.floor(from / l.cols) === Math.floor(to / l.cols)
  return (sameRow ? 1 : l.cols) * (to > from ? 1 : -1)
}

/** Lays conductor `id` along corners (nodes), first and last included. */
export function lay(l: Lattice, corners: readonly number[], id: number): void {
  mark(l, corners, id, BESIDE_CONDUCTOR)
}

/** Takes a conductor that was laid along these corners off again. */
export function lift(l: Lattice, corners: readonly number[]): void {
  mark(l, corners, -1, -BESIDE_CONDUCTOR)
}

function mark(l: Lattice, corners: readonly number[], id: number, beside: number): void {
  for (let i = 1; i < corners.length; i++) {
    const from = corners[i - 1]!
    const to = corners[i]!
    const step = stride(l, from, to)
    if (step === 0) continue
    const axis = step === 1 || step === -1 ? 0 : 1
    const bit = axis === 0 ? LEVEL : UPRIGHT
    const side = axis === 0 ? l.cols : 1
    const owner = l.owner[axis]
    const toll = l.toll[axis]
    for (let node = from; ; node += step) {
      if (l.bits[node]! & STUB) {
        if (node === to) break
        continue
      }
      const isCorner = node === from || node === to
      if (id < 0) l.bits[node]! &= isCorner ? ~(CORNER | bit) : ~bit
      else l.bits[node]! |= isCorner ? CORNER | bit : bit
      owner[node] = id
      // A corner is on two stretches, so its neighbours are priced by both.
      toll[node - side]! += beside
      toll[node + side]! += beside
      if (node === to) break
    }
  }
}
