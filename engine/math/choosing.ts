import type { Choosing, Options } from './choice'
import { bounded, ROUNDING } from './choicebounds'
import { type ChoiceGroup, grouped, isEven, weightsOf } from './choicegroups'
import { type NestedAnswer, nestedChoices } from './nestedchoice'
import { nest } from './nesting'

export type Chosen =
  /** `atLeast`: no answer costs less. It is `cost` but for rounding where nothing crosses and staircases stay short. */
  | { readonly pick: Int32Array; readonly cost: number; readonly atLeast: number }
  /** Limits that are exceeded with the least use of every choice. */
  | { readonly impossible: readonly number[] }

/** The search ends where the least cost is known within this part of itself. */
const CLOSE = 2e-3
const MOST_SEARCHED = 2000

/**
 * Choices that weigh the same on all their limits, and whose sets of limits nest, are solved exactly by dynamic programming over the
 * nest. The others (they weigh differently on different limits, or cross) are decided by branch and bound around
 * it: a range of options counts with its least cost and its least use, which bounds the cost from below; its least
 * use at full cost is an answer. Cost: one pass of the nest, O(steps · options), for each node of the search; one node
 * where nothing crosses.
 */
export function choose(problem: Choosing): Chosen {
  const start = bounded(problem)
  if ('impossible' in start) return start
  const { lowest, active } = start
  const weights = weightsOf(problem, active)
  const weighed = problem.choices.flatMap((_, c) => (weights[c]!.limits.length > 0 ? [c] : []))
  const nesting = nest(
    problem.limits.length,
    weighed.filter((c) => isEven(weights[c]!)),
    (c) => weights[c]!.limits,
  )
  const uneven = weighed.filter((c) => !isEven(weights[c]!))
  const apart = grouped(problem, lowest, weights, [...uneven, ...nesting.crossing])
  const scaled = problem.choices.map(({ cost, use }, c): Options => {
    const factor = weights[c]!.factors[0] ?? 0
    return { cost: cost.slice(lowest[c]!), use: use.slice(lowest[c]!).map((u) => factor * u) }
  })
  const pick = Int32Array.from(lowest)
  let always = 0
  problem.choices.forEach(({ cost }, c) => {
    if (weights[c]!.limits.length === 0) always += cost[lowest[c]!]!
  })

  const used = new Float64Array(problem.limits.length)
  const most = (l: number): number => problem.limits[l]!.most * (1 + ROUNDING)
  const nested = nestedChoices(nesting, scaled, new Set(apart.flatMap((g) => g.limits)), most)
  const solve = (ranges: readonly Range[]): NestedAnswer | null => {
    used.fill(0)
    apart.forEach((group, i) => {
      group.limits.forEach((l, k) => {
        used[l]! += group.factors[k]! * group.options[ranges[i]!.high]!.use
      })
    })
    return nested((l) => most(l) - used[l]!)
  }
  const found = search(apart, solve)
  apart.forEach((group, i) => {
    group.choices.forEach((c, k) => {
      pick[c] = group.options[found.high[i]!]!.picks[k]!
    })
  })
  const above = new Int32Array(problem.choices.length)
  found.answer.pickInto(above)
  for (const c of nesting.choices.flat()) pick[c] = lowest[c]! + above[c]!
  return { pick, cost: always + found.cost, atLeast: always + found.atLeast }
}

/** Options of one group, from the cheapest to the one that uses least, both included. */
interface Range {
  readonly low: number
  readonly high: number
}

interface Found {
  readonly cost: number
  readonly atLeast: number
  /** Option of each group. */
  readonly high: readonly number[]
  readonly answer: NestedAnswer
}

/** Best first over ranges of options of the groups. The whole ranges have an answer, as no limit is impossible. */
function search(
  groups: readonly ChoiceGroup[],
  solve: (ranges: readonly Range[]) => NestedAnswer | null,
): Found {
  let best: Found | null = null
  const open: { ranges: readonly Range[]; atLeast: number }[] = []
  const costAt = (ranges: readonly Range[], end: 'low' | 'high'): number =>
    ranges.reduce((sum, range, i) => sum + groups[i]!.options[range[end]]!.cost, 0)
  const look = (ranges: readonly Range[]): void => {
    const answer = solve(ranges)
    if (!answer) return
    const cost = costAt(ranges, 'high') + answer.cost
    const atLeast = costAt(ranges, 'low') + answer.cost - answer.off
    if (!best || cost < best.cost) best = { cost, atLeast, high: ranges.map((r) => r.high), answer }
    if (ranges.some((r) => r.high > r.low)) open.push({ ranges, atLeast })
    else closedAtLeast = Math.min(closedAtLeast, atLeast)
  }
  let closedAtLeast = Number.POSITIVE_INFINITY
  look(groups.map((g) => ({ low: 0, high: g.options.length - 1 })))
  const first = best as Found | null
  if (!first) throw new RangeError('the least uses do not keep the limits')
  let now: Found = first
  for (let searched = 0; searched < MOST_SEARCHED && open.length > 0; searched++) {
    open.sort((a, b) => b.atLeast - a.atLeast)
    const next = open.at(-1)!
    if (next.atLeast >= now.cost * (1 - CLOSE)) break
    open.pop()
    const at = widest(next.ranges, groups)
    const { low, high } = next.ranges[at]!
    const middle = (low + high) >> 1
    for (const part of [
      { low: middle + 1, high },
      { low, high: middle },
    ])
      look(next.ranges.with(at, part))
    now = best as unknown as Found
  }
  const atLeast = Math.min(closedAtLeast, now.cost, ...open.map((o) => o.atLeast))
  return { ...now, atLeast }
}

/** The group whose range leaves the cost most open. */
function widest(ranges: readonly Range[], groups: readonly ChoiceGroup[]): number {
  let at = 0
  let most = -1
  ranges.forEach(({ low, high }, i) => {
    const { options } = groups[i]!
    const open = options[high]!.cost - options[low]!.cost
    if (open > most) {
      most = open
      at = i
    }
  })
  return at
}
