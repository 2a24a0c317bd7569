import { type Lattice, nodeAt, PITCH, stride, xOf, yOf } from './lattice'
import type { Routed } from './request'
import { type Line, place, type Sheet } from './sheet'
import type { Terminal } from './terminal'
import { isFree } from './way'

/** Lays again what was laid before, where the ends are the same and the way is still free; returns how many. */
export function keepPrevious(s: Sheet, previous: readonly Routed[]): number {
  const before = new Map(previous.map((r) => [r.id, r]))
  let kept = 0
  s.lines.forEach((line, i) => {
    const old = before.get(line.request.id)
    if (!old?.ok) return
    const corners = cornersOf(s.lattice, line, old)
    if (!corners || !passesFixed(line, old) || !isFree(s.lattice, corners)) return
    place(s, i, corners)
    line.pinned = (line.request.fixed ?? []).length > 0
    line.isLoose = false
    kept++
  })
  return kept
}

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
