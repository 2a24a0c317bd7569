import type { Factor } from './sparse'

/** What 1 A put in at one vertex and taken out at another does, to the last digit as a full solve tells it. */
export interface Response {
  at(vertex: number): number
  /** Edges between whose ends there may be a difference, ascending; between those of all others there is none. */
  edges(): readonly number[]
}

/**
 * Prepares responses of a network without diagonal: the solve goes over the positions that the two vertices reach in
 * the factor and over those of its meshes. The rest are copies of what they hang on: their one entry is exactly 1.
 * O(that) an answer, and one pass over the vertices to clear.
 */
export function responses({ pattern, pivot, lower }: Factor): (into: number, outOf: number) => Response {
  const { n, tail, head, held, place, start, row } = pattern
  const isEmpty = (k: number): boolean => start[k] === start[k + 1]
  /** Position that each is a copy of where nothing is put in; −1: of none. */
  const copyOf = Int32Array.from(pivot, (_, k) =>
    start[k + 1]! - start[k]! === 1 && lower[start[k]!] === 1 ? row[start[k]!]! : -1,
  )
  /** Positions that are neither copies nor 0 by themselves, the last first. */
  const meshed: number[] = []
  for (let k = n - 1; k >= 0; k--) if (!isEmpty(k) && copyOf[k] === -1) meshed.push(k)
  const { first, next, always } = edgesByPosition()

  return (into, outOf) => {
    const x = new Float64Array(n)
    const isKnown = new Uint8Array(n)
    const reached = reachedFrom([into, outOf], isKnown)
    for (const k of reached) isKnown[k] = 0
    if (!held[into]) x[place[into]!]! += 1
    if (!held[outOf]) x[place[outOf]!]! -= 1
    for (const k of reached)
      for (let i = start[k]!; x[k] !== 0 && i < start[k + 1]!; i++) x[row[i]!]! += lower[i]! * x[k]!

    const valueAt = (position: number): number => {
      if (isKnown[position] === 1) return x[position]!
      let k = position
      while (isKnown[k] === 0 && copyOf[k] !== -1) k = copyOf[k]!
      const value = isKnown[k] === 1 ? x[k]! : 0
      for (let j = position; j !== -1 && isKnown[j] === 0; j = copyOf[j]!) {
        x[j] = value
        isKnown[j] = 1
      }
      return value
    }
    const settle = (k: number): void => {
      let value = x[k]! / pivot[k]!
      for (let i = start[k]!; i < start[k + 1]!; i++) value += lower[i]! * valueAt(row[i]!)
      x[k] = value
      isKnown[k] = 1
    }
    let i = reached.length - 1
    for (const k of meshed) {
      for (; i >= 0 && reached[i]! > k; i--) settle(reached[i]!)
      if (i >= 0 && reached[i] === k) i--
      settle(k)
    }
    for (; i >= 0; i--) settle(reached[i]!)
    return {
      at: (vertex) => valueAt(place[vertex]!),
      edges() {
        const found = new Set(always)
        for (const k of reached) for (let e = first[k]!; e !== -1; e = next[e]!) found.add(e)
        return [...found].sort((a, b) => a - b)
      },
    }
  }

  /** Positions that a value put in at the vertices spreads to, ascending. */
  function reachedFrom(vertices: readonly number[], seen: Uint8Array): number[] {
    const reached: number[] = []
    for (const v of vertices)
      for (let k = place[v]!; !held[v] && seen[k] === 0; k = row[start[k]!]!) {
        reached.push(k)
        seen[k] = 1
        if (isEmpty(k)) break
      }
    return reached.sort((a, b) => a - b)
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
      if (!isEmpty(k) && (besideHeld || copyOf[k] === -1)) always.push(e)
    }
    return { first, next, always }
  }
}
