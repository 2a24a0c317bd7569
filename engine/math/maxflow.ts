import type { Graph } from './graph'

/**
 * Greatest flow from `source` to `sink` through edges that have a capacity each way (tail → head `forward`,
 * head → tail `backward`, both at least 0). Infinity is the flag for 'unlimited'; finite capacities stay as given.
 */
export interface Flow {
  /** Σ capacities of the minimum cut; Infinity when some path has no limit at all. */
  readonly value: number
  /** Net flow per edge, positive tail → head. All 0 when unlimited. */
  readonly flow: Float64Array
  /** 1 on the smallest sink side of any minimum cut: the cut nearest the sink. All 0 when unlimited. */
  readonly sinkSide: Uint8Array
}

/** A residual below this part of the largest finite capacity is rounding, not room. */
const ROUNDING = 1e-12

/**
 * Dinic's method with levels counted from the sink, so that the last search leaves the cut nearest the sink.
 * Loops only, O(V²·E) at worst and close to linear on wiring. Edge `without` counts as removed.
 * Source: E. A. Dinic, "Algorithm for solution of a problem of maximum flow in networks", 1970.
 */
export function maxFlow(
  g: Graph,
  forward: Float64Array,
  backward: Float64Array,
  source: number,
  sink: number,
  without = -1,
): Flow {
  if (source === sink) throw new RangeError('A flow needs a source and a sink that differ')
  const flow = new Float64Array(g.edgeCount)
  const sinkSide = new Uint8Array(g.vertexCount)
  const level = new Int32Array(g.vertexCount)
  const queue = new Int32Array(g.vertexCount)
  let largest = 0
  for (let e = 0; e < g.edgeCount; e++) {
    if (forward[e]! > largest && forward[e]! < Number.POSITIVE_INFINITY) largest = forward[e]!
    if (backward[e]! > largest && backward[e]! < Number.POSITIVE_INFINITY) largest = backward[e]!
  }
  const rounding = largest * ROUNDING

  /** Room from `v` along edge e. */
  const room = (e: number, v: number): number =>
    e === without ? 0 : g.tail[e] === v ? forward[e]! - flow[e]! : backward[e]! + flow[e]!

  /** Levels towards the sink over edges with more than `least` room; true when the source is reached. */
  const search = (least: number): boolean => {
    level.fill(-1)
    level[sink] = 0
    let end = 0
    queue[end++] = sink
    for (let i = 0; i < end; i++) {
      const w = queue[i]!
      for (let k = g.start[w]!; k < g.start[w + 1]!; k++) {
        const v = g.far[k]!
        if (level[v] !== -1 || !(room(g.edge[k]!, v) > least)) continue
        level[v] = level[w]! + 1
        queue[end++] = v
      }
    }
    return level[source] !== -1
  }

  if (search(Number.MAX_VALUE)) return { value: Number.POSITIVE_INFINITY, flow, sinkSide }

  const next = new Int32Array(g.vertexCount)
  const way = new Int32Array(g.vertexCount)
  while (search(rounding)) {
    for (let v = 0; v < g.vertexCount; v++) next[v] = g.start[v]!
    let depth = 0
    let v = source
    for (;;) {
      if (v === sink) {
        let least = Number.POSITIVE_INFINITY
        for (let i = 0, u = source; i < depth; i++) {
          const k = way[i]!
          least = Math.min(least, room(g.edge[k]!, u))
          u = g.far[k]!
        }
        let back = depth
        let backTo = source
        for (let i = 0, u = source; i < depth; i++) {
          const k = way[i]!
          const e = g.edge[k]!
          flow[e]! += g.tail[e] === u ? least : -least
          if (back === depth && !(room(e, u) > rounding)) {
            back = i
            backTo = u
          }
          u = g.far[k]!
        }
        depth = back
        v = backTo
        continue
      }
      let k = next[v]!
      while (k < g.start[v + 1]! && !(level[g.far[k]!] === level[v]! - 1 && room(g.edge[k]!, v) > rounding))
        k++
      next[v] = k
      if (k < g.start[v + 1]!) {
        way[depth++] = k
        v = g.far[k]!
        continue
      }
      if (depth === 0) break
      level[v] = -1
      const last = way[--depth]!
      v = g.tail[g.edge[last]!] === v ? g.head[g.edge[last]!]! : g.tail[g.edge[last]!]!
      next[v]!++
    }
  }
  for (let v = 0; v < g.vertexCount; v++) sinkSide[v] = level[v] === -1 ? 0 : 1
  let value = 0
  for (let e = 0; e < g.edgeCount; e++)
    if (e !== without) value += crossing(g, forward, backward, sinkSide, e)
  return { value, flow, sinkSide }
}

/** Capacity of edge e into the sink side; 0 where it does not cross into it. */
export function crossing(
  g: Graph,
  forward: Float64Array,
  backward: Float64Array,
  sinkSide: Uint8Array,
  e: number,
): number {
  const u = sinkSide[g.tail[e]!]!
  const v = sinkSide[g.head[e]!]!
  return u === v ? 0 : v === 1 ? forward[e]! : backward[e]!
}
