import type { Clearing, EndFault } from '../calc/faultanswers'
import { fuseFacts } from '../calc/fusefacts'
import type { Conductor } from '../model/design'
import { clearsBy, type FuseBand } from '../tables/fuseband'
import { sizeByKey } from '../tables/sizes'
import { withstandK } from '../tables/withstand'
import { type Case, found, type Rule } from './rule'

/** The adiabatic law holds up to this time, s; what lasts longer is for K3. */
const LONGEST_S = 5

interface Heat {
  readonly guard: Clearing
  readonly amps: number
  readonly seconds: number
  readonly a2s: number
}

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
      const size = w.size === null ? undefined : sizeByKey(w.size)
      if (!faults || !size || toldAlready(c, w)) return []
      const k = withstandK(w.insulationC ?? c.ruleSet.insulationC)
      const bears = (k * size.sectionMm2) ** 2
      const [worst] = [faults.from, faults.to]
        .flatMap((end) => heats(end, bandOf))
        .sort((a, b) => b.a2s - a.a2s)
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

/** Heat of the least and of the greatest short circuit at an end, for every guard that clears within the law. */
function heats(end: EndFault, bandOf: (g: Clearing) => FuseBand | null): Heat[] {
  if (!('value' in end.least) || end.least.value === 0) return []
  const least = end.least.value
  const greatest =
    'value' in end.greatest && typeof end.greatest.value === 'number' ? end.greatest.value : least
  return end.clearing.flatMap((guard) => {
    const band = bandOf(guard)
    if (!band) return []
    return [1, Math.max(1, greatest / least)].flatMap((times) => {
      const seconds = clearsBy(band, guard.amps * times)
      if (seconds === null || seconds > LONGEST_S) return []
      const amps = guard.runAmps * times
      return [{ guard, amps, seconds, a2s: amps ** 2 * seconds }]
    })
  })
}
