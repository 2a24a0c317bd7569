import { components } from '../math/components'
import { type Graph, graphOf } from '../math/graph'
import { toNumber } from '../units'
import type { NetworkForm } from './form'

/** The network form as index arrays: prepared once, solved many times. Device bounds use ±Infinity for 'unlimited'. */
export interface Prepared {
  readonly form: NetworkForm
  readonly graph: Graph
  /** Ω per branch. */
  readonly resistance: Float64Array
  /** 1 where the branch is a fuse (or breaker): the only branches that limit a flow. */
  readonly isFuse: Uint8Array
  /** A per branch; NaN where none is given. */
  readonly rating: Float64Array
  /** Net of each node. */
  readonly net: Int32Array
  readonly netCount: number
  readonly positive: Int32Array
  readonly negative: Int32Array
  readonly min: Float64Array
  readonly max: Float64Array
  readonly fault: Float64Array
  readonly nodeIndex: ReadonlyMap<string, number>
  readonly branchIndex: ReadonlyMap<string, number>
  readonly deviceIndex: ReadonlyMap<string, number>
}

/**
 * Checks the form's own rules and lays it out in arrays. O(nodes + branches + devices).
 * Throws a RangeError on misuse: a repeated id, an end that is no node, a resistance that is not above 0 and
 * finite, a bound that is NaN or on the wrong side of 0. Reading a foreign file goes through the form's reader,
 * which reports problems instead.
 */
export function prepare(form: NetworkForm): Prepared {
  const nodeIndex = indexOf(form.nodes, 'node')
  const branchIndex = indexOf(
    form.branches.map((b) => b.id),
    'branch',
  )
  const deviceIndex = indexOf(
    form.devices.map((d) => d.id),
    'device',
  )
  const at = (id: string, whose: string): number => {
    const i = nodeIndex.get(id)
    if (i === undefined) throw new RangeError(`${whose} ends at "${id}", which is no node`)
    return i
  }
  const m = form.branches.length
  const tail = new Int32Array(m)
  const head = new Int32Array(m)
  const resistance = new Float64Array(m)
  const isFuse = new Uint8Array(m)
  const rating = new Float64Array(m).fill(Number.NaN)
  form.branches.forEach((b, e) => {
    tail[e] = at(b.from, `branch "${b.id}"`)
    head[e] = at(b.to, `branch "${b.id}"`)
    if (!(b.resistance > 0 && b.resistance < Number.POSITIVE_INFINITY))
      throw new RangeError(`branch "${b.id}" has resistance ${b.resistance} Ω`)
    resistance[e] = b.resistance
    isFuse[e] = b.kind === 'fuse' ? 1 : 0
    if (b.rating !== undefined) rating[e] = b.rating
  })
  const k = form.devices.length
  const positive = new Int32Array(k)
  const negative = new Int32Array(k)
  const min = new Float64Array(k)
  const max = new Float64Array(k)
  const fault = new Float64Array(k)
  form.devices.forEach((d, i) => {
    positive[i] = at(d.positive, `device "${d.id}"`)
    negative[i] = at(d.negative, `device "${d.id}"`)
    min[i] = d.min === 'unlimited' ? Number.NEGATIVE_INFINITY : d.min
    max[i] = toNumber(d.max)
    fault[i] = toNumber(d.sustainedFault)
    if (!(min[i]! <= 0 && max[i]! >= 0 && fault[i]! >= 0))
      throw new RangeError(`device "${d.id}" needs min ≤ 0 ≤ max and a fault current of at least 0`)
  })
  const graph = graphOf(form.nodes.length, tail, head)
  const { of: net, count: netCount } = components(graph)
  return {
    form,
    graph,
    resistance,
    isFuse,
    rating,
    net,
    netCount,
    positive,
    negative,
    min,
    max,
    fault,
    nodeIndex,
    branchIndex,
    deviceIndex,
  }
}

function indexOf(ids: readonly string[], what: string): Map<string, number> {
  const map = new Map<string, number>()
  ids.forEach((id, i) => {
    if (map.has(id)) throw new RangeError(`${what} "${id}" stands twice`)
    map.set(id, i)
  })
  return map
}
