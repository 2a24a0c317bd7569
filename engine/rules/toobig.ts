import { oversized } from './oversized'
import { found, type Rule } from './rule'
import { thinBehind } from './thinbehind'

/**
 * P2: a device (or a source that limits itself) lets through more than the rule set allows for conductors behind it. One
 * finding for each device, with the returns that are too thin for the same reason.
 */
export const tooBig: Rule = {
  id: 'P2',
  looksFor: 'protective devices too big for the conductor behind them',
  check: (c) => {
    const returns = thinBehind(c, oversized(c))
    return oversized(c).map((of) => {
      const thin = returns.get(of) ?? []
      return found(
        'P2',
        'danger',
        c.ruleSet.deviceShare.source,
        { conductors: [...of.conductors, ...thin], parts: [of.part] },
        {
          conductor: of.conductors[0]!,
          behind: of.conductors.slice(1),
          returns: thin,
          guard: of.part,
          key: of.key,
          is: of.is,
          ampacity: of.ampacityA,
        },
        {
          about: of.key,
          actual: { value: of.amps, unit: 'A' },
          limit: { value: of.allowedA, unit: 'A' },
        },
      )
    })
  },
}
