import type { Options } from './choice'
import type { Nesting } from './nesting'
import { limitStep, type Staircase, shifted, stepAt, thinned, together, withChoice } from './staircase'

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

/** One set with all that lies in it, for what is used up around it. */
interface SolvedSet {
  /** After each of its choices, from what lies in it outwards, with `shift` used up beforehand. */
  readonly stairs: readonly Staircase[]
  readonly shift: number
  /** Of the whole set. */
  readonly whole: Staircase
  readonly off: number
}

/**
 * The cheapest options of nested choices: each set of limits passes on what its own choices and all around it use up.
 * From the innermost sets outwards the least cost is kept as a step function of what is used up outside. Prepared for many
 * solves that differ in what the limits have left: sets of which no limit is `varying` are solved once, and those of one limit
 * are shifted by what it has left. null: some limit cannot be kept. `options`: by choice, use as it counts on every limit of its set.
 * `most`: what a limit has left at most.
 */
export function nestedChoices(
  nesting: Nesting,
  options: readonly Options[],
  varying: ReadonlySet<number>,
  most: (limit: number) => number,
): (left: (limit: number) => number) => NestedAnswer | null {
  const { inside, choices, members } = nesting
  const outside = usedOutside(nesting, options)
  const varies = inside.map((_, s) => members[s]!.some((m) => varying.has(m)))
  for (let s = inside.length - 1; s >= 0; s--) if (varies[s] && inside[s] !== -1) varies[inside[s]!] = true
  const within: number[][] = inside.map(() => [])
  inside.forEach((around, s) => {
    if (around !== -1) within[around]!.push(s)
  })
  const alone = inside.map((_, s) => varies[s]! && members[s]!.length === 1 && within[s]!.length === 0)
  const kept: (SolvedSet | null | undefined)[] = inside.map(() => undefined)

  return (left) => {
    const solved: (SolvedSet | null)[] = []
    for (let s = inside.length - 1; s >= 0; s--) {
      if (alone[s]) solved[s] = shiftedSet(s, left(members[s]![0]!))
      else if (varies[s]) solved[s] = solveSet(s, solved, left)
      else {
        kept[s] ??= solveSet(s, solved, left)
        solved[s] = kept[s]!
      }
      if (solved[s] === null) return null
    }
    let [cost, off] = [0, 0]
    for (let s = 0; s < inside.length; s++) {
      off += solved[s]!.off
      if (inside[s] !== -1) continue
      const { whole } = solved[s]!
      const step = stepAt(whole, -ROUNDING)
      if (step === -1) return null
      cost += whole.cost[step]!
    }
    return { cost, off, pickInto: (pick) => pickInto(nesting, options, solved as SolvedSet[], pick) }
  }

  /** A set of one limit, solved once with all that the limit may have left. */
  function shiftedSet(s: number, left: number): SolvedSet | null {
    if (left < 0) return null
    kept[s] ??= solveSet(s, [], () => most(members[s]![0]!), Number.POSITIVE_INFINITY)
    const full = kept[s]
    if (!full) return null
    const shift = most(members[s]![0]!) - left
    const whole = shifted(full.whole, shift, outside[s]!.least * (1 - 1e-9) - ROUNDING)
    return whole.cost.length === 0 ? null : { ...full, shift, whole }
  }

  function solveSet(
    s: number,
    solved: readonly (SolvedSet | null)[],
    left: (limit: number) => number,
    farthest = outside[s]!.most,
  ): SolvedSet | null {
    const least = members[s]!.reduce((a, m) => Math.min(a, left(m)), Number.POSITIVE_INFINITY)
    if (least < 0) return null
    const inner = within[s]!.map((w) => solved[w]!.whole)
    let now = together(least === Number.POSITIVE_INFINITY ? inner : [limitStep(least), ...inner])
    const stairs = [now]
    let off = 0
    let low = outside[s]!.least
    let high = farthest
    for (const c of choices[s]!) {
      low += options[c]!.use.at(-1)!
      high += options[c]!.use[0]!
    }
    for (const c of choices[s]!) {
      low -= options[c]!.use.at(-1)!
      high -= options[c]!.use[0]!
      const thin = thinned(withChoice(now, options[c]!, low * (1 - 1e-9) - ROUNDING, high), ENOUGH_STEPS)
      off += thin.off
      now = thin.steps
      stairs.push(now)
    }
    return now.cost.length === 0 ? null : { stairs, shift: 0, whole: now, off }
  }
}

function pickInto(
  { inside, choices }: Nesting,
  options: readonly Options[],
  solved: readonly SolvedSet[],
  pick: Int32Array,
): void {
  const used = new Float64Array(inside.length)
  inside.forEach((around, s) => {
    let sum = (around === -1 ? 0 : used[around]!) + solved[s]!.shift
    for (let i = choices[s]!.length - 1; i >= 0; i--) {
      const c = choices[s]![i]!
      const stair = solved[s]!.stairs[i + 1]!
      pick[c] = stair.pick[stepAt(stair, sum * (1 - ROUNDING) - ROUNDING)]!
      sum += options[c]!.use[pick[c]!]!
    }
    used[s] = sum
  })
}

/** Least and most that the choices of the sets around each set use up. */
function usedOutside(
  { inside, choices }: Nesting,
  options: readonly Options[],
): { readonly least: number; readonly most: number }[] {
  const outside: { least: number; most: number }[] = []
  inside.forEach((around, s) => {
    if (around === -1) {
      outside[s] = { least: 0, most: 0 }
      return
    }
    let { least, most } = outside[around]!
    for (const c of choices[around]!) {
      least += options[c]!.use.at(-1)!
      most += options[c]!.use[0]!
    }
    outside[s] = { least, most }
  })
  return outside
}
