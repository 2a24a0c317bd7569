import type { Choosing } from './choice'

/** Choices that weigh on the same limits in the same proportions, as one choice with more options. */
export interface ChoiceGroup {
  readonly choices: readonly number[]
  readonly limits: readonly number[]
  readonly factors: readonly number[]
  readonly options: readonly GroupOption[]
}

export interface GroupOption {
  readonly cost: number
  readonly use: number
  /** Option of each choice of the group. */
  readonly picks: readonly number[]
}

/** Where a choice counts among the limits that matter. */
export interface Weight {
  readonly limits: number[]
  readonly factors: number[]
}

export function weightsOf({ choices, limits }: Choosing, active: readonly number[]): Weight[] {
  const weights: Weight[] = choices.map(() => ({ limits: [], factors: [] }))
  for (const l of active) {
    const limit = limits[l]!
    limit.choices.forEach((c, i) => {
      weights[c]!.limits.push(l)
      weights[c]!.factors.push(limit.factors[i]!)
    })
  }
  return weights
}

/** Does it weigh the same on all its limits? */
export const isEven = ({ factors }: Weight): boolean =>
  factors.every((f) => Math.abs(f - factors[0]!) <= 1e-9 * factors[0]!)

/** Of all combinations of options only those are kept that no other beats in both cost and use. */
export function grouped(
  problem: Choosing,
  lowest: Int32Array,
  weights: readonly Weight[],
  choices: readonly number[],
): ChoiceGroup[] {
  const byShape = new Map<string, number[]>()
  for (const c of choices) {
    const { limits, factors } = weights[c]!
    const shape = limits.map((l, i) => `${l}:${(factors[i]! / factors[0]!).toPrecision(9)}`).join(' ')
    byShape.set(shape, [...(byShape.get(shape) ?? []), c])
  }
  return [...byShape.values()].map((group) => {
    const { limits, factors } = weights[group[0]!]!
    let options: readonly GroupOption[] = [{ cost: 0, use: 0, picks: [] }]
    for (const c of group) {
      const scale = weights[c]!.factors[0]! / factors[0]!
      const { cost, use } = problem.choices[c]!
      const all = options.flatMap((o) =>
        cost.flatMap((more, k) =>
          k < lowest[c]!
            ? []
            : [{ cost: o.cost + more, use: o.use + scale * use[k]!, picks: [...o.picks, k] }],
        ),
      )
      options = unbeaten(all)
    }
    return { choices: group, limits, factors, options }
  })
}

/** Cheapest first. */
function unbeaten(options: readonly GroupOption[]): GroupOption[] {
  const sorted = [...options].sort((a, b) => a.cost - b.cost || a.use - b.use)
  let least = Number.POSITIVE_INFINITY
  return sorted.filter((o) => {
    if (o.use >= least) return false
    least = o.use
    return true
  })
}
