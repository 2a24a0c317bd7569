import type { Blocks } from '../math/blocks'
import type { Amps } from '../units'
import type { Prepared } from './prepare'
import type { NetSystem } from './systems'

/** What some devices can put into a net together: least (≤ 0) and most (≥ 0), either may be infinite. */
export interface Span {
  low: Amps
  high: Amps
}

/**
 * What the devices of one system can put into one net, summed below each vertex of the net's forest of blocks, by
 * the net at the devices' other terminal. Only vertices with a device at or below them stand here.
 */
export interface Sides {
  /** Tops before what hangs on them; the first is the net's root, below which everything hangs. */
  readonly vertices: Int32Array
  /** The nets on the other side. */
  readonly others: Int32Array
  /** Sum at or below vertices[slot] of the devices that go to others[i]. Fills and returns `into`. */
  below(slot: number, i: number, into: Span): Span
  /** The same over all the rest of the net. */
  beyond(slot: number, i: number, into: Span): Span
  /** The same over all that is at or below none of several slots, no one of which is below another. */
  besides(slots: ArrayLike<number>, i: number, into: Span): Span
  /** Is anything beyond? */
  hasBeyond(slot: number): boolean
}

/**
 * Walks up from every device to the root: cost is the number of vertices passed, times other nets, and sorting them.
 * `scratch` has one entry a node, all −1 before and after.
 */
export function sidesOf(p: Prepared, b: Blocks, system: NetSystem, net: number, scratch: Int32Array): Sides {
  const others = system.nets.filter((other) => other !== net)
  const touched: number[] = []
  const terminals: number[] = []
  for (const d of system.devices) {
    const positive = p.positive[d]!
    const negative = p.negative[d]!
    if (p.net[positive] !== net && p.net[negative] !== net) continue
    terminals.push(d)
    let v = p.net[positive] === net ? positive : negative
    while (v !== -1 && scratch[v] === -1) {
      scratch[v] = 0
      touched.push(b.rank[v]!)
      v = b.top[v]!
    }
  }
  const vertices = Int32Array.from(touched)
    .sort()
    .map((rank) => b.order[rank]!)
  vertices.forEach((v, slot) => {
    scratch[v] = slot
  })

  const width = others.length
  const size = vertices.length * width
  const count = new Int32Array(size)
  const low = new Float64Array(size)
  const high = new Float64Array(size)
  const lowUnlimited = new Int32Array(size)
  const highUnlimited = new Int32Array(size)
  const classOf = new Map(Array.from(others, (other, i) => [other, i]))
  for (const d of terminals) {
    const inward = p.net[p.positive[d]!] === net
    const own = inward ? p.positive[d]! : p.negative[d]!
    const far = inward ? p.negative[d]! : p.positive[d]!
    const at = scratch[own]! * width + classOf.get(p.net[far]!)!
    const least = inward ? p.min[d]! : -p.max[d]!
    const most = inward ? p.max[d]! : -p.min[d]!
    count[at]!++
    if (least === Number.NEGATIVE_INFINITY) lowUnlimited[at]!++
    else low[at]! += least
    if (most === Number.POSITIVE_INFINITY) highUnlimited[at]!++
    else high[at]! += most
  }
  for (let slot = vertices.length - 1; slot > 0; slot--) {
    const up = scratch[b.top[vertices[slot]!]!]! * width
    for (let i = 0; i < width; i++) {
      const at = slot * width + i
      count[up + i]! += count[at]!
      low[up + i]! += low[at]!
      high[up + i]! += high[at]!
      lowUnlimited[up + i]! += lowUnlimited[at]!
      highUnlimited[up + i]! += highUnlimited[at]!
    }
  }
  for (const v of vertices) scratch[v] = -1
  const single = new Int32Array(1)

  return {
    vertices,
    others,
    below(slot, i, into) {
      const at = slot * width + i
      into.low = lowUnlimited[at]! > 0 ? Number.NEGATIVE_INFINITY : low[at]!
      into.high = highUnlimited[at]! > 0 ? Number.POSITIVE_INFINITY : high[at]!
      return into
    },
    beyond(slot, i, into) {
      single[0] = slot
      return besides(single, i, into)
    },
    besides,
    hasBeyond(slot) {
      for (let i = 0; i < width; i++) if (count[slot * width + i]! < count[i]!) return true
      return false
    },
  }
  function besides(slots: ArrayLike<number>, i: number, into: Span): Span {
    let left = count[i]!
    let least = low[i]!
    let most = high[i]!
    let leastUnlimited = lowUnlimited[i]!
    let mostUnlimited = highUnlimited[i]!
    for (let k = 0; k < slots.length; k++) {
      const at = slots[k]! * width + i
      left -= count[at]!
      least -= low[at]!
      most -= high[at]!
      leastUnlimited -= lowUnlimited[at]!
      mostUnlimited -= highUnlimited[at]!
    }
    into.low = leastUnlimited > 0 ? Number.NEGATIVE_INFINITY : left === 0 ? 0 : Math.min(0, least)
    into.high = mostUnlimited > 0 ? Number.POSITIVE_INFINITY : left === 0 ? 0 : Math.max(0, most)
    return into
  }
}
