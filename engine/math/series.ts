import { graphOf } from './graph'

/** What taking away leaves and series vertices leaves. */
export interface Reduced {
  /** Its first `count` places: the vertices taken away, in order. */
  readonly order: Int32Array
  readonly count: number
  /** Ends of the edges between the vertices that are left. */
  readonly tail: Int32Array
  readonly head: Int32Array
}

/**
 * Takes away leaves, and when there are none a vertex with two edges, which become one. Doubles that arise so stay
 * doubles. Self-loops and edges of fixed vertices count for nothing. About O(m), no recursion.
 */
export function reduceSeries(n: number, tails: Int32Array, heads: Int32Array, fixed: Uint8Array): Reduced {
  const m = tails.length
  const g = graphOf(n, tails, heads)
  const tail = tails.slice()
  const head = heads.slice()
  /** Edge that an edge has become part of; itself while it stands, −1 once it is gone. */
  const into = new Int32Array(m)
  const degree = new Int32Array(n)
  for (let e = 0; e < m; e++) {
    const u = tail[e]!
    const v = head[e]!
    into[e] = u === v || fixed[u] || fixed[v] ? -1 : e
    if (into[e] === -1) continue
    degree[u]!++
    degree[v]!++
  }
  const standing = (e: number): number => {
    let at = e
    while (into[at] !== at && into[at] !== -1) {
      const up = into[at]!
      if (into[up] !== -1) into[at] = into[up]!
      at = up
    }
    return into[at]!
  }

  const order = new Int32Array(n)
  const taken = new Uint8Array(n)
  let count = 0
  const leaves: number[] = []
  const series: number[] = []
  const offer = (v: number): void => {
    if (degree[v]! <= 1) leaves.push(v)
    else if (degree[v] === 2) series.push(v)
  }
  for (let v = 0; v < n; v++) offer(v)
  for (;;) {
    const v = leaves.pop() ?? series.pop()
    if (v === undefined) break
    if (taken[v]) continue
    taken[v] = 1
    order[count++] = v
    let first = -1
    for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
      const e = standing(g.edge[i]!)
      if (e === -1 || e === first) continue
      if (first === -1) {
        first = e
        continue
      }
      const a = tail[first] === v ? head[first]! : tail[first]!
      const b = tail[e] === v ? head[e]! : tail[e]!
      if (a === b) {
        into[e] = -1
        degree[a]!--
      } else {
        into[e] = first
        tail[first] = a
        head[first] = b
        first = -1
      }
      break
    }
    if (first === -1) continue
    const other = tail[first] === v ? head[first]! : tail[first]!
    into[first] = -1
    degree[other]!--
    offer(other)
  }
  const left = Int32Array.from({ length: m }, (_, e) => e).filter((e) => into[e] === e)
  return { order, count, tail: left.map((e) => tail[e]!), head: left.map((e) => head[e]!) }
}
