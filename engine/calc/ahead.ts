import { BRIDGE, blocksOf } from '../math/blocks'
import { graphOf } from '../math/graph'
import type { Metres } from '../units'
import type { FeedNet } from './feednet'
import type { Prepared } from './prepare'

/** Length of a branch by its index, m; null where it is not known. Asked of conductors only. */
export type LengthOf = (branch: number) => Metres | null

/** How far a conductor without a device ahead of it is from its sources and from the device behind it. */
export interface Ahead {
  /** Longest way from an unlimited source to the conductor's far end. null: a length is missing. */
  readonly toFarEndM: Metres | null
  /** On from there to the nearest protective device. Infinity: there is none; null: a length is missing. */
  readonly toDeviceM: Metres | null
  /** The same with every missing length taken as 0. */
  readonly toDeviceAtLeastM: Metres
  /** Conductors whose missing length would be needed. */
  readonly missing: readonly string[]
}

/**
 * The way to the far end goes over branches without a limit, from every unlimited source that reaches the near
 * end without meeting a device, and the conductor itself. The longest of all simple ways cannot be found at a
 * reasonable cost in general, so each meshed part on the way counts with as many of its longest branches as a
 * simple way could use, one fewer than it has vertices. That is exact on trees and for parallel conductors and
 * never too short. The way on to a device is the shortest over branches without a limit. Devices, contacts and
 * shunts have no length. O(n + m) but for ordering the branches of meshed parts and the search for the device.
 */
export function lengthAhead(
  p: Prepared,
  feed: FeedNet,
  edge: number,
  end: 'tail' | 'head',
  lengthM: LengthOf,
): Ahead {
  const missing = new Set<string>()
  const lengthOf = (k: number): number => {
    const branch = feed.branch[k]!
    if (branch === -1 || p.form.branches[branch]!.kind !== 'conductor') return 0
    return lengthM(branch) ?? Number.NaN
  }
  const note = (k: number): void => {
    if (Number.isNaN(lengthOf(k))) missing.add(p.form.branches[feed.branch[k]!]!.id)
  }
  const known = (k: number): number => lengthOf(k) || 0
  note(edge)
  const { tail, head } = feed.graph
  const [near, far] = end === 'tail' ? [tail[edge]!, head[edge]!] : [head[edge]!, tail[edge]!]
  const toFarEnd = longestWay(feed, edge, near, lengthOf, note) + lengthOf(edge)
  const onward = shortestToFuse(feed, edge, far, lengthOf)
  const onwardAtLeast = shortestToFuse(feed, edge, far, known)
  const atLeast = longestWay(feed, edge, near, known, note) + known(edge) + onwardAtLeast
  if (onward !== onwardAtLeast) for (const k of reachable(feed, edge, far)) note(k)
  const toDevice = onward === onwardAtLeast ? toFarEnd + onward : Number.NaN
  return {
    toFarEndM: Number.isNaN(toFarEnd) ? null : toFarEnd,
    toDeviceM: atLeast === Number.POSITIVE_INFINITY ? atLeast : Number.isNaN(toDevice) ? null : toDevice,
    toDeviceAtLeastM: atLeast,
    missing: [...missing],
  }
}

const isOpen = (feed: FeedNet, k: number): boolean =>
  feed.forward[k] === Number.POSITIVE_INFINITY || feed.backward[k] === Number.POSITIVE_INFINITY

/** Edges without a limit that can be reached from a vertex over others of their kind, one edge taken out. */
function reachable(feed: FeedNet, without: number, from: number): Set<number> {
  const { graph } = feed
  const vertices = new Set([from])
  const edges = new Set<number>()
  for (const v of vertices)
    for (let i = graph.start[v]!; i < graph.start[v + 1]!; i++) {
      const k = graph.edge[i]!
      if (k === without || !isOpen(feed, k)) continue
      edges.add(k)
      vertices.add(graph.far[i]!)
    }
  return edges
}

/** Longest way from an unlimited source to `to`, by the bound above; NaN where one is not known. */
function longestWay(
  feed: FeedNet,
  without: number,
  to: number,
  lengthOf: (edge: number) => number,
  note: (edge: number) => void,
): number {
  const edges = [...reachable(feed, without, to)]
  const place = new Map([[to, 0]])
  for (const k of edges)
    for (const v of [feed.graph.tail[k]!, feed.graph.head[k]!]) if (!place.has(v)) place.set(v, place.size)
  const ends = (list: Int32Array): Int32Array => Int32Array.from(edges, (k) => place.get(list[k]!)!)
  const blocks = blocksOf(graphOf(place.size, ends(feed.graph.tail), ends(feed.graph.head)))
  const below = new Int32Array(blocks.count)
  for (const b of blocks.above) if (b !== -1) below[b]!++
  const across = Array.from({ length: blocks.count }, (_, b) => {
    const lengths = Array.from(blocks.edge.subarray(blocks.start[b]!, blocks.start[b + 1]!), (i) =>
      lengthOf(edges[i]!),
    )
    if (lengths.some(Number.isNaN)) return Number.NaN
    return lengths
      .sort((x, y) => y - x)
      .slice(0, below[b]!)
      .reduce((sum, x) => sum + x, 0)
  })
  const step = (v: number): number =>
    blocks.above[v] === -1 ? lengthOf(edges[blocks.bridge[v]!]!) : across[blocks.above[v]!]!
  const way = new Float64Array(place.size)
  for (const v of blocks.order) if (blocks.top[v] !== -1) way[v] = way[blocks.top[v]!]! + step(v)

  const sources = [...place].filter(([v]) => feed.supply[v] === Number.POSITIVE_INFINITY)
  for (const [, source] of sources)
    for (let v = source; Number.isNaN(way[v]!); v = blocks.top[v]!)
      edges.forEach((k, i) => {
        const isStep = blocks.of[i] === BRIDGE ? blocks.bridge[v] === i : blocks.of[i] === blocks.above[v]
        if (isStep) note(k)
      })
  return sources.reduce((most, [, k]) => (way[k]! > most || Number.isNaN(way[k]!) ? way[k]! : most), 0)
}

/** Shortest way over edges without a limit to a vertex at which a fuse stands; Infinity where there is none. */
function shortestToFuse(
  feed: FeedNet,
  without: number,
  from: number,
  lengthOf: (edge: number) => number,
): number {
  const { graph } = feed
  const way = new Map([[from, 0]])
  const open = new Set([from])
  let best = Number.POSITIVE_INFINITY
  for (const v of open) {
    open.delete(v)
    for (let i = graph.start[v]!; i < graph.start[v + 1]!; i++) {
      const k = graph.edge[i]!
      if (k === without) continue
      if (!isOpen(feed, k)) {
        if (feed.branch[k] !== -1) best = Math.min(best, way.get(v)!)
        continue
      }
      const next = way.get(v)! + lengthOf(k)
      if (!(next < (way.get(graph.far[i]!) ?? Number.POSITIVE_INFINITY))) continue
      way.set(graph.far[i]!, next)
      open.add(graph.far[i]!)
    }
  }
  return best
}
