import { inverseDiagonal } from '../math/inverse'
import { type Response, responses } from '../math/response'
import { analyse, type Factor, factorise, solve } from '../math/sparse'
import { FAULT_BASE_V } from '../tables/restvoltage'
import { type Galvanic, galvanic, isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** What a fault calculation takes for the state of copper and batteries: factors on the form's figures. */
export interface FaultCase {
  /** On the resistance of conductors; the form gives it at 20 °C. */
  readonly conductorFactor: number
  /** On the resistance of fuses, contacts and shunts. */
  readonly contactFactor: number
  readonly emfFactor: number
  readonly internalFactor: number
  /** Do chargers, arrays and alternators feed the fault too? */
  readonly sources: boolean
}

/** Copper: 0.00393 a kelvin from 20 °C (published conductor tables; AWG 10 at 65 °C is printed as 3.855 Ω/km). */
export const copperFactor = (celsius: number): number => 1 + 0.00393 * (celsius - 20)

/**
 * For breaking capacity: cold copper (−10 °C), battery at its highest charge voltage, sources feeding.
 * 14.6 V and 10.0 V for a 12.8 V pack: published data sheets of lithium iron phosphate packs.
 */
export const GREATEST: FaultCase = {
  conductorFactor: copperFactor(-10),
  contactFactor: 1,
  emfFactor: 14.6 / FAULT_BASE_V,
  internalFactor: 1,
  sources: true,
}

/** For clearing: hot copper (70 °C), battery at its cut-off, twice its internal resistance (from memory), no sources. */
export const LEAST: FaultCase = {
  conductorFactor: copperFactor(70),
  contactFactor: 1,
  emfFactor: 10 / FAULT_BASE_V,
  internalFactor: 2,
  sources: false,
}

/** The network as it stands just before a fault: loads off, batteries as emf behind internal resistance. */
export interface FaultSystem {
  readonly p: Prepared
  readonly groups: Galvanic
  readonly held: Uint8Array
  readonly factor: Factor
  /** As `response`, for few nodes and branches of it: at a node, V; the edges are those of `p` and then the batteries. */
  between(into: number, outOf: number): Response
  /** Ω of each branch in this case. */
  readonly ohms: Float64Array
  /** V of each node before the fault, from its group's reference. */
  readonly open: Float64Array
  /** Ω between each node and its group's reference. */
  readonly drive: Float64Array
  /** Devices that are no battery and feed a fault, with what they feed, A (Infinity: unlimited). */
  readonly sources: readonly { readonly device: number; readonly amps: number }[]
}

export interface NoFault {
  readonly reason: 'internal-resistance-missing'
  readonly devices: readonly string[]
}

/** One ordering and one factorisation; everything after it is a solve each. */
export function faultSystem(p: Prepared, c: FaultCase): FaultSystem | NoFault {
  const batteries = p.form.devices.flatMap((_, d) => (isBattery(p, d) ? [d] : []))
  const missing = batteries.filter((d) => !(p.form.devices[d]!.internalResistance! > 0))
  if (missing.length > 0)
    return { reason: 'internal-resistance-missing', devices: missing.map((d) => p.form.devices[d]!.id) }
  const groups = galvanic(p, (d) => isBattery(p, d))
  const n = p.graph.vertexCount
  const m = p.graph.edgeCount
  const ohms = p.resistance.map(
    (r, e) => r * (p.form.branches[e]!.kind === 'conductor' ? c.conductorFactor : c.contactFactor),
  )
  const tail = Int32Array.from({ length: m + batteries.length }, (_, e) =>
    e < m ? p.graph.tail[e]! : p.positive[batteries[e - m]!]!,
  )
  const head = Int32Array.from({ length: m + batteries.length }, (_, e) =>
    e < m ? p.graph.head[e]! : p.negative[batteries[e - m]!]!,
  )
  const conductance = new Float64Array(m + batteries.length)
  const push = new Float64Array(n)
  for (let e = 0; e < m; e++) conductance[e] = 1 / ohms[e]!
  batteries.forEach((d, i) => {
    const device = p.form.devices[d]!
    const internal = device.internalResistance! * c.internalFactor
    const amps = (device.emf! * c.emfFactor) / internal
    conductance[m + i] = 1 / internal
    push[p.positive[d]!]! += amps
    push[p.negative[d]!]! -= amps
  })
  const held = new Uint8Array(n)
  for (const v of groups.reference) held[v] = 1
  const factor = factorise(analyse(n, tail, head, held), conductance)
  const sources = c.sources
    ? p.form.devices.flatMap((_, device) =>
        p.fault[device]! > 0 && !isBattery(p, device) ? [{ device, amps: p.fault[device]! }] : [],
      )
    : []
  let prepared: ReturnType<typeof responses> | undefined
  return {
    p,
    groups,
    held,
    factor,
    between(into, outOf) {
      prepared ??= responses(factor)
      return prepared(into, outOf)
    },
    ohms,
    open: solve(factor, push),
    drive: inverseDiagonal(factor),
    sources,
  }
}

/** Voltages by node for 1 A put in at one node and taken out at another; 0 outside their groups. One solve. */
export function response(s: FaultSystem, into: number, outOf: number): Float64Array {
  const push = new Float64Array(s.held.length)
  push[into]! += 1
  push[outOf]! -= 1
  return solve(s.factor, push)
}

/** amps × coefficient where the coefficient helps, without 0 × ∞; a coefficient below 1e-12 is rounding. */
export const helping = (amps: number, coefficient: number): number =>
  coefficient > 1e-12 ? amps * coefficient : 0
