import { type FaultCase, faultSystem, helping, type NoFault, response } from './faultsystem'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** Prospective short-circuit current of each node, A. Infinity: a source without emf states no limit. */
export interface NodeFaults {
  /**
   * From the node to the reference of its group, the negative terminal of its battery system. In a part that no
   * battery feeds (an array and its controller): everything that sources can push into the part, an upper
   * bound. NaN on the nodes of the return itself.
   */
  readonly amps: Float64Array
}

/**
 * A bolted short circuit at each node in turn: the batteries' current by Thévenin's theorem, and every other
 * source at its own limit wherever it adds to it. One factorisation for all nodes, one solve a source.
 */
export function nodeFaults(p: Prepared, c: FaultCase): NodeFaults | NoFault {
  const s = faultSystem(p, c)
  if ('reason' in s) return s
  const { groups, open, drive } = s
  const n = p.graph.vertexCount
  const amps = new Float64Array(n)
  const pushed = new Float64Array(groups.count)
  for (let v = 0; v < n; v++)
    if (groups.hasBattery[groups.of[v]!]) amps[v] = Math.max(0, open[v]! / drive[v]!)
  for (const source of s.sources) {
    const into = p.positive[source.device]!
    const outOf = p.negative[source.device]!
    const group = groups.of[into]!
    if (group !== groups.of[outOf]) {
      pushed[group]! += source.amps
      continue
    }
    if (!groups.hasBattery[group]) continue
    const rise = response(s, into, outOf)
    for (let v = 0; v < n; v++)
      if (groups.of[v] === group && drive[v]! > 0) amps[v]! += helping(source.amps, rise[v]! / drive[v]!)
  }
  const isReturn = new Uint8Array(p.netCount)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    isReturn[p.net[groups.reference[groups.of[p.negative[d]!]!]!]!] = 1
  })
  for (let v = 0; v < n; v++) {
    const group = groups.of[v]!
    if (!groups.hasBattery[group]) amps[v] = pushed[group]!
    else if (isReturn[p.net[v]!]) amps[v] = Number.NaN
  }
  return { amps }
}
