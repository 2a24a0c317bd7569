import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** Where the search from a branch outwards ends. */
export interface Behind {
  /** Terminals of batteries are reached without passing a barrier. */
  readonly battery: boolean
  /** Barriers met. */
  readonly barriers: readonly number[]
  /** Nodes reached without passing one. */
  readonly reached: ReadonlySet<number>
}

/** What stands behind each end of a branch: batteries, or the barriers before them. Searches one net; O(its size) a call. */
export function behindOf(p: Prepared): {
  from(nodes: readonly number[], without: number, barrier: (branch: number) => boolean): Behind
} {
  const atBattery = new Uint8Array(p.graph.vertexCount)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    atBattery[p.positive[d]!] = 1
    atBattery[p.negative[d]!] = 1
  })
  return {
    from(nodes, without, barrier) {
      const { start, edge, far } = p.graph
      const seen = new Set(nodes)
      const barriers = new Set<number>()
      let battery = false
      for (const v of seen) {
        if (atBattery[v] === 1) battery = true
        for (let k = start[v]!; k < start[v + 1]!; k++) {
          const e = edge[k]!
          if (e === without) continue
          if (barrier(e)) barriers.add(e)
          else seen.add(far[k]!)
        }
      }
      return { battery, barriers: [...barriers], reached: seen }
    },
  }
}
