import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** Least and greatest sum of a figure over the devices that may balance another; none where nothing can. */
export type Range = { readonly from: number; readonly to: number }

interface Step {
  readonly net: number
  readonly least: number
  readonly most: number
}

/** Ways tried between two nets before the range is taken from those found so far. */
const MOST_WAYS = 20_000

/**
 * How a current that device `d` takes from its positive net and returns to its negative net can be made up, and the
 * range of Σ figure over the devices that make it up (counted once forwards, negative when a device works backwards).
 * Batteries first: those delivering upwards from the negative net to the positive one; then batteries with some of
 * them charging; then any other device that is able to. A device with both terminals in one net needs nobody.
 */
export function chains(p: Prepared, figure: Float64Array): (device: number) => Range | undefined {
  const delivering = steps(p, figure, (d) => (isBattery(p, d) ? 'forwards' : 'none'))
  const exchanging = steps(p, figure, (d) => (isBattery(p, d) ? 'both' : 'none'))
  const known = new Map<number, Range | undefined>()
  const whileDrawing = new Map<number, Range | undefined>()
  const whileDelivering = new Map<number, Range | undefined>()
  return (d) => {
    const from = p.net[p.negative[d]!]!
    const to = p.net[p.positive[d]!]!
    if (from === to) return { from: 0, to: 0 }
    const key = from * p.netCount + to
    if (!known.has(key)) known.set(key, range(delivering, from, to) ?? range(exchanging, from, to))
    const byBatteries = known.get(key)
    if (byBatteries) return byBatteries
    // A load or a source is no way up for itself; only a two-way device has to be left out by name.
    const draws = p.min[d]! < 0
    if (draws && p.max[d]! > 0) return range(others(p, figure, true, d), from, to)
    const byOthers = draws ? whileDrawing : whileDelivering
    if (!byOthers.has(key)) byOthers.set(key, range(others(p, figure, draws, -1), from, to))
    return byOthers.get(key)
  }
}

type Direction = 'none' | 'forwards' | 'backwards' | 'both'

/** Everybody but one device, each the way its bounds let it go while that device draws (or delivers). */
function others(p: Prepared, figure: Float64Array, draws: boolean, without: number): Map<number, Step[]> {
  return steps(p, figure, (d) => {
    if (d === without) return 'none'
    const up = draws ? p.max[d]! > 0 : p.min[d]! < 0
    const down = draws ? p.min[d]! < 0 : p.max[d]! > 0
    return up ? (down ? 'both' : 'forwards') : down ? 'backwards' : 'none'
  })
}

/** Steps from net to net, one for each pair and way, with the range of the figure over parallel devices. */
function steps(p: Prepared, figure: Float64Array, way: (device: number) => Direction): Map<number, Step[]> {
  const best = new Map<number, Map<number, Step>>()
  const add = (from: number, net: number, value: number): void => {
    const row = best.get(from) ?? new Map<number, Step>()
    const old = row.get(net)
    row.set(net, {
      net,
      least: old ? Math.min(old.least, value) : value,
      most: old ? Math.max(old.most, value) : value,
    })
    best.set(from, row)
  }
  for (let d = 0; d < p.positive.length; d++) {
    const low = p.net[p.negative[d]!]!
    const high = p.net[p.positive[d]!]!
    const direction = low === high ? 'none' : way(d)
    if (direction === 'forwards' || direction === 'both') add(low, high, figure[d]!)
    if (direction === 'backwards' || direction === 'both') add(high, low, -figure[d]!)
  }
  return new Map([...best].map(([net, row]) => [net, [...row.values()]]))
}

/** Range over all ways from one net to another that pass no net twice. */
function range(graph: ReadonlyMap<number, readonly Step[]>, from: number, to: number): Range | undefined {
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  const onWay = new Set([from])
  const way = [{ net: from, next: 0, least: 0, most: 0 }]
  for (let tried = 0; way.length > 0 && tried < MOST_WAYS; tried++) {
    const here = way[way.length - 1]!
    const step = graph.get(here.net)?.[here.next++]
    if (!step) {
      onWay.delete(here.net)
      way.pop()
    } else if (step.net === to) {
      least = Math.min(least, here.least + step.least)
      most = Math.max(most, here.most + step.most)
    } else if (!onWay.has(step.net)) {
      onWay.add(step.net)
      way.push({ net: step.net, next: 0, least: here.least + step.least, most: here.most + step.most })
    }
  }
  return least <= most ? { from: least, to: most } : undefined
}
