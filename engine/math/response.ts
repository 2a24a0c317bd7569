import type { Factor } from './sparse'

/** What 1 A put in at one vertex and taken out at another does, to the last digit as a full solve tells it. */
export interface Response {
  at(vertex: number): number
  /** Edges between whose ends there may be a difference; between those of all others there is none. */
  edges(): readonly number[]
}

/**
 * Prepares responses of a network without diagonal. A value is worked out when it is asked for, from those above it in
 * the elimination tree; what a vertex hangs on by one edge, and nothing was put in below, it is a copy of. O(what the
 * two vertices reach in the factor) an answer, and O(its way up) each value. One answer at a time: asking an older one
 * throws.
 */
export function responses({ pattern, pivot, lower }: Factor): (into: number, outOf: number) => Response {
  const { n, tail, head, held, place, start, row } = pattern
  const isEmpty = (k: number): boolean => start[k] === start[k + 1]
  const isCopy = (k: number): boolean => start[k + 1]! - start[k]! === 1 && lower[start[k]!] === 1
  const { first, next, always } = edgesByPosition()
  const isAlways = new Uint8Array(tail.length)
  for (const e of always) isAlways[e] = 1

  /** Values by position, each good where its mark is that of the answer. */
  const value = new Float64Array(n)
  const mark = new Int32Array(n)
  /** What is put in by position; all 0 but where the answer reaches. */
  const put = new Float64Array(n)
  const seen = new Uint8Array(n)
  const way = new Int32Array(n)
  let reached: number[] = []
  let answers = 0

  return (into, outOf) => {
    for (const k of reached) put[k] = 0
    reached = reachedFrom([into, outOf])
    for (const k of reached) seen[k] = 0
    if (!held[into]) put[place[into]!]! += 1
    if (!held[outOf]) put[place[outOf]!]! -= 1
    for (const k of reached)
      for (let i = start[k]!; put[k] !== 0 && i < start[k + 1]!; i++) put[row[i]!]! += lower[i]! * put[k]!
    const own = ++answers
    const mine = reached
    return {
      at(vertex) {
        if (own !== answers) throw new Error('a response was asked after the next one')
        return valueAt(place[vertex]!)
      },
      edges() {
        const found = always.slice()
        for (const k of mine)
          for (let e = first[k]!; e !== -1; e = next[e]!) if (isAlways[e] === 0) found.push(e)
        return found
      },
    }
  }

  function valueAt(position: number): number {
    let steps = 0
    for (let k = position; mark[k] !== answers; k = row[start[k]!]!) {
      way[steps++] = k
      if (isEmpty(k)) break
    }
    while (steps > 0) {
      const k = way[--steps]!
      let x = put[k]! / pivot[k]!
      for (let i = start[k]!; i < start[k + 1]!; i++) x += lower[i]! * value[row[i]!]!
      value[k] = x
      mark[k] = answers
    }
    return value[position]!
  }

  /** Positions that a value put in at the vertices spreads to, ascending. */
  function reachedFrom(vertices: readonly number[]): number[] {
    const found: number[] = []
    for (const v of vertices)
      for (let k = place[v]!; !held[v] && seen[k] === 0; k = row[start[k]!]!) {
        found.push(k)
        seen[k] = 1
        if (isEmpty(k)) break
      }
    return found.sort((a, b) => a - b)
  }

  /** Edges as lists by the earlier of their ends that are not held; `always`: those that no two vertices rule out. */
  function edgesByPosition(): { first: Int32Array; next: Int32Array; always: number[] } {
    const first = new Int32Array(n).fill(-1)
    const next = new Int32Array(tail.length).fill(-1)
    const always: number[] = []
    for (let e = tail.length - 1; e >= 0; e--) {
      const [u, v] = [tail[e]!, head[e]!]
      if (u === v || (held[u] && held[v])) continue
      const k = held[u] ? place[v]! : held[v] ? place[u]! : Math.min(place[u]!, place[v]!)
      next[e] = first[k]!
      first[k] = e
      const besideHeld = held[u] || held[v]
      if (!isEmpty(k) && (besideHeld || !isCopy(k))) always.push(e)
    }
    return { first, next, always }
  }
}
