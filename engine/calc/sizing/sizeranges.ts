import type { Conductor, Design } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import { type SizeSeries, sizeByKey } from '../../tables/sizes'

/** Series that are sold side by side as one range of sizes. */
const RANGES: readonly (readonly SizeSeries[])[] = [['metric'], ['awg'], ['auto', 'bs-au']]

/**
 * The range of sizes that a conductor is chosen from: the one that it has now, else the one most used in the design; only
 * those that the rule set chooses from.
 */
export function sizeRanges(design: Design, ruleSet: RuleSet): (c: Conductor) => readonly SizeSeries[] {
  const ranges = RANGES.filter((range) => range.some((series) => ruleSet.series.includes(series)))
  const rangeOf = ({ size }: Conductor): readonly SizeSeries[] | undefined => {
    const series = size === null ? undefined : sizeByKey(size)?.series
    return series && ranges.find((range) => range.includes(series))
  }
  const used = new Map<readonly SizeSeries[], number>()
  for (const c of design.conductors) {
    const range = rangeOf(c)
    if (range) used.set(range, (used.get(range) ?? 0) + 1)
  }
  const first = ranges.find((range) => range.includes(ruleSet.series[0]!))!
  const usual = ranges.reduce((best, r) => ((used.get(r) ?? 0) > (used.get(best) ?? 0) ? r : best), first)
  return (c) => rangeOf(c) ?? usual
}
