import { analyse, type Factor, factorise, solve } from './sparse'

/** How currents divide in one connected part of a network, held at the vertex in the first place. */
export interface Division {
  /** Vertex → place in this part. */
  readonly place: ReadonlyMap<number, number>
  readonly vertices: Int32Array
  readonly edges: Int32Array
  /** By place in `edges`: places of the ends, and conductance, S. */
  readonly tail: Int32Array
  readonly head: Int32Array
  readonly conductance: Float64Array
  readonly factor: Factor
}

/**
 * `edges` of a graph with ends `tail`, `head` and `resistance` in Ω; they must be connected. One factorisation.
 * Held at vertex `at`, one of theirs.
 */
export function divisionOf(
  edges: Int32Array,
  tail: Int32Array,
  head: Int32Array,
  resistance: Float64Array,
  at = tail[edges[0]!]!,
): Division {
  const place = new Map([[at, 0]])
  const placeOf = (v: number): number => {
    let known = place.get(v)
    if (known === undefined) {
      known = place.size
      place.set(v, known)
    }
    return known
  }
  const from = edges.map((e) => placeOf(tail[e]!))
  const to = edges.map((e) => placeOf(head[e]!))
  const conductance = Float64Array.from(edges, (e) => 1 / resistance[e]!)
  const held = new Uint8Array(place.size)
  held[0] = 1
  const factor = factorise(analyse(place.size, from, to, held), conductance)
  return { place, vertices: Int32Array.from(place.keys()), edges, tail: from, head: to, conductance, factor }
}

/**
 * Current in each edge, tail → head, for 1 A put in at place `joint` and taken out where the part is held.
 * A millionth of an ohm beside ten: the voltages' own rounding is then a large part of the current, so what
 * they leave unbalanced at the vertices is solved for once more and added to the currents, not to the voltages.
 * Two solves. Writes `out`, one entry an edge.
 */
export function currentsFrom(d: Division, joint: number, out: Float64Array): void {
  const left = new Float64Array(d.vertices.length)
  left[joint] = 1
  out.fill(0)
  for (let round = 0; round < 2; round++) {
    const voltage = solve(d.factor, left)
    for (let e = 0; e < out.length; e++) {
      const u = d.tail[e]!
      const v = d.head[e]!
      const current = d.conductance[e]! * (voltage[u]! - voltage[v]!)
      out[e]! += current
      left[u]! -= current
      left[v]! += current
    }
  }
}

/**
 * Current in one edge, tail → head, for 1 A put in at each vertex in turn and taken out at the edge's tail; vertices
 * and shares in one order. By reciprocity: the voltages, over the edge's resistance, for 1 A put in at its head and
 * taken out at its tail. Nothing is subtracted on the way, so every share keeps full relative accuracy. One
 * factorisation, one solve.
 */
export function sharesIn(
  edges: Int32Array,
  tail: Int32Array,
  head: Int32Array,
  resistance: Float64Array,
  edge: number,
): { readonly vertices: Int32Array; readonly share: Float64Array } {
  const d = divisionOf(edges, tail, head, resistance, tail[edge]!)
  const push = new Float64Array(d.vertices.length)
  push[d.place.get(head[edge]!)!] = 1
  return { vertices: d.vertices, share: solve(d.factor, push).map((v) => 0 - v / resistance[edge]!) }
}
