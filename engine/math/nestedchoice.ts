import type { Nesting } from './nesting'
import { limitStep, type Options, type Staircase, stepAt, thinned, together, withChoice } from './staircase'

/** Steps of one staircase kept; beyond them it is thinned, and how far that may be off is counted. */
const ENOUGH_STEPS = 4000
const ROUNDING = 1e-12

export interface NestedAnswer {
  readonly cost: number
  /** The least cost is no more than this below it. */
  readonly off: number
  /** Writes the option of each nested choice. */
  pickInto(pick: Int32Array): void
}

/**
 * The cheapest options of nested choices: each set of limits passes on what its own choices and all around it use up. From the innermost
 * sets outwards the least cost is kept as a step function of what is used up outside. null: some limit cannot be kept.
 * `options`: by choice, use as it counts on every limit of its set. `left`: what each limit has left for them.
 */
export function nestedChoice(
  nesting: Nesting,
  options: (choice: number) => Options,
  left: (limit: number) => number,
): NestedAnswer | null {
  const { inside, choices, members } = nesting
  const outside = usedOutside(nesting, options)
  const within: Staircase[][] = inside.map(() => [])
  const stairs: Staircase[][] = inside.map(() => [])
  let off = 0
  let cost = 0
  for (let s = inside.length - 1; s >= 0; s--) {
    const most = members[s]!.reduce((least, m) => Math.min(least, left(m)), Number.POSITIVE_INFINITY)
    if (most < 0) return null
    const parts = most === Number.POSITIVE_INFINITY ? within[s]! : [limitStep(most), ...within[s]!]
    let now = together(parts)
    let { least: low, most: high } = outside[s]!
    for (const c of choices[s]!) {
      low += options(c).use.at(-1)!
      high += options(c).use[0]!
    }
    stairs[s]!.push(now)
    for (const c of choices[s]!) {
      low -= options(c).use.at(-1)!
      high -= options(c).use[0]!
      const thin = thinned(withChoice(now, options(c), low * (1 - 1e-9) - ROUNDING, high), ENOUGH_STEPS)
      off += thin.off
      now = thin.steps
      stairs[s]!.push(now)
    }
    if (now.cost.length === 0) return null
    if (inside[s] !== -1) within[inside[s]!]!.push(now)
    else if (stepAt(now, -ROUNDING) === -1) return null
    else cost += now.cost[stepAt(now, -ROUNDING)]!
  }
  return {
    cost,
    off,
    pickInto(pick) {
      const used = new Float64Array(inside.length)
      inside.forEach((around, s) => {
        let sum = around === -1 ? 0 : used[around]!
        for (let i = choices[s]!.length - 1; i >= 0; i--) {
          const c = choices[s]![i]!
          const stair = stairs[s]![i + 1]!
          pick[c] = stair.pick[stepAt(stair, sum * (1 - ROUNDING) - ROUNDING)]!
          sum += options(c).use[pick[c]!]!
        }
        used[s] = sum
      })
    },
  }
}

/** Least and most that the choices of the sets around each set use up. */
function usedOutside(
  { inside, choices }: Nesting,
  options: (choice: number) => Options,
): { least: number; most: number }[] {
  const outside: { least: number; most: number }[] = []
  inside.forEach((around, s) => {
    if (around === -1) {
      outside[s] = { least: 0, most: 0 }
      return
    }
    let { least, most } = outside[around]!
    for (const c of choices[around]!) {
      least += options(c).use.at(-1)!
      most += options(c).use[0]!
    }
    outside[s] = { least, most }
  })
  return outside
}
