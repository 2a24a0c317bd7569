import { type Response, responses } from '../math/response'
import { analyse, factorise, solve } from '../math/sparse'
import type { Prepared } from './prepare'

/**
 * Potentials of the nodes, V, from currents put into them, A: one factor of the whole network, each net held at its
 * first node, where what is over is taken out. Only differences inside a net mean anything. One solve a call.
 * `ohms`: resistance of each branch where it is not the form's own (conductors at another temperature).
 */
export function potentials(
  p: Prepared,
  ohms: Float64Array = p.resistance,
): {
  of(amps: Float64Array): Float64Array
  /** The same for 1 A put in at one node and taken out at another, where few potentials are asked for. */
  between: (into: number, outOf: number) => Response
} {
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
  return { of: (amps) => solve(factor, amps), between: responses(factor) }
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
