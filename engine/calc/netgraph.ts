import { type Graph, graphOf } from '../math/graph'
import type { Prepared } from './prepare'

/** Some nets and the devices between them as a flow network. */
export interface NetGraph {
  /** Nodes by vertex, and back. */
  readonly nodes: Int32Array
  readonly vertex: ReadonlyMap<number, number>
  readonly graph: Graph
  /** Branch of each edge; −1 for a device. A device runs from its negative to its positive node. */
  readonly branch: Int32Array
  /** Device of each edge; −1 for a branch. */
  readonly device: Int32Array
  /** Capacity of each edge both ways, A; NaN for a fuse without a rating. */
  readonly forward: Float64Array
  readonly backward: Float64Array
}

/** What stands in each net: prepared once for all nets. */
export interface ByNet {
  readonly nodes: readonly (readonly number[])[]
  readonly branches: readonly (readonly number[])[]
  /** Devices with a terminal in the net; twice where both are. */
  readonly devices: readonly (readonly number[])[]
}

/** O(nodes + branches + devices). */
export function byNet(p: Prepared): ByNet {
  const lists = (): number[][] => Array.from({ length: p.netCount }, () => [])
  const nodes = lists()
  const branches = lists()
  const devices = lists()
  for (let v = 0; v < p.net.length; v++) nodes[p.net[v]!]!.push(v)
  for (let e = 0; e < p.graph.edgeCount; e++) branches[p.net[p.graph.tail[e]!]!]!.push(e)
  for (let d = 0; d < p.positive.length; d++) {
    devices[p.net[p.positive[d]!]!]!.push(d)
    devices[p.net[p.negative[d]!]!]!.push(d)
  }
  return { nodes, branches, devices }
}

/** The nets that hang together with one through devices, without passing those that `closed` holds; and the devices met. */
export function together(
  p: Prepared,
  content: ByNet,
  net: number,
  closed: (net: number) => boolean,
): { nets: readonly number[]; devices: ReadonlySet<number> } {
  const nets = new Set([net])
  const devices = new Set<number>()
  for (const k of nets)
    for (const d of content.devices[k]!) {
      devices.add(d)
      for (const node of [p.positive[d]!, p.negative[d]!]) if (!closed(p.net[node]!)) nets.add(p.net[node]!)
    }
  return { nets: [...nets], devices }
}

/**
 * Branches of the nets and devices with both terminals in them; `up` and `down` give what a device lets through
 * from negative to positive and back. Devices that let nothing through are left out.
 */
export function netGraph(
  p: Prepared,
  content: ByNet,
  nets: readonly number[],
  devices: Iterable<number>,
  up: (device: number) => number,
  down: (device: number) => number,
): NetGraph {
  const nodes = Int32Array.from(nets.flatMap((k) => content.nodes[k]!))
  const vertex = new Map<number, number>()
  nodes.forEach((node, v) => {
    vertex.set(node, v)
  })
  const tail: number[] = []
  const head: number[] = []
  const forward: number[] = []
  const backward: number[] = []
  const branch: number[] = []
  const device: number[] = []
  for (const k of nets)
    for (const e of content.branches[k]!) {
      const capacity = capacityOf(p, e)
      tail.push(vertex.get(p.graph.tail[e]!)!)
      head.push(vertex.get(p.graph.head[e]!)!)
      forward.push(capacity)
      backward.push(capacity)
      branch.push(e)
      device.push(-1)
    }
  for (const d of devices) {
    const low = vertex.get(p.negative[d]!)
    const high = vertex.get(p.positive[d]!)
    if (low === undefined || high === undefined || !(up(d) > 0 || down(d) > 0)) continue
    tail.push(low)
    head.push(high)
    forward.push(up(d))
    backward.push(down(d))
    branch.push(-1)
    device.push(d)
  }
  return {
    nodes,
    vertex,
    graph: graphOf(nodes.length, Int32Array.from(tail), Int32Array.from(head)),
    branch: Int32Array.from(branch),
    device: Int32Array.from(device),
    forward: Float64Array.from(forward),
    backward: Float64Array.from(backward),
  }
}

/** What a branch lets through, A: a fuse its rating, anything else all there is; NaN for a fuse without a rating. */
export function capacityOf(p: Prepared, branch: number): number {
  if (p.isFuse[branch] === 0) return Number.POSITIVE_INFINITY
  return p.rating[branch]! >= 0 ? p.rating[branch]! : Number.NaN
}

/** Capacities with every missing rating taken as `rating`. */
export function withMissing(capacities: Float64Array, rating: number): Float64Array {
  return capacities.map((c) => (Number.isNaN(c) ? rating : c))
}

/** Is the flow the same with missing ratings at 0 and without limit, to a millionth? */
export function sameFlow(least: number, most: number): boolean {
  return least === most || (most < Number.POSITIVE_INFINITY && most - least <= 1e-6 * Math.max(1, most))
}
