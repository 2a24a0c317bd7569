import type { Clearing } from '../calc/faultanswers'
import { worstHeat } from '../calc/faultheat'
import { fuseFacts } from '../calc/fusefacts'
import type { Conductor } from '../model/design'
import { sizeIn, statedInsulationC } from '../model/sizes'
import type { FuseBand } from '../tables/fuseband'
import { withstandK } from '../tables/withstand'
import { type Case, found, type Rule } from './rule'

/**
 * K2: a short circuit at the far end of a conductor heats it beyond what its insulation bears before its device has
 * cleared: I²t > k²S², with the slow edge of the device's band, at the least and at the greatest fault current there.
 */
export const faultHeat: Rule = {
  id: 'K2',
  looksFor: 'conductors that a short circuit overheats before their device clears (I²t above k²S²)',
  check: (c) => {
    const facts = fuseFacts(c.design, c.border)
    const bandOf = (g: Clearing): FuseBand | null => facts.get(`${g.part}/${g.key}`)?.band ?? null
    return [...c.border.conductors.values()].flatMap((w) => {
      const faults = c.answers.faults.runs.get(w.id)
      const size = sizeIn(c.design, w.size)
      if (!faults || !size || toldAlready(c, w)) return []
      const k = withstandK(statedInsulationC(c.design, w) ?? c.ruleSet.insulationC)
      const bears = (k * size.sectionMm2) ** 2
      const worst = worstHeat(faults, bandOf)
      if (!worst || worst.a2s <= bears * (1 + 1e-9)) return []
      return [
        found(
          'K2',
          'danger',
          'iec-60364-4-43',
          { conductors: [w.id], parts: [worst.guard.part] },
          {
            conductor: w.id,
            guard: worst.guard.part,
            amps: worst.amps,
            seconds: worst.seconds,
            bearsS: bears / worst.amps ** 2,
          },
        ),
      ]
    })
  },
}

/** P1, P2: the same cause, told by a rule of its own. */
function toldAlready(c: Case, { id }: Conductor): boolean {
  const verdict = c.answers.runs.get(id)?.verdict
  return (
    verdict !== undefined && 'value' in verdict && ['unprotected', 'device-too-big'].includes(verdict.value)
  )
}
