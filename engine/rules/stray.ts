import type { ShuntAnswer } from '../calc/answers'
import { found, type Rule } from './rule'
import { isDeaf, isPart, isRange, isZero } from './shares'

/** Part of the rating below which an error is lost in the reading. Common practice, no source. */
const NOTICED = 0.002

/**
 * M9: the reading can be off though each device of the system passes as it should: current of another system runs
 * through the shunt, as when two share a chassis.
 */
export const stray: Rule = {
  id: 'M9',
  looksFor: 'currents of other systems through a shunt',
  check: ({ answers }) =>
    [...answers.shunts.values()].flatMap((shunt) => {
      if (isDeaf(shunt) || shunt.reversed || toldElsewhere(shunt)) return []
      const rating = [...answers.branches.values()].find((b) => b.part === shunt.part)?.ratingA ?? 0
      const errors = [shunt.over, shunt.under].flatMap((e) => ('value' in e ? [e.value] : []))
      const worst =
        errors.find((e) => e.amps === 'unlimited') ??
        errors.sort((a, b) => Number(b.amps) - Number(a.amps))[0]
      if (!worst || (worst.amps !== 'unlimited' && worst.amps <= Math.max(1e-6, NOTICED * rating))) return []
      const causes = [...new Set(worst.causes.map((c) => c.part))]
      return [
        found(
          'M9',
          'warning',
          shunt.role === 'load' ? 'load-side-shunt' : 'battery-shunt',
          { parts: [shunt.part] },
          { shunt: shunt.part, causes },
          { actual: { value: worst.amps, unit: 'A' } },
        ),
      ]
    }),
}

/** M1 to M6 tell shares that are not what they should be. */
const toldElsewhere = (shunt: ShuntAnswer): boolean =>
  shunt.betweenBatteries >= 1e-6 ||
  shunt.shares.some((s) => isRange(s) || isPart(s) || (s.expected === 1 ? isZero(s) : !isZero(s)))
