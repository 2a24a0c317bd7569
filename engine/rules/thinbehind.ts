import type { ConductorId } from '../model/design'
import type { Oversized } from './oversized'
import type { Case } from './rule'

/**
 * Returns that are too thin because of a device that is told to be too big for its feeds already: with that device at what
 * these bear, they are thick enough. O(conductors × devices that limit each).
 */
export function thinBehind(
  { answers, ruleSet }: Case,
  oversized: readonly Oversized[],
): Map<Oversized, ConductorId[]> {
  const byGuard = new Map(oversized.map((of) => [`${of.part}/${of.key}`, of]))
  const returns = new Map<Oversized, ConductorId[]>()
  for (const [id, { sustained, ampacity, verdict }] of answers.runs) {
    if (!('value' in verdict) || verdict.value !== 'thin-return') continue
    if (!sustained || !('value' in sustained) || !('value' in ampacity)) continue
    const { amps, guards } = sustained.value
    if (amps === 'unlimited') continue
    const limit = ampacity.value.amps * ruleSet.deviceShare.value
    const cause = guards
      .flatMap((g) => byGuard.get(`${g.part}/${g.key}`) ?? [])
      .find((of) => amps - of.amps + of.allowedA <= limit * (1 + 1e-9))
    if (cause) returns.set(cause, [...(returns.get(cause) ?? []), id])
  }
  return returns
}
