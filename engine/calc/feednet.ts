import { type Graph, graphOf } from '../math/graph'
import { netAndAbove, type SourceOrder } from './above'
import type { Prepared } from './prepare'

/**
 * The flow network in which the ends of one net's conductors are judged. Every net that a source touches and
 * that neither is the net nor stands above it counts as one inexhaustible supply; a device carries its fault
 * current from negative to positive and, backwards, what it can take in. Backwards counts because a short in a
 * net that holds negative terminals pulls current down through the devices above it.
 */
export interface FeedNet {
  /** Nodes by vertex. */
  readonly nodes: Int32Array
  readonly graph: Graph
  /** Branch of each edge; −1 for a device. */
  readonly branch: Int32Array
  /** Device of each edge; −1 for a branch. */
  readonly device: Int32Array
  /** Capacity of each edge both ways, A; NaN for a fuse without a rating. */
  readonly forward: Float64Array
  readonly backward: Float64Array
  /** Supply per vertex, A, and the ways it comes: into the vertex through a device. */
  readonly supply: Float64Array
  readonly supplied: ReadonlyMap<number, readonly Supply[]>
}

export interface Supply {
  readonly device: number
  readonly amps: number
  /** True where the supply comes backwards, into the positive and out of the negative terminal. */
  readonly backwards: boolean
}

/** What stands in each net: prepared once for all nets. */
export interface ByNet {
  readonly nodes: readonly (readonly number[])[]
  readonly branches: readonly (readonly number[])[]
  /** Devices with a terminal in the net; twice where both are. */
  readonly devices: readonly (readonly number[])[]
}

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

/** What a device lets through backwards, A: everything when it is unlimited, else what it can take in. */
export function takesIn(p: Prepared, device: number): number {
  return p.fault[device] === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : Math.abs(p.min[device]!)
}

/** Cost: the size of what hangs together with the net without passing a supplying net. */
export function feedNet(p: Prepared, order: SourceOrder, content: ByNet, net: number): FeedNet {
  const inside = netAndAbove(order, net)
  const supplies = (other: number): boolean => order.touched[other] === 1 && !inside.has(other)

  const nets = [net]
  const met = new Set(nets)
  const devices: number[] = []
  for (const low of nets)
    for (const d of content.devices[low]!) {
      devices.push(d)
      for (const node of [p.positive[d]!, p.negative[d]!]) {
        const other = p.net[node]!
        if (met.has(other) || supplies(other)) continue
        met.add(other)
        nets.push(other)
      }
    }

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
      const capacity =
        p.isFuse[e] === 0 ? Number.POSITIVE_INFINITY : p.rating[e]! >= 0 ? p.rating[e]! : Number.NaN
      tail.push(vertex.get(p.graph.tail[e]!)!)
      head.push(vertex.get(p.graph.head[e]!)!)
      forward.push(capacity)
      backward.push(capacity)
      branch.push(e)
      device.push(-1)
    }
  const supply = new Float64Array(nodes.length)
  const supplied = new Map<number, Supply[]>()
  const supplyInto = (node: number, entry: Supply): void => {
    if (!(entry.amps > 0)) return
    const v = vertex.get(node)!
    supply[v]! += entry.amps
    const list = supplied.get(v)
    if (list) list.push(entry)
    else supplied.set(v, [entry])
  }
  for (const d of new Set(devices)) {
    const up = p.fault[d]!
    const down = takesIn(p, d)
    if (supplies(p.net[p.negative[d]!]!))
      supplyInto(p.positive[d]!, { device: d, amps: up, backwards: false })
    else if (supplies(p.net[p.positive[d]!]!))
      supplyInto(p.negative[d]!, { device: d, amps: down, backwards: true })
    else if (up > 0 || down > 0) {
      tail.push(vertex.get(p.negative[d]!)!)
      head.push(vertex.get(p.positive[d]!)!)
      forward.push(up)
      backward.push(down)
      branch.push(-1)
      device.push(d)
    }
  }
  return {
    nodes,
    graph: graphOf(nodes.length, Int32Array.from(tail), Int32Array.from(head)),
    branch: Int32Array.from(branch),
    device: Int32Array.from(device),
    forward: Float64Array.from(forward),
    backward: Float64Array.from(backward),
    supply,
    supplied,
  }
}
