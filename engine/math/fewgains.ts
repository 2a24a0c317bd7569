import { netPairs } from './balance'
import { NO_GAIN } from './unlimited'

/** The greatest value of a figure, and the flows that are not 0. */
export interface FewFlows {
  readonly value: number
  readonly flows: ReadonlyMap<number, number>
}

/** Gains further apart than this may not be told from 0 by the plain method: it is asked then. */
const SPREAD = 1e9
/** With a fee on unlimited arcs, gains above this would swallow it as a tie. */
const MOST_WITH_FEE = 5

interface Pair {
  /** Arcs that can rise above 0 (fall below it) as far as a limit, and without one, in order. */
  readonly rising: number[]
  readonly falling: number[]
  readonly endlessUp: number[]
  readonly endlessDown: number[]
}

/**
 * `greatestFlow` for a figure to which few arcs contribute, the same flows: those few go to their bounds, and arcs
 * of no gain beside them make up the balance in order. undefined where that short way does not tell: arcs of a ring,
 * unlimited arcs that gain, or too little beside them to balance; the plain method tells then. Arcs in `gains` ascend.
 * O(arcs that gain or move) an answer.
 */
export function fewGains(
  vertexCount: number,
  from: Int32Array,
  to: Int32Array,
  low: Float64Array,
  high: Float64Array,
): (gains: ReadonlyMap<number, number>) => FewFlows | undefined {
  const { loops, pairs } = netPairs(vertexCount, from, to)
  const LOOP = pairs.length
  const pairOf = new Int32Array(from.length).fill(-1)
  for (const i of loops) pairOf[i] = LOOP
  const ahead = from.map((u, i) => (u < to[i]! ? 1 : -1))
  const least = low.map((l, i) => (ahead[i] === 1 ? l : -high[i]!))
  const most = high.map((h, i) => (ahead[i] === 1 ? h : -low[i]!))
  const isEndless = (i: number): boolean => !Number.isFinite(low[i]!) || !Number.isFinite(high[i]!)
  const sorted = pairs.map((arcs, k): Pair => {
    const pair: Pair = { rising: [], falling: [], endlessUp: [], endlessDown: [] }
    for (const i of arcs) {
      pairOf[i] = k
      if (most[i] === Number.POSITIVE_INFINITY) pair.endlessUp.push(i)
      else if (most[i]! > 0) pair.rising.push(i)
      if (least[i] === Number.NEGATIVE_INFINITY) pair.endlessDown.push(i)
      else if (least[i]! < 0) pair.falling.push(i)
    }
    // The plain method lists unlimited upper sides before unlimited lower ones.
    const upperFirst = (i: number): number => (ahead[i] === 1 ? 0 : 1)
    pair.endlessUp.sort((a, b) => upperFirst(a) - upperFirst(b) || a - b)
    pair.endlessDown.sort((a, b) => upperFirst(b) - upperFirst(a) || a - b)
    return pair
  })

  return (gains) => {
    const flows = new Map<number, number>()
    /** What is to be made up in each pair, and its largest gain. */
    const left = new Map<number, number>()
    let [smallest, largest] = [Number.POSITIVE_INFINITY, 0]
    for (const [i, gain] of gains) {
      if (gain === 0) continue
      const k = pairOf[i]!
      if (k === -1 || isEndless(i)) return undefined
      smallest = Math.min(smallest, Math.abs(gain))
      largest = Math.max(largest, Math.abs(gain))
      const x = gain > 0 ? high[i]! : low[i]!
      if (x !== 0) flows.set(i, x)
      if (k !== LOOP) left.set(k, (left.get(k) ?? 0) - x * ahead[i]!)
    }
    if (largest > SPREAD * smallest) return undefined
    for (const [k, rest] of left) if (!madeUp(sorted[k]!, rest)) return undefined
    let value = 0
    for (const [i, gain] of gains) value += gain * (flows.get(i) ?? 0)
    return { value, flows }

    function madeUp(pair: Pair, amount: number): boolean {
      const up = amount > 0
      let rest = amount
      for (const i of up ? pair.rising : pair.falling) {
        if (rest === 0) break
        if (gains.get(i)) continue
        const x = up ? Math.min(rest, most[i]!) : Math.max(rest, least[i]!)
        flows.set(i, x * ahead[i]!)
        rest -= x
      }
      if (rest === 0) return true
      const [endless] = up ? pair.endlessUp : pair.endlessDown
      if (endless === undefined || largest > MOST_WITH_FEE || smallest <= 2 * NO_GAIN) return false
      flows.set(endless, (flows.get(endless) ?? 0) + rest * ahead[endless]!)
      return true
    }
  }
}
