import type { Solved } from './solved'

/** Vertices of one meshed part from which a way is looked for; in a larger one every way round it counts. */
const MOST_VERTICES = 40

/**
 * Is there a way round a branch on which nothing limits a current: unfused branches, devices backwards (a load may be shorted),
 * unlimited sources forwards? Not by way of branches that are left out, nor within the meshed part in which the branch lies.
 * O(network), and for a meshed part once for each of its vertices.
 */
export function freeWays({ p, envelope }: Solved): (branch: number, without: ReadonlySet<number>) => boolean {
  const { graph } = p
  const devicesAt = new Map<number, number[]>()
  const put = (from: number, to: number): void => {
    const list = devicesAt.get(from)
    if (list) list.push(to)
    else devicesAt.set(from, [to])
  }
  for (let d = 0; d < p.positive.length; d++) {
    put(p.positive[d]!, p.negative[d]!)
    if (p.fault[d] === Number.POSITIVE_INFINITY) put(p.negative[d]!, p.positive[d]!)
  }
  return (branch, without) => {
    const block = envelope.block[branch]!
    const within = (e: number): boolean => e === branch || (block >= 0 && envelope.block[e] === block)
    const ends = verticesOf(branch, block)
    const [first, second] = [graph.tail[branch]!, graph.head[branch]!]
    const starts = ends.size > MOST_VERTICES ? [first, second] : [...ends]
    return starts.some((start) => reaches(start, ends, (e) => within(e) || without.has(e)))
  }

  function verticesOf(branch: number, block: number): Set<number> {
    const ends = new Set([graph.tail[branch]!, graph.head[branch]!])
    if (block >= 0)
      for (let e = 0; e < graph.edgeCount; e++)
        if (envelope.block[e] === block) ends.add(graph.tail[e]!).add(graph.head[e]!)
    return ends
  }

  /** From one vertex to another one of `ends`. */
  function reaches(start: number, ends: ReadonlySet<number>, shut: (e: number) => boolean): boolean {
    const seen = new Uint8Array(graph.vertexCount)
    const open = [start]
    seen[start] = 1
    const step = (v: number): boolean => {
      if (seen[v] === 1) return false
      seen[v] = 1
      open.push(v)
      return ends.has(v)
    }
    for (let v = open.pop(); v !== undefined; v = open.pop()) {
      for (let i = graph.start[v]!; i < graph.start[v + 1]!; i++) {
        const e = graph.edge[i]!
        if (p.isFuse[e] === 0 && !shut(e) && step(graph.far[i]!)) return true
      }
      for (const far of devicesAt.get(v) ?? []) if (step(far)) return true
    }
    return false
  }
}
