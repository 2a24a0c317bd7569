import { blocksOf } from '../math/blocks'
import { graphOf } from '../math/graph'
import type { Prepared } from './prepare'

/**
 * Devices whose currents balance together and independently of all others: a block of the graph whose vertices
 * are nets and whose edges are devices. Two nets make a pair; more make a ring (series batteries with taps).
 */
export interface NetSystem {
  readonly nets: Int32Array
  readonly devices: Int32Array
}

export interface NetSystems {
  readonly systems: readonly NetSystem[]
  /** Devices with both terminals in one net: they need no balance. */
  readonly inOneNet: Int32Array
}

/**
 * Devices that can carry no current stand in neither list: those bounded by 0 both ways, and those that are the
 * only way between the nets on their two sides. O(nets + devices).
 */
export function netSystems(p: Prepared): NetSystems {
  const able: number[] = []
  const inOneNet: number[] = []
  for (let d = 0; d < p.min.length; d++) {
    if (p.min[d] === 0 && p.max[d] === 0) continue
    if (p.net[p.positive[d]!] === p.net[p.negative[d]!]) inOneNet.push(d)
    else able.push(d)
  }
  const tail = Int32Array.from(able, (d) => p.net[p.negative[d]!]!)
  const head = Int32Array.from(able, (d) => p.net[p.positive[d]!]!)
  const b = blocksOf(graphOf(p.netCount, tail, head))
  const systems = Array.from({ length: b.count }, (_, i) => {
    const edges = b.edge.subarray(b.start[i]!, b.start[i + 1]!)
    const nets = new Set<number>()
    for (const e of edges) nets.add(tail[e]!).add(head[e]!)
    return { nets: Int32Array.from(nets), devices: edges.map((e) => able[e]!) }
  })
  return { systems, inOneNet: Int32Array.from(inOneNet) }
}
