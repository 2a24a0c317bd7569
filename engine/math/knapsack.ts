/** Gains closer than this to each other, relative to the largest, count as equal. */
const TIE = 1e-10

/**
 * Maximise gain·x with low ≤ x ≤ high and Σx = 0, where low ≤ 0 ≤ high and either may be infinite: whoever gains
 * most goes to its upper bound, whoever gains least to its lower, and those at the price in between make up
 * the balance from 0. Writes x; returns the value, Infinity where there is no end (x is then left at 0).
 * `of` names the entries that take part; gains closer than `rounding` count as equal. Expected time linear in
 * their number.
 */
export function knapsack(
  of: Int32Array,
  gain: Float64Array,
  low: Float64Array,
  high: Float64Array,
  x: Float64Array,
  rounding = 0,
): number {
  let largest = 0
  let mostUp = Number.NEGATIVE_INFINITY
  let leastDown = Number.POSITIVE_INFINITY
  for (let k = 0; k < of.length; k++) {
    const i = of[k]!
    const g = gain[i]!
    x[i] = 0
    largest = Math.max(largest, Math.abs(g))
    if (high[i] === Number.POSITIVE_INFINITY && g > mostUp) mostUp = g
    if (low[i] === Number.NEGATIVE_INFINITY && g < leastDown) leastDown = g
  }
  const tie = Math.max(TIE * largest, rounding)
  if (mostUp > leastDown + tie) return Number.POSITIVE_INFINITY
  const price =
    mostUp >= leastDown ? (mostUp + leastDown) / 2 : priceBetween(of, gain, low, high, mostUp, leastDown)

  let left = 0
  for (let k = 0; k < of.length; k++) {
    const i = of[k]!
    const g = gain[i]!
    if (Math.abs(g - price) <= tie) continue
    x[i] = g > price ? high[i]! : low[i]!
    left -= x[i]!
  }
  let value = 0
  for (let k = 0; k < of.length; k++) {
    const i = of[k]!
    if (left !== 0 && Math.abs(gain[i]! - price) <= tie) {
      x[i] = left > 0 ? Math.min(left, high[i]!) : Math.max(left, low[i]!)
      left -= x[i]!
    }
    if (x[i] !== 0) value += gain[i]! * x[i]!
  }
  return value
}

/** Price at which the sum crosses 0, between the most that an unlimited rise and the least that an unlimited fall gains. */
function priceBetween(
  of: Int32Array,
  gain: Float64Array,
  low: Float64Array,
  high: Float64Array,
  mostUp: number,
  leastDown: number,
): number {
  const open: number[] = []
  let sum = 0
  for (let k = 0; k < of.length; k++) {
    const i = of[k]!
    const g = gain[i]!
    if (low[i] === Number.NEGATIVE_INFINITY || (g >= leastDown && high[i] !== Number.POSITIVE_INFINITY))
      sum += high[i]!
    else {
      sum += low[i]!
      if (g > mostUp && high[i]! > low[i]!) open.push(i)
    }
  }
  if (sum > 0 && leastDown < Number.POSITIVE_INFINITY) return leastDown
  let from = 0
  let to = open.length
  let lowest = leastDown
  while (from < to) {
    const pivot = gain[open[from + ((to - from) >> 1)]!]!
    let above = from
    let same = from
    for (let i = from; i < to; i++) {
      const k = open[i]!
      if (gain[k]! < pivot) continue
      open[i] = open[same]!
      open[same] = k
      if (gain[k]! > pivot) {
        open[same] = open[above]!
        open[above++] = k
      }
      same++
    }
    let risen = 0
    for (let i = from; i < above; i++) risen += high[open[i]!]! - low[open[i]!]!
    if (sum + risen >= 0 && above > from) {
      to = above
      continue
    }
    for (let i = above; i < same; i++) risen += high[open[i]!]! - low[open[i]!]!
    lowest = pivot
    if (sum + risen >= 0) return pivot
    sum += risen
    from = same
  }
  return mostUp > Number.NEGATIVE_INFINITY ? mostUp : lowest
}
