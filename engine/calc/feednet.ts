import { netAndAbove, type SourceOrder } from './above'
import { type ByNet, type NetGraph, netGraph, together } from './netgraph'
import type { Prepared } from './prepare'

/**
 * The flow network in which the ends of one net's conductors are judged. Every net that a source touches and
 * that neither is the net nor stands above it counts as one inexhaustible supply; a device carries its fault
 * current from negative to positive and, backwards, what it can take in. Backwards counts because a short in a
 * net that holds negative terminals pulls current down through the devices above it.
 */
export interface FeedNet extends NetGraph {
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

/** What a device lets through backwards, A: everything when it is unlimited, else what it can take in. */
export function takesIn(p: Prepared, device: number): number {
  return p.fault[device] === Number.POSITIVE_INFINITY ? Number.POSITIVE_INFINITY : Math.abs(p.min[device]!)
}

/** Cost: the size of what hangs together with the net without passing a supplying net. */
export function feedNet(p: Prepared, order: SourceOrder, content: ByNet, net: number): FeedNet {
  const inside = netAndAbove(order, net)
  const supplies = (other: number): boolean => order.touched[other] === 1 && !inside.has(other)
  const { nets, devices } = together(p, content, net, supplies)
  const up = (d: number): number => p.fault[d]!
  const down = (d: number): number => takesIn(p, d)
  const feed = netGraph(p, content, nets, devices, up, down)

  const supply = new Float64Array(feed.nodes.length)
  const supplied = new Map<number, Supply[]>()
  const supplyInto = (node: number, entry: Supply): void => {
    if (!(entry.amps > 0)) return
    const v = feed.vertex.get(node)!
    supply[v]! += entry.amps
    const list = supplied.get(v)
    if (list) list.push(entry)
    else supplied.set(v, [entry])
  }
  for (const d of devices) {
    if (supplies(p.net[p.negative[d]!]!))
      supplyInto(p.positive[d]!, { device: d, amps: up(d), backwards: false })
    else if (supplies(p.net[p.positive[d]!]!))
      supplyInto(p.negative[d]!, { device: d, amps: down(d), backwards: true })
  }
  return { ...feed, supply, supplied }
}
