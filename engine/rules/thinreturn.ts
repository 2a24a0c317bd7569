import type { Conductor } from '../model/design'
import { conductorById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { ampacityOf } from '../tables/ampacity'
import type { MaybeUnlimited } from '../units'
import type { Finding } from './finding'
import { oversized } from './oversized'
import { type Case, found, type Rule } from './rule'
import { thinBehind } from './thinbehind'

/**
 * P5: a return can be made to carry, for as long as no fuse blows, more than it may. Where feeds without protection are the
 * cause, or a device that is too big for its feeds as well, P1 or P2 tells of it and names the returns.
 */
export const thinReturn: Rule = {
  id: 'P5',
  looksFor: 'returns thinner than what the fuses on the positive side let through',
  check: (all) => {
    const { design, answers, ruleSet } = all
    const told = new Set([...thinBehind(all, oversized(all)).values()].flat())
    return design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run?.sustained || !('value' in run.sustained) || !('value' in run.ampacity)) return []
      const limit = run.ampacity.value.amps * ruleSet.deviceShare.value
      const { amps, guards, bare } = run.sustained.value
      if (bare.length > 0 || told.has(c.id)) return []
      if (amps !== 'unlimited' && amps <= limit * (1 + 1e-9)) return []
      const fix = asThickAsFeed(all, c, amps)
      return [
        found(
          'P5',
          'danger',
          'rule-set',
          { conductors: [c.id] },
          { conductor: c.id, ampacity: run.ampacity.value.amps, guards: guards.map((g) => g.part) },
          { actual: { value: amps, unit: 'A' }, limit: { value: limit, unit: 'A' }, ...(fix ? { fix } : {}) },
        ),
      ]
    })
  },
}

/** Certain where the return was drawn with a feed whose size bears the current, laid as the return is. */
function asThickAsFeed({ design, ruleSet }: Case, c: Conductor, amps: MaybeUnlimited): Finding['fix'] {
  const size = c.returnOf === null ? null : conductorById(design, c.returnOf)?.size
  if (!size || amps === 'unlimited') return undefined
  const ampacity = ampacityOf(ruleSet, { ...c, size }, design.settings.ambientC, (key) => sizeIn(design, key))
  if (!('value' in ampacity) || amps > ampacity.value.amps * ruleSet.deviceShare.value * (1 + 1e-9))
    return undefined
  return {
    title: `Make ${c.number} as thick as its feed, ${sizeIn(design, size)?.name ?? size}`,
    edit: { do: 'conductor', conductors: [c.id], set: { size } },
  }
}
