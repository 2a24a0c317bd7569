import type { Options } from './choice'

/**
 * Least cost by how much of a limit is used up already: a step function of `used`, rising. Step i holds up to
 * `upTo[i]` and costs `cost[i]`; both rise; beyond the last step there is no way. `pick[i]` is the option that the
 * last choice takes on that step.
 */
export interface Staircase {
  readonly upTo: Float64Array
  readonly cost: Float64Array
  readonly pick: Uint8Array
}

/** Costs nothing up to a limit. */
export const limitStep = (most: number): Staircase => ({
  upTo: Float64Array.of(most),
  cost: Float64Array.of(0),
  pick: new Uint8Array(1),
})

/** The step that holds at `used`; −1 where there is none. O(log steps). */
export function stepAt({ upTo }: Staircase, used: number): number {
  let low = 0
  let high = upTo.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (upTo[middle]! >= used) high = middle
    else low = middle + 1
  }
  return low < upTo.length ? low : -1
}

/** The cost of several that share what is used: their sum. O(steps · log steps). */
export function together(parts: readonly Staircase[]): Staircase {
  if (parts.length === 1) return parts[0]!
  const last = Math.min(...parts.map((s) => s.upTo.at(-1) ?? Number.NEGATIVE_INFINITY))
  const ends: number[] = [last]
  for (const { upTo } of parts) for (const v of upTo) if (v < last) ends.push(v)
  const upTo = [...new Set(Float64Array.from(ends).sort())]
  const cost = new Float64Array(upTo.length)
  for (const s of parts) {
    let i = 0
    upTo.forEach((v, k) => {
      while (s.upTo[i]! < v) i++
      cost[k]! += s.cost[i]!
    })
  }
  return { upTo: Float64Array.from(upTo), cost, pick: new Uint8Array(upTo.length) }
}

/**
 * One more choice that uses some of the same limit: for each amount used before it, the cheapest of its options with
 * what then follows. Only steps between `least` and `most` used are kept. O(steps · options).
 */
export function withChoice(after: Staircase, options: Options, least: number, most: number): Staircase {
  const { use, cost } = options
  const k = use.length
  const at = new Int32Array(k).fill(after.upTo.length - 1)
  const end = new Float64Array(k)
  const total = new Float64Array(k)
  for (let o = 0; o < k; o++) {
    end[o] = (after.upTo[at[o]!] ?? Number.NEGATIVE_INFINITY) - use[o]!
    total[o] = (after.cost[at[o]!] ?? 0) + cost[o]!
  }
  room(after.upTo.length * k)
  let n = 0
  let cheapest = Number.POSITIVE_INFINITY
  for (;;) {
    let far = 0
    for (let o = 1; o < k; o++)
      if (end[o]! > end[far]! || (end[o] === end[far] && total[o]! < total[far]!)) far = o
    const upTo = end[far]!
    if (upTo < least || upTo === Number.NEGATIVE_INFINITY) break
    if (total[far]! < cheapest) {
      cheapest = total[far]!
      // A step that holds farther than is ever needed gives way to a cheaper one that does too.
      if (n > 0 && (upTo >= most || found.upTo[n - 1] === upTo)) n--
      found.upTo[n] = upTo
      found.cost[n] = cheapest
      found.pick[n++] = far
    }
    const next = --at[far]!
    end[far] = next < 0 ? Number.NEGATIVE_INFINITY : after.upTo[next]! - use[far]!
    total[far] = next < 0 ? Number.POSITIVE_INFINITY : after.cost[next]! + cost[far]!
  }
  return {
    upTo: found.upTo.slice(0, n).reverse(),
    cost: found.cost.slice(0, n).reverse(),
    pick: found.pick.slice(0, n).reverse(),
  }
}

/** Steps as they are found, from the one that holds farthest to the cheapest; room that is used again and again. */
let found = { upTo: new Float64Array(256), cost: new Float64Array(256), pick: new Uint8Array(256) }

function room(steps: number): void {
  const n = found.upTo.length
  if (steps > n) {
    const more = Math.max(steps, 2 * n)
    found = { upTo: new Float64Array(more), cost: new Float64Array(more), pick: new Uint8Array(more) }
  }
}

/** The same where `more` is used up beforehand; only steps beyond `least`. */
export function shifted(s: Staircase, more: number, least: number): Staircase {
  let first = 0
  while (first < s.upTo.length && s.upTo[first]! - more < least) first++
  return {
    upTo: s.upTo.subarray(first).map((v) => v - more),
    cost: s.cost.subarray(first),
    pick: s.pick.subarray(first),
  }
}

/**
 * The same with fewer steps: of steps within `off` of each other in cost the one that holds farthest is left, so that no cost is
 * more than `off` too high. Gives back the same where it has no more than `enough` steps.
 */
export function thinned(s: Staircase, enough: number): { readonly steps: Staircase; readonly off: number } {
  const n = s.cost.length
  if (n <= enough) return { steps: s, off: 0 }
  const off = (s.cost[n - 1]! - s.cost[0]!) / enough
  const kept: number[] = []
  for (let i = 0; i < n; ) {
    let j = i
    while (j + 1 < n && s.cost[j + 1]! <= s.cost[i]! + off) j++
    kept.push(j)
    i = j + 1
  }
  return {
    steps: {
      upTo: Float64Array.from(kept, (i) => s.upTo[i]!),
      cost: Float64Array.from(kept, (i) => s.cost[i]!),
      pick: Uint8Array.from(kept, (i) => s.pick[i]!),
    },
    off,
  }
}
