import { components } from '../math/components'
import { graphOf } from '../math/graph'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** What hangs together without a barrier in between, in zones. */
export interface Zones {
  readonly count: number
  /** Zone of each node. */
  readonly of: Int32Array
  /** 1 where a battery has a terminal in the zone. */
  readonly hasBattery: Uint8Array
  /** Barriers at each zone, each once. */
  readonly at: readonly (readonly number[])[]
  /** Zones at the two ends of a branch. */
  readonly ends: (branch: number) => readonly [number, number]
}

/** O(nodes + branches + devices). */
export function zonesOf(p: Prepared, isBarrier: (branch: number) => boolean): Zones {
  const plain: number[] = []
  const barriers: number[] = []
  for (let e = 0; e < p.graph.edgeCount; e++) (isBarrier(e) ? barriers : plain).push(e)
  const tail = Int32Array.from(plain, (e) => p.graph.tail[e]!)
  const head = Int32Array.from(plain, (e) => p.graph.head[e]!)
  const { of, count } = components(graphOf(p.graph.vertexCount, tail, head))
  const ends = (e: number): readonly [number, number] => [of[p.graph.tail[e]!]!, of[p.graph.head[e]!]!]
  const hasBattery = new Uint8Array(count)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    hasBattery[of[p.positive[d]!]!] = 1
    hasBattery[of[p.negative[d]!]!] = 1
  })
  const at: number[][] = Array.from({ length: count }, () => [])
  for (const e of barriers) {
    const [a, b] = ends(e)
    at[a]!.push(e)
    if (b !== a) at[b]!.push(e)
  }
  return { count, of, hasBattery, at, ends }
}
