import type { Choosing } from './choice'

export interface Bounded {
  /** Cheapest option of each choice that can be part of an answer; cheaper ones cannot. */
  readonly lowest: Int32Array
  /** Limits that the cheapest options together exceed; the others hold whatever is chosen. */
  readonly active: readonly number[]
}

/** Rounding of a sum. */
export const ROUNDING = 1e-12

/**
 * Takes out the options that cannot be: with the least use of all others a limit would be exceeded..
 * `impossible`: limits exceeded with the least use of every choice. O(sizes of the limits).
 */
export function bounded({ choices, limits }: Choosing): Bounded | { readonly impossible: readonly number[] } {
  const leastUse = choices.map((c) => c.use[c.use.length - 1]!)
  const spare = limits.map((limit) => {
    let rest = limit.most * (1 + ROUNDING)
    limit.choices.forEach((c, i) => {
      rest -= limit.factors[i]! * leastUse[c]!
    })
    return rest
  })
  const impossible = spare.flatMap((rest, l) => (rest < -ROUNDING * limits[l]!.most ? [l] : []))
  if (impossible.length > 0) return { impossible }
  const lowest = new Int32Array(choices.length)
  limits.forEach((limit, l) => {
    limit.choices.forEach((c, i) => {
      const { use } = choices[c]!
      const most = Math.max(0, spare[l]!) + ROUNDING * limit.most
      while (limit.factors[i]! * (use[lowest[c]!]! - leastUse[c]!) > most) lowest[c]!++
    })
  })
  const active = limits.flatMap((limit, l) => {
    let sum = 0
    limit.choices.forEach((c, i) => {
      sum += limit.factors[i]! * choices[c]!.use[lowest[c]!]!
    })
    return sum > limit.most * (1 + ROUNDING) ? [l] : []
  })
  return { lowest, active }
}
