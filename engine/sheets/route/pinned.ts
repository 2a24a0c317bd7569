import { nodeAt, STUB, stride, WALL } from './lattice'
import { place, type Sheet, takeOff } from './sheet'
import { freeWay, isFree, targetOf } from './way'

/**
 * Lays a line through the corners that were placed by hand; false where it has none, or where a part, another
 * line or a lack of room is in the way: it is then routed freely.
 */
export function layPinned(s: Sheet, i: number): boolean {
  const line = s.lines[i]!
  const fixed = (line.request.fixed ?? []).map((p) => nodeAt(s.lattice, p.x, p.y))
  const via = fixed.filter((n, k) => n !== fixed[k - 1])
  if (via.length === 0 || line.corners.length > 0) return false
  if (line.from.exits.length === 0 || line.to.exits.length === 0) return false
  const l = s.lattice
  const isLine = via.every((n, k) => k === 0 || isAligned(l.cols, via[k - 1]!, n))
  const isOpen = via.every((n) => (l.bits[n]! & (WALL | STUB)) === 0)
  if (!isLine || !isOpen || !isFree(l, via.length > 1 ? via : [via[0]!, via[0]!])) return false

  const first = via[0]!
  const last = via.at(-1)!
  const axisAt = (a: number | undefined, b: number | undefined): 0 | 1 =>
    a !== undefined && b !== undefined && Math.abs(stride(l, a, b)) !== 1 ? 1 : 0
  place(s, i, [...via])
  const head = freeWay(s, targetOf(line.from), { nodes: [first], axis: axisAt(first, via[1]) })
  if (head) {
    takeOff(s, i)
    const begun = joined(head.corners, via)
    place(s, i, begun)
    const tail = freeWay(s, { nodes: [last], axis: axisAt(via.at(-2), last) }, targetOf(line.to))
    if (tail) {
      takeOff(s, i)
      const all = simple(l.cols, joined(begun, tail.corners))
      place(s, i, all)
      line.pinned = true
      line.isLoose = false
      return true
    }
  }
  takeOff(s, i)
  return false
}

const isAligned = (cols: number, a: number, b: number): boolean =>
  a % cols === b % cols || Math.floor(a / cols) === Math.floor(b / cols)

const joined = (a: readonly number[], b: readonly number[]): number[] => [
  ...a,
  ...(a.at(-1) === b[0] ? b.slice(1) : b),
]

/** Without corners that lie on a straight stretch. */
function simple(cols: number, corners: readonly number[]): number[] {
  return corners.filter((n, k) => {
    const [a, b] = [corners[k - 1], corners[k + 1]]
    if (a === undefined || b === undefined) return true
    const row = (v: number): number => Math.floor(v / cols)
    return !(a % cols === n % cols && n % cols === b % cols) && !(row(a) === row(n) && row(n) === row(b))
  })
}
