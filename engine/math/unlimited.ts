import { balance, type Extreme, NoConvergence } from './balance'

/**
 * Gain for each unit along a way without limit below which there is none: a milliamp of a million amps. Balanced
 * resistances, whose shares cancel but for rounding (1e-13 or so), lie far below it.
 */
export const NO_GAIN = 1e-9

/** Greatest value of a linear figure over balanced flows, and flows that give it. */
export interface Greatest {
  /** Infinity where there is no end. */
  readonly value: number
  /** All 0 where there is no end. */
  readonly x: Float64Array
  /** Where there is no end: flows that may be added for ever, none above 1, together gaining. Else none. */
  readonly ray: Float64Array | undefined
}

/**
 * As `balance`, for arcs of which some have no limit. First the unlimited arcs alone, one unit at most on each: if
 * those gain, there is no end. If not, some greatest value is reached without any of them carrying more than all
 * limited arcs together; with that for a limit, and a fee of NO_GAIN on each unit so that a gain too small to count
 * is not chased to the limit, the rest is plain. Nothing is multiplied by infinity. The fee is not in the value.
 * undefined where the program of a ring of vertices ends without a verdict.
 */
export function greatestFlow(
  vertexCount: number,
  from: Int32Array,
  to: Int32Array,
  low: Float64Array,
  high: Float64Array,
): (objective: Float64Array) => Greatest | undefined {
  const n = from.length
  const up = indices(high)
  const down = indices(low)
  if (up.length + down.length === 0) {
    const plain = decided(balance(vertexCount, from, to, low, high))
    return (objective) => {
      const found = plain(objective)
      return found && { value: found.value, x: found.x, ray: undefined }
    }
  }
  const unit = (bound: number): number => (Number.isFinite(bound) ? 0 : Math.sign(bound))
  const alone = decided(balance(vertexCount, from, to, low.map(unit), high.map(unit)))

  // Behind the arcs as given, limited sides only, stand the unlimited sides as arcs of their own.
  const limited = (bound: number): number => (Number.isFinite(bound) ? bound : 0)
  let all = 0
  for (let i = 0; i < n; i++) all += limited(high[i]!) - limited(low[i]!)
  const own = [...up, ...down]
  const together = decided(
    balance(
      vertexCount,
      Int32Array.from([...from, ...own.map((i) => from[i]!)]),
      Int32Array.from([...to, ...own.map((i) => to[i]!)]),
      Float64Array.from([...low.map(limited), ...own.map((_, k) => (k < up.length ? 0 : -all))]),
      Float64Array.from([...high.map(limited), ...own.map((_, k) => (k < up.length ? all : 0))]),
    ),
  )
  const priced = new Float64Array(n + own.length)
  return (objective) => {
    const gain = alone(objective)
    if (!gain) return undefined
    if (gain.value > NO_GAIN) return { value: Number.POSITIVE_INFINITY, x: new Float64Array(n), ray: gain.x }
    priced.set(objective)
    own.forEach((i, k) => {
      priced[n + k] = objective[i]! + (k < up.length ? -NO_GAIN : NO_GAIN)
    })
    const flows = together(priced)?.x
    if (!flows) return undefined
    const x = flows.slice(0, n)
    own.forEach((i, k) => {
      x[i]! += flows[n + k]!
    })
    let value = 0
    for (let i = 0; i < n; i++) value += objective[i]! * x[i]!
    return { value, x, ray: undefined }
  }
}

function indices(bounds: Float64Array): number[] {
  const list: number[] = []
  bounds.forEach((bound, i) => {
    if (!Number.isFinite(bound)) list.push(i)
  })
  return list
}

function decided(
  search: (objective: Float64Array) => Extreme,
): (objective: Float64Array) => Extreme | undefined {
  return (objective) => {
    try {
      return search(objective)
    } catch (trouble) {
      if (trouble instanceof NoConvergence) return undefined
      throw trouble
    }
  }
}
