import type { Behaviour } from './operation'
import type { Prepared } from './prepare'
import { stretchAmps, stretchSlope } from './stretches'

/** Current into each device's positive node, and what is left over at each node. `unloaded`: no power is drawn. */
export function balance(
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

/** Share of the push before a step that may push back after it. */
const OVERSHOOT = 0.5

/** Halvings of a step: the rest of it is then a part in a million. */
const HALVINGS = 20

/**
 * How much of a step to take where devices bend sharply: all, or as far as what is left over still pushes the way it
 * goes. Without it steps can go to and fro over a bend for ever.
 */
export function shareOf(p: Prepared, b: Behaviour, voltage: Float64Array, move: Float64Array): number {
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
export function slopeOf(b: Behaviour, d: number, across: (d: number) => number, unloaded: boolean): number {
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
export function crossing(p: Prepared, b: Behaviour): string[] {
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
