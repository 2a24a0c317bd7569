import { type FuseFacts, fuseFacts } from '../calc/fusefacts'
import type { PartId } from '../model/design'
import { highestAt } from './highestat'
import { type Case, found, type Rule } from './rule'

/**
 * U2: the breaking capacity of a fuse or breaker is stated at less voltage than there may be: what it interrupts at that
 * voltage is less, by nobody knows how much. A device that U1 tells of already is left to it.
 */
export const breakingVoltage: Rule = {
  id: 'U2',
  looksFor: 'breaking capacities that are stated at less than the highest voltage there',
  check: (c) => {
    const told = new Map<PartId, FuseFacts>()
    for (const of of fuseFacts(c.design, c.border).values())
      if (of.ratingA !== null && of.breakingA !== null && of.breakingV !== null) told.set(of.part, of)
    return [...told.values()].flatMap((of) => {
      const volts = highestAt(c).get(of.part) ?? 0
      if (holdsAt(of, volts) || (of.voltageV !== null && volts > of.voltageV * (1 + 1e-9))) return []
      return [
        found(
          'U2',
          'warning',
          'rating',
          { parts: [of.part] },
          { part: of.part, kA: of.breakingA! / 1000 },
          { actual: { value: volts, unit: 'V' }, limit: { value: of.breakingV!, unit: 'V' } },
        ),
      ]
    })
  },
}

const holdsAt = ({ breakingV }: FuseFacts, volts: number): boolean =>
  breakingV !== null && volts <= breakingV * (1 + 1e-9)

/** May what is stated of a device be counted upon where it stands? False as well where its voltage is not stated. */
export const capacityHolds = (c: Case, of: FuseFacts): boolean => holdsAt(of, highestAt(c).get(of.part) ?? 0)
