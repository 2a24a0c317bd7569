import { type Lattice, nodeAt, PITCH, stride, xOf, yOf } from './lattice'
import { layPinned } from './pinned'
import type { Routed } from './request'
import { type Line, place, type Sheet } from './sheet'
import type { Terminal } from './terminal'
import { isFree } from './way'

/**
 * Lays again what was laid before, where the ends are the same and the way is still free; returns how many. Lines
 * with corners that were placed by hand since then go first, through those corners if they can.
 */
export function keepPrevious(s: Sheet, order: readonly number[], previous: readonly Routed[]): number {
  const before = new Map(previous.map((r) => [r.id, r]))
  for (const i of order) {
    const old = before.get(s.lines[i]!.request.id)
    if (old && !passesFixed(s.lines[i]!, old)) layPinned(s, i)
  }
  let kept = 0
  s.lines.forEach((line, i) => {
    const old = before.get(line.request.id)
    if (!old || line.corners.length > 0) return
    line.isHopeless = !old.ok && isSameEnds(line, old)
    const corners = cornersOf(s.lattice, line, old)
    if (!old.ok || !corners || !isFree(s.lattice, corners)) return
    place(s, i, corners)
    line.pinned = (line.request.fixed ?? []).length > 0 && passesFixed(line, old)
    line.isLoose = false
    kept++
  })
  return kept
}

const isSameEnds = ({ request: { from, to } }: Line, { points }: Routed): boolean =>
  [from, to].every((port, k) => {
    const end = points.at(-k)!
    return end.x === port.x && end.y === port.y
  })

/** Nodes from exit to exit of a way that was drawn before; null where it does not fit the terminals any more. */
function cornersOf(l: Lattice, line: Line, { points }: Routed): number[] | null {
  const nodes = points.map((p) => nodeAt(l, p.x, p.y))
  if (
    points.some((p, k) => Math.abs(xOf(l, nodes[k]!) - p.x) + Math.abs(yOf(l, nodes[k]!) - p.y) > PITCH / 100)
  )
    return null
  if (nodes[0] !== line.from.node || nodes.at(-1) !== line.to.node) return null
  const inner = nodes.slice(1, -1)
  const start = exitTowards(l, line.from, inner[0] ?? line.to.node)
  const end = exitTowards(l, line.to, inner.at(-1) ?? line.from.node)
  if (start === null || end === null) return null
  const corners = [start, ...inner, end].filter((n, k, all) => n !== all[k - 1])
  return corners.length === 1 ? [start, end] : corners
}

/** The exit by which a way with this next corner leaves the terminal; null where it leaves otherwise. */
function exitTowards(l: Lattice, t: Terminal, next: number): number | null {
  if (stride(l, t.node, next) !== t.out) return null
  const length = (next - t.node) / t.out
  if (!Number.isInteger(length)) return null
  const last = t.exits.at(-1)
  if (last === undefined) return null
  return t.exits.includes(next) ? next : length > (last - t.node) / t.out ? last : null
}

/** A corner placed by hand since then must lie on the way. */
function passesFixed(line: Line, { points }: Routed): boolean {
  return (line.request.fixed ?? []).every((f) =>
    points.some((b, k) => {
      const a = points[k - 1]
      return (
        a !== undefined &&
        Math.min(a.x, b.x) <= f.x &&
        f.x <= Math.max(a.x, b.x) &&
        Math.min(a.y, b.y) <= f.y &&
        f.y <= Math.max(a.y, b.y)
      )
    }),
  )
}
