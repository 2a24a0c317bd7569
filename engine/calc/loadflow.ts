import { analyse, factorise, solve } from '../math/sparse'
import type { Amps, Volts } from '../units'
import { balance, crossing, shareOf, slopeOf } from './nodebalance'
import { behaviour, type NoOperation, type Operations } from './operation'
import type { Prepared } from './prepare'

/** The operating point, by index. */
export interface LoadFlow {
  /** V of each node, counted from the reference of its group. */
  readonly voltage: Float64Array
  /** A, positive from `from` to `to`. */
  readonly branchAmps: Float64Array
  /** A delivered into the positive node. */
  readonly deviceAmps: Float64Array
  readonly group: Int32Array
  /** Reference node of each group. */
  readonly reference: Int32Array
  readonly steps: number
  /** A: largest current left over at a node. */
  readonly residual: Amps
}

/** Why there is none: see each word; `devices` are the ones to look at. */
export interface NoLoadFlow {
  readonly reason: NoOperation | 'currents-do-not-balance' | 'no-steady-state'
  readonly devices: readonly string[]
}

const MOST_STEPS = 60

/** V: a step shorter than this is taken whole. */
const NEAR: Volts = 1e-8

/**
 * Operating point by Newton's method on the node voltages, from the unloaded state downwards: the state that a
 * real system falls into. A converter's coupling is left out of the slope, never out of the balance. The answer
 * is certified: currents balance at every node, and the slope is positive definite (a state that small changes
 * do not tip over). Bounds of batteries are not imposed here. Throws a RangeError on an operation for no device.
 * Cost: one ordering, a few factorisations.
 */
export function loadFlow(p: Prepared, operations: Operations = new Map()): LoadFlow | NoLoadFlow {
  const b = behaviour(p, operations)
  if ('reason' in b) return b
  const unbalanced = crossing(p, b)
  if (unbalanced.length > 0) return { reason: 'currents-do-not-balance', devices: unbalanced }

  const n = p.graph.vertexCount
  const m = p.graph.edgeCount
  const bent: number[] = []
  b.is.forEach((is, d) => {
    if (is !== 'amps') bent.push(d)
  })
  const tail = new Int32Array(m + bent.length)
  const head = new Int32Array(m + bent.length)
  const slope = new Float64Array(m + bent.length)
  tail.set(p.graph.tail)
  head.set(p.graph.head)
  for (let e = 0; e < m; e++) slope[e] = 1 / p.resistance[e]!
  bent.forEach((d, i) => {
    tail[m + i] = p.positive[d]!
    head[m + i] = p.negative[d]!
  })
  const held = new Uint8Array(n)
  for (const v of b.groups.reference) held[v] = 1
  const pattern = analyse(n, tail, head, held)

  const voltage = new Float64Array(n)
  const across = (d: number): number => voltage[p.positive[d]!]! - voltage[p.negative[d]!]!
  let change = Number.POSITIVE_INFINITY
  for (let step = 0; step < MOST_STEPS; step++) {
    bent.forEach((d, i) => {
      slope[m + i] = slopeOf(b, d, across, step === 0)
    })
    const { amps, left } = balance(p, b, voltage, step === 0)
    let factor = factorise(pattern, slope)
    const settled = step > 1 && change < 1e-11
    if (settled && factor.pivot.every((x) => x > 0)) {
      const branchAmps = Float64Array.from(
        p.resistance,
        (r, e) => (voltage[tail[e]!]! - voltage[head[e]!]!) / r,
      )
      const residual = left.reduce((worst, x, v) => (held[v] ? worst : Math.max(worst, Math.abs(x))), 0)
      return {
        voltage,
        branchAmps,
        deviceAmps: amps,
        group: b.groups.of,
        reference: b.groups.reference,
        steps: step,
        residual,
      }
    }
    if (b.stretches.size > 0 && !factor.pivot.every((x) => x > 0)) {
      // Between two stretches a net may hang on powers alone; without their slope the step still goes the right way.
      for (let e = m; e < slope.length; e++) slope[e] = Math.max(0, slope[e]!)
      factor = factorise(pattern, slope)
    }
    if (factor.singularAt !== -1) break
    const move = solve(factor, left)
    const far = move.reduce((most, x) => Math.max(most, Math.abs(x)), 0)
    const share = step > 0 && b.stretches.size > 0 && far > NEAR ? shareOf(p, b, voltage, move) : 1
    let scale = 1
    for (let v = 0; v < n; v++) {
      voltage[v]! += share * move[v]!
      scale = Math.max(scale, Math.abs(voltage[v]!))
    }
    change = share < 1 ? Number.POSITIVE_INFINITY : far
    change /= scale
    const fallen = bent.filter((d) => (b.is[d] === 'watts' || b.is[d] === 'follows') && !(across(d) > 0))
    if (fallen.length > 0)
      return { reason: 'no-steady-state', devices: fallen.map((d) => p.form.devices[d]!.id) }
  }
  const powered = bent.filter((d) => b.is[d] === 'watts' || b.is[d] === 'follows')
  return { reason: 'no-steady-state', devices: powered.map((d) => p.form.devices[d]!.id) }
}
