import { DegreeQueue } from './degreequeue'
import { reduceSeries } from './series'

/**
 * A fill-reducing elimination order: leaves first, so that a tree fills nothing; then vertices in series, each
 * leaving one edge behind; what is left, the knots of the mesh, by approximate minimum degree. Vertices with a
 * great many edges among the knots go last. Vertices marked in `fixed` have their edges ignored.
 * Returns new position → vertex. About O(m) on wiring; no recursion.
 */
export function eliminationOrder(
  n: number,
  tail: Int32Array,
  head: Int32Array,
  fixed: Uint8Array,
): Int32Array {
  const { order, count, ...left } = reduceSeries(n, tail, head, fixed)
  if (count === n) return order
  const done = new Uint8Array(n)
  for (let k = 0; k < count; k++) done[order[k]!] = 1
  const knots = new Int32Array(n - count)
  const place = new Int32Array(n)
  let next = 0
  for (let v = 0; v < n; v++) {
    if (done[v]) continue
    place[v] = next
    knots[next++] = v
  }
  const placed = (ends: Int32Array): Int32Array => ends.map((v) => place[v]!)
  const inner = minimumDegree(knots.length, placed(left.tail), placed(left.head))
  inner.forEach((k, i) => {
    order[count + i] = knots[k]!
  })
  return order
}

/**
 * Approximate minimum degree on the quotient graph: the vertex with the fewest neighbours goes first, and what
 * its removal joins is kept as one element instead of as edges.
 * Source of the method: Amestoy, Davis and Duff, "An approximate minimum degree ordering algorithm", 1996.
 */
function minimumDegree(n: number, tail: Int32Array, head: Int32Array): Int32Array {
  const neighbours = simpleRows(n, tail, head)
  const manyEdges = Math.max(16, 10 * Math.sqrt(n))
  const order = new Int32Array(n)
  const done = new Uint8Array(n)
  let last = n
  for (let v = 0; v < n; v++) {
    if (neighbours[v]!.length <= manyEdges) continue
    order[--last] = v
    done[v] = 1
  }
  for (let v = 0; v < n; v++) neighbours[v] = neighbours[v]!.filter((w) => !done[w])

  /** Elements a vertex belongs to, named by the vertex whose removal made them; members of each element. */
  const elements: number[][] = Array.from({ length: n }, () => [])
  const members: (number[] | undefined)[] = new Array(n)
  const outside = new Int32Array(n)
  const outsideStamp = new Int32Array(n).fill(-1)
  const mark = new Int32Array(n).fill(-1)
  const queue = new DegreeQueue(n)
  for (let v = 0; v < n; v++) if (!done[v]) queue.put(v, neighbours[v]!.length)

  for (let k = 0; k < last; k++) {
    const p = queue.takeLeast()
    order[k] = p
    done[p] = 1
    const joined: number[] = []
    mark[p] = k
    const gather = (v: number): void => {
      if (done[v] || mark[v] === k) return
      mark[v] = k
      joined.push(v)
    }
    for (const v of neighbours[p]!) gather(v)
    for (const e of elements[p]!) {
      for (const v of members[e]!) gather(v)
      members[e] = undefined
    }
    neighbours[p] = []
    elements[p] = []
    members[p] = joined
    for (const v of joined) {
      const kept = elements[v]!.filter((e) => members[e] !== undefined)
      elements[v] = kept
      for (const e of kept) {
        if (outsideStamp[e] !== k) {
          outsideStamp[e] = k
          outside[e] = members[e]!.filter((w) => !done[w]).length
        }
        outside[e]!--
      }
    }
    for (const v of joined) {
      neighbours[v] = neighbours[v]!.filter((w) => mark[w] !== k)
      let degree = neighbours[v]!.length + joined.length - 1
      for (const e of elements[v]!) degree += outside[e]!
      elements[v]!.push(p)
      queue.move(v, Math.min(degree, last - k - 1))
    }
  }
  return order
}

/** Rows without self-loops and doubles. */
function simpleRows(n: number, tail: Int32Array, head: Int32Array): number[][] {
  const rows: number[][] = Array.from({ length: n }, () => [])
  for (let e = 0; e < tail.length; e++) {
    const u = tail[e]!
    const v = head[e]!
    if (u === v) continue
    rows[u]!.push(v)
    rows[v]!.push(u)
  }
  const seen = new Int32Array(n).fill(-1)
  return rows.map((row, v) =>
    row.filter((w) => {
      if (seen[w] === v) return false
      seen[w] = v
      return true
    }),
  )
}
