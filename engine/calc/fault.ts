import type { Amps } from '../units'
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

/** What one bolted short circuit drives, batteries alone feeding it. */
export interface FaultFlow {
  readonly amps: Amps
  /** A through each branch, positive from → to: what a protective device has to clear on. */
  readonly branchAmps: Float64Array
}

/**
 * Currents of a bolted short circuit from a node to the reference of its group: with `LEAST`, what each device on
 * the way has to clear the far end of its conductor with. Sources that limit themselves are left out. One
 * factorisation, then one solve a node. All 0 where no battery feeds the node.
 */
export function faultFlows(p: Prepared, c: FaultCase): ((node: number) => FaultFlow) | NoFault {
  const s = faultSystem(p, c)
  if ('reason' in s) return s
  return (node) => {
    const amps =
      s.drive[node]! > 0 && s.groups.hasBattery[s.groups.of[node]!] ? s.open[node]! / s.drive[node]! : 0
    const rise = response(s, node, s.groups.reference[s.groups.of[node]!]!)
    const branchAmps = s.ohms.map((ohms, e) => {
      const tail = p.graph.tail[e]!
      const head = p.graph.head[e]!
      return (s.open[tail]! - amps * rise[tail]! - s.open[head]! + amps * rise[head]!) / ohms
    })
    return { amps: Math.abs(amps), branchAmps }
  }
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
  const forward = new Float64Array(n)
  const backward = new Float64Array(n)
  const pushed = new Float64Array(groups.count)
  for (let v = 0; v < n; v++) {
    if (!groups.hasBattery[groups.of[v]!] || drive[v] === 0) continue
    forward[v] = open[v]! / drive[v]!
    backward[v] = -forward[v]!
  }
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
    for (let v = 0; v < n; v++) {
      if (groups.of[v] !== group || drive[v] === 0) continue
      forward[v]! += helping(source.amps, rise[v]! / drive[v]!)
      backward[v]! += helping(source.amps, -rise[v]! / drive[v]!)
    }
  }
  const amps = forward.map((x, v) => Math.max(x, backward[v]!))
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
