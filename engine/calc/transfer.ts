import { analyse, factorise, solve } from '../math/sparse'
import type { Prepared } from './prepare'

/**
 * Potentials in the nets from currents put in at their nodes: one factor of the whole network, each net held at
 * its first node. Only differences inside a net mean anything.
 */
export interface Transfer {
  /** V by node for 1 A put in at `into` and taken out at `outOf`, which lie in one net. One solve. */
  between(into: number, outOf: number): Float64Array
  /** V by node for given currents into the nodes, A; what is over in a net is taken out at its held node. One solve. */
  from(amps: Float64Array): Float64Array
}

/** `ohms`: resistance of each branch where it is not the form's own (conductors at another temperature). */
export function transfer(p: Prepared, ohms: Float64Array = p.resistance): Transfer {
  const n = p.graph.vertexCount
  const held = new Uint8Array(n)
  const seen = new Uint8Array(p.netCount)
  for (let v = 0; v < n; v++) {
    if (seen[p.net[v]!]) continue
    seen[p.net[v]!] = 1
    held[v] = 1
  }
  const factor = factorise(
    analyse(n, p.graph.tail, p.graph.head, held),
    ohms.map((r) => 1 / r),
  )
  return {
    between(into, outOf) {
      const push = new Float64Array(n)
      push[into]! += 1
      push[outOf]! -= 1
      return solve(factor, push)
    },
    from: (amps) => solve(factor, amps),
  }
}

/** Currents into the nodes, A, from device currents. */
export function nodeCurrents(p: Prepared, device: Float64Array): Float64Array {
  const amps = new Float64Array(p.graph.vertexCount)
  device.forEach((x, d) => {
    amps[p.positive[d]!]! += x
    amps[p.negative[d]!]! -= x
  })
  return amps
}

/**
 * Coefficient of each device's current in the potential figure `potential` of one net: what 1 A delivered by the
 * device adds to it. By reciprocity this is the potential at its positive node less that at its negative one.
 */
export function deviceCoefficients(p: Prepared, net: number, potential: Float64Array): Float64Array {
  const at = (v: number): number => (p.net[v] === net ? potential[v]! : 0)
  return Float64Array.from(p.positive, (v, d) => at(v) - at(p.negative[d]!))
}
