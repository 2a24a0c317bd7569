import { type Lattice, LEVEL, STUB, stride, UPRIGHT, WALL } from './lattice'
import { type Line, place, type Sheet, takeOff } from './sheet'
import type { Terminal } from './terminal'
import { isFree, stretchCost } from './way'

/** Cost of a stretch by its distance in nodes from what runs beside it; from 7.5 mm on none. */
const CROWDED = [80, 40, 16, 8, 4, 2, 0] as const
const FAR = CROWDED.length - 1
const MOST = 40

/**
 * Shifts stretches between two corners sideways, without passing over anything, to where they stand evenly between
 * their neighbours: a bundle spreads over its channel. Lengths, bends and crossings do not grow for it by more than
 * the room is worth.
 */
export function spread(s: Sheet, rounds: number): void {
  for (let round = 0; round < rounds; round++) {
    let changes = 0
    for (let k = 0; k < s.lines.length; k++) {
      const i = round % 2 === 0 ? k : s.lines.length - 1 - k
      const line = s.lines[i]!
      if (line.isLoose && line.corners.length > 1) changes += spreadLine(s, line, i)
    }
    if (changes === 0) return
  }
}

function spreadLine(s: Sheet, line: Line, i: number): number {
  let changes = 0
  let path = withStubs(s.lattice, line, line.corners)
  takeOff(s, i)
  for (let k = 1; k + 2 < path.length; k++) {
    const moved = bestShift(s, line, path, k)
    if (!moved) continue
    path = moved
    changes++
  }
  place(s, i, withoutRepeats(path))
  return changes
}

/** The way with a stretch of no length where it leaves a stub sideways, so that every stretch lies between two. */
function withStubs(l: Lattice, line: Line, corners: readonly number[]): number[] {
  const axisOf = (a: number, b: number): number => (Math.abs(stride(l, a, b)) === 1 ? 0 : 1)
  const path = [...corners]
  if (axisOf(path[0]!, path[1]!) !== line.from.axis) path.unshift(path[0]!)
  if (axisOf(path.at(-1)!, path.at(-2)!) !== line.to.axis) path.push(path.at(-1)!)
  return path
}

const withoutRepeats = (path: readonly number[]): number[] => path.filter((n, k) => n !== path[k - 1])

/** The way with the stretch from corner k to k + 1 shifted to its best place; null: it is there already. */
function bestShift(s: Sheet, line: Line, path: readonly number[], k: number): number[] | null {
  const l = s.lattice
  const along = stride(l, path[k]!, path[k + 1]!)
  const aside = Math.abs(along) === 1 ? l.cols : 1
  // Only the shifted stretch and its two neighbours change.
  const part = (p: readonly number[]): number[] => p.slice(k - 1, k + 3)
  const worth = (p: readonly number[]): number =>
    stretchCost(l, part(p)) + crowding(l, p[k]!, p[k + 1]!, along, aside)
  let best: { path: number[]; cost: number } | null = null
  const now = worth(path)
  for (const sign of [1, -1]) {
    for (let n = 1; n <= MOST; n++) {
      const by = sign * n * aside
      const moved = path.map((node, j) => (j === k || j === k + 1 ? node + by : node))
      if (!keepsShape(l, line, path, moved, k) || !isFree(l, withoutRepeats(part(moved)))) break
      const cost = worth(moved)
      if (cost < (best?.cost ?? now)) best = { path: moved, cost }
    }
  }
  return best?.path ?? null
}

/** The stretches before and after keep their direction; those out of a shared stub do not grow from nothing. */
function keepsShape(
  l: Lattice,
  line: Line,
  path: readonly number[],
  moved: readonly number[],
  k: number,
): boolean {
  const isKept = (t: Terminal | null, from: number, old: number, next: number): boolean => {
    if (from === next) return false
    if (from === old)
      return t !== null && t.exits.length === 1 && !t.isShared && stride(l, from, next) === t.out
    return stride(l, from, old) === stride(l, from, next)
  }
  return (
    isKept(k === 1 ? line.from : null, path[k - 1]!, path[k]!, moved[k]!) &&
    isKept(k + 3 === path.length ? line.to : null, path[k + 2]!, path[k + 1]!, moved[k + 1]!)
  )
}

/** How crowded a stretch stands, both sides together. */
function crowding(l: Lattice, from: number, to: number, along: number, aside: number): number {
  const taken = (Math.abs(along) === 1 ? LEVEL : UPRIGHT) | WALL | STUB
  const near = (side: number): number => {
    let least = FAR
    for (let node = from; ; node += along) {
      for (let d = 1; d < least; d++) if (l.bits[node + d * side]! & taken) least = d
      if (node === to) return CROWDED[least]!
    }
  }
  return near(aside) + near(-aside)
}
