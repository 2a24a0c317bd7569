import { analyse, factorise, solve } from '../math/sparse'
import type { Amps, Volts } from '../units'
import { type Behaviour, behaviour, type NoOperation, type Operations } from './operation'
import type { Prepared } from './prepare'
import { stretchAmps, stretchSlope } from './stretches'

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

/** Share of the push before a step that may push back after it. */
const OVERSHOOT = 0.5

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

/** Current into each device's positive node, and what is left over at each node. `unloaded`: no power is drawn. */
function balance(
  p: Prepared,
  b: Behaviour,
  voltage: Float64Array,
  unloaded: boolean,
): { amps: Float64Array; left: Float64Array } {
  const across = (d: number): number => voltage[p.positive[d]!]! - voltage[p.negative[d]!]!
  const own = (d: number): number => {
    if (b.is[d] === 'amps') return b.value[d]!
    if (b.is[d] === 'stretches') return stretchAmps(b.stretches.get(d)!, across(d), unloaded)
    if (b.is[d] === 'ohms') return -across(d) / b.value[d]!
    if (b.is[d] === 'battery') return (b.emf[d]! - across(d)) / b.value[d]!
    return unloaded ? 0 : b.value[d]! / across(d)
  }
  const amps = new Float64Array(b.is.length)
  const left = new Float64Array(voltage.length)
  for (let d = 0; d < amps.length; d++) {
    const output = b.follows[d]!
    amps[d] =
      output === -1 ? own(d) : unloaded ? 0 : (-own(output) * across(output)) / b.value[d]! / across(d)
    left[p.positive[d]!]! += amps[d]!
    left[p.negative[d]!]! -= amps[d]!
  }
  for (let e = 0; e < p.graph.edgeCount; e++) {
    const u = p.graph.tail[e]!
    const v = p.graph.head[e]!
    const i = (voltage[u]! - voltage[v]!) / p.resistance[e]!
    left[u]! -= i
    left[v]! += i
  }
  return { amps, left }
}

/** Halvings of a step: the rest of it is then a part in a million. */
const HALVINGS = 20

/**
 * How much of a step to take where devices bend sharply: all, or as far as what is left over still pushes the way it
 * goes. Without it steps can go to and fro over a bend for ever.
 */
function shareOf(p: Prepared, b: Behaviour, voltage: Float64Array, move: Float64Array): number {
  const pushes = (share: number): number => {
    const { left } = balance(
      p,
      b,
      Float64Array.from(voltage, (x, v) => x + share * move[v]!),
      false,
    )
    return left.reduce((sum, x, v) => sum + x * move[v]!, 0)
  }
  const first = pushes(0)
  if (!(pushes(1) < -OVERSHOOT * first)) return 1
  let [low, high] = [0, 1]
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2
    if (pushes(middle) > 0) low = middle
    else high = middle
  }
  return high
}

/** −d(current)/d(voltage across) of one device. */
function slopeOf(b: Behaviour, d: number, across: (d: number) => number, unloaded: boolean): number {
  if (b.is[d] === 'battery' || b.is[d] === 'ohms') return 1 / b.value[d]!
  if (b.is[d] === 'stretches') return stretchSlope(b.stretches.get(d)!, across(d), unloaded)
  if (unloaded) return 0
  const output = b.follows[d]!
  if (output === -1) return b.value[d]! / across(d) ** 2
  return -ownWatts(b, output, across(output)) / b.value[d]! / across(d) ** 2
}

/** What an output delivers at the voltage across it. */
function ownWatts(b: Behaviour, d: number, volts: number): number {
  if (b.is[d] === 'watts') return b.value[d]!
  if (b.is[d] === 'stretches') return volts * stretchAmps(b.stretches.get(d)!, volts, false)
  return volts * (b.is[d] === 'amps' ? b.value[d]! : (b.emf[d]! - volts) / b.value[d]!)
}

/** Devices across groups whose stated currents leave a group out of balance. */
function crossing(p: Prepared, b: Behaviour): string[] {
  const sum = new Float64Array(b.groups.count)
  const size = new Float64Array(b.groups.count)
  const devices: number[] = []
  b.is.forEach((is, d) => {
    const up = b.groups.of[p.positive[d]!]!
    const down = b.groups.of[p.negative[d]!]!
    if (is !== 'amps' || up === down) return
    devices.push(d)
    sum[up]! += b.value[d]!
    sum[down]! -= b.value[d]!
    size[up]! += Math.abs(b.value[d]!)
    size[down]! += Math.abs(b.value[d]!)
  })
  const off = (group: number): boolean => Math.abs(sum[group]!) > 1e-9 * size[group]!
  return devices
    .filter((d) => off(b.groups.of[p.positive[d]!]!) || off(b.groups.of[p.negative[d]!]!))
    .map((d) => p.form.devices[d]!.id)
}
