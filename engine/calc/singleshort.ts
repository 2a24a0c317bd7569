import type { Blocks } from '../math/blocks'
import { maxFlow } from '../math/maxflow'
import type { Amps } from '../units'
import { type ByNet, netGraph, together, withMissing } from './netgraph'
import type { Prepared } from './prepare'

/** The device whose short circuit puts the most through a conductor, and that current; Infinity when unlimited. */
export interface WorstShort {
  readonly amps: Amps
  /** −1 where no short puts anything through it. */
  readonly device: number
}

/**
 * Greatest lasting current through a conductor from a short across the terminals of one device, over all devices
 * and both senses. The current of a short goes round a loop: from the device's negative terminal to one end of
 * the conductor, and from its other end through sources to the device's positive terminal; the lesser of the two
 * flows counts, with the conductor taken out and every other device delivering at most its fault current. A
 * source whose negative terminal meets the conductor's block where the shorted device's does has no simple loop
 * through both, and is left out. `missing`: the rating that stands for one that is not given.
 * Cost: up to four flows a device over all that hangs together with the conductor's net.
 */
export function worstShort(
  p: Prepared,
  blocks: Blocks,
  content: ByNet,
  conductor: number,
  missing: number,
): WorstShort {
  const net = p.net[p.graph.tail[conductor]!]!
  const { nets, devices } = together(p, content, net, () => false)
  const loop = netGraph(
    p,
    content,
    nets,
    devices,
    (d) => p.fault[d]!,
    () => 0,
  )
  const edge = loop.branch.indexOf(conductor)
  const rated = withMissing(loop.forward, missing)
  const back = withMissing(loop.backward, missing)
  const joint = (node: number): number => jointOf(p, blocks, conductor, node)
  let worst: WorstShort = { amps: 0, device: -1 }
  for (const d of devices) {
    const forward = rated.slice()
    loop.device.forEach((s, k) => {
      if (s !== -1 && (s === d || !sharesLoop(s, d))) forward[k] = 0
    })
    const flow = (from: number, to: number): number =>
      from === to ? Number.POSITIVE_INFINITY : maxFlow(loop.graph, forward, back, from, to, edge).value
    for (const [near, far] of [
      [p.graph.tail[conductor]!, p.graph.head[conductor]!],
      [p.graph.head[conductor]!, p.graph.tail[conductor]!],
    ] as const) {
      const at = (node: number): number => loop.vertex.get(node)!
      const fed = flow(at(far), at(p.positive[d]!))
      if (!(fed > worst.amps)) continue
      const amps = Math.min(fed, flow(at(p.negative[d]!), at(near)))
      if (amps > worst.amps) worst = { amps, device: d }
    }
  }
  return worst

  function sharesLoop(source: number, shorted: number): boolean {
    const a = p.negative[source]!
    const b = p.negative[shorted]!
    return p.net[a] !== net || p.net[b] !== net || joint(a) !== joint(b)
  }
}

/** The vertex at which a node of the conductor's net meets the conductor's block; of a bridge, one of its ends. */
function jointOf(p: Prepared, blocks: Blocks, conductor: number, node: number): number {
  const block = blocks.of[conductor]!
  const { tail, head } = p.graph
  if (block < 0) {
    const child = blocks.bridge[tail[conductor]!] === conductor ? tail[conductor]! : head[conductor]!
    for (let v = node; v !== -1; v = blocks.top[v]!) if (v === child) return child
    return child === tail[conductor] ? head[conductor]! : tail[conductor]!
  }
  for (let v = node; v !== -1; v = blocks.top[v]!) if (blocks.above[v] === block) return v
  const end = tail[conductor]!
  return blocks.above[end] === block ? blocks.top[end]! : end
}
