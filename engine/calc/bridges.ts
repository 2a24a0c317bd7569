import type { Blocks } from '../math/blocks'
import { graphOf } from '../math/graph'
import { maxFlow } from '../math/maxflow'
import { addLeaving, type Bounds } from './bounds'
import type { Prepared } from './prepare'
import type { Sides, Span } from './sides'
import type { NetSystem } from './systems'

/** Two nets: through a bridge goes the lesser of what one side can supply and what the other can draw. */
export function pairBridges(p: Prepared, b: Blocks, sides: Sides, into: Bounds): void {
  const here: Span = { low: 0, high: 0 }
  const there: Span = { low: 0, high: 0 }
  sides.vertices.forEach((v, slot) => {
    const bridge = b.bridge[v]!
    if (bridge === -1 || !sides.hasBeyond(slot)) return
    sides.below(slot, 0, here)
    sides.beyond(slot, 0, there)
    addLeaving(p, into, bridge, v, Math.max(here.low, -there.high), Math.min(here.high, -there.low))
  })
}

/**
 * A ring of nets: the bridge parts its net in two, and what can go round from one part to the other through
 * devices and other nets comes back through the bridge. A maximum flow each way on one vertex a net and one more.
 */
export function ringBridges(
  p: Prepared,
  b: Blocks,
  system: NetSystem,
  net: number,
  sides: Sides,
  into: Bounds,
): void {
  const { others } = sides
  const width = others.length
  const apart = spansApart(p, system, net)
  const vertexOf = new Map(Array.from(others, (other, i) => [other, i + 2]))
  const g = graphOf(
    width + 2,
    Int32Array.from([...others, ...others, ...apart.from], (other) => vertexOf.get(other)!),
    Int32Array.from([
      ...Array.from(others, () => 0),
      ...Array.from(others, () => 1),
      ...apart.to.map((other) => vertexOf.get(other)!),
    ]),
  )
  const forward = new Float64Array(g.edgeCount)
  const backward = new Float64Array(g.edgeCount)
  const set = (e: number, span: Span): void => {
    forward[e] = span.high
    backward[e] = -span.low
  }
  apart.spans.forEach((span, i) => {
    set(2 * width + i, span)
  })
  const span: Span = { low: 0, high: 0 }
  sides.vertices.forEach((v, slot) => {
    const bridge = b.bridge[v]!
    if (bridge === -1 || !sides.hasBeyond(slot)) return
    for (let i = 0; i < width; i++) {
      set(i, sides.below(slot, i, span))
      set(width + i, sides.beyond(slot, i, span))
    }
    const greatest = maxFlow(g, forward, backward, 1, 0).value
    const least = -maxFlow(g, forward, backward, 0, 1).value
    addLeaving(p, into, bridge, v, least, greatest)
  })
}

/** What goes between the other nets of a system, summed by pair of nets. */
export function spansApart(
  p: Prepared,
  system: NetSystem,
  net: number,
): { from: number[]; to: number[]; spans: Span[] } {
  const sums = new Map<string, { from: number; to: number; span: Span }>()
  for (const d of system.devices) {
    const from = p.net[p.negative[d]!]!
    const to = p.net[p.positive[d]!]!
    if (from === net || to === net) continue
    const key = `${from} ${to}`
    const sum = sums.get(key) ?? { from, to, span: { low: 0, high: 0 } }
    sum.span.low += p.min[d]!
    sum.span.high += p.max[d]!
    sums.set(key, sum)
  }
  const list = [...sums.values()]
  return { from: list.map((s) => s.from), to: list.map((s) => s.to), spans: list.map((s) => s.span) }
}
