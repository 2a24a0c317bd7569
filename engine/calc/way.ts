import type { FeedNet } from './feednet'

/** A way from an unlimited source to a conductor's end that meets no limit: branches in order, source first. */
export interface UnlimitedWay {
  readonly branches: readonly number[]
  readonly device: number
}

/** The way with the fewest edges; undefined when every way meets a limit or an unrated fuse. O(n + m). */
export function unlimitedWay(feed: FeedNet, without: number, end: 'tail' | 'head'): UnlimitedWay | undefined {
  const { graph, supply } = feed
  const onward = new Map<number, { edge: number; to: number } | null>([[graph[end][without]!, null]])
  for (const v of onward.keys()) {
    if (supply[v] === Number.POSITIVE_INFINITY) {
      const branches: number[] = []
      for (let step = onward.get(v); step; step = onward.get(step.to))
        if (feed.branch[step.edge] !== -1) branches.push(feed.branch[step.edge]!)
      const device = feed.supplied.get(v)!.find((s) => s.amps === Number.POSITIVE_INFINITY)!.device
      return { branches, device }
    }
    for (let k = graph.start[v]!; k < graph.start[v + 1]!; k++) {
      const edge = graph.edge[k]!
      const w = graph.far[k]!
      if (edge === without || onward.has(w) || capacityInto(feed, edge, v) !== Number.POSITIVE_INFINITY)
        continue
      onward.set(w, { edge, to: v })
    }
  }
  return undefined
}

/** Unrated fuses met from a conductor's end before any other unrated fuse. O(n + m). */
export function unratedReached(feed: FeedNet, without: number, end: 'tail' | 'head'): number[] {
  const { graph } = feed
  const seen = new Set([graph[end][without]!])
  const fuses = new Set<number>()
  for (const v of seen)
    for (let k = graph.start[v]!; k < graph.start[v + 1]!; k++) {
      const edge = graph.edge[k]!
      if (edge === without) continue
      const capacity = capacityInto(feed, edge, v)
      if (Number.isNaN(capacity)) fuses.add(feed.branch[edge]!)
      else if (capacity > 0) seen.add(graph.far[k]!)
    }
  return [...fuses]
}

/** Capacity of the edge towards vertex v. */
function capacityInto(feed: FeedNet, edge: number, v: number): number {
  return feed.graph.head[edge] === v ? feed.forward[edge]! : feed.backward[edge]!
}
