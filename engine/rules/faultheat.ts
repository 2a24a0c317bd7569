import { faultsAlong } from '../calc/alongreturn'
import type { Clearing } from '../calc/faultanswers'
import { worstHeat } from '../calc/faultheat'
import { fuseFacts } from '../calc/fusefacts'
import type { Conductor, ConductorId } from '../model/design'
import { sizeIn, statedInsulationC } from '../model/sizes'
import type { FuseBand } from '../tables/fuseband'
import { withstandK } from '../tables/withstand'
import { type Case, found, type Rule } from './rule'

/**
 * K2: a short circuit at the far end of a conductor heats it beyond what its insulation bears before its device has
 * cleared: I²t > k²S², with the slow edge of the device's band, at the least and at the greatest fault current there; of a
 * return, the short circuits of the feed that it was drawn with, which come back through it. One
 * finding for each device, the conductor that is worst off first.
 */
export const faultHeat: Rule = {
  id: 'K2',
  looksFor: 'conductors that a short circuit overheats before their device clears (I²t above k²S²)',
  check: (c) => {
    const byGuard = new Map<string, Hot[]>()
    const faultsOf = faultsAlong(c.design, c.answers.faults.runs)
    for (const w of c.border.conductors.values()) {
      const hot = hotIn(c, w, faultsOf(w))
      if (!hot) continue
      const at = `${hot.worst.guard.part}/${hot.worst.guard.key}`
      byGuard.set(at, [...(byGuard.get(at) ?? []), hot])
    }
    return [...byGuard.values()].map((all) => {
      const sorted = [...all].sort((a, b) => excess(b) - excess(a))
      const { id, worst, bears } = sorted[0]!
      return found(
        'K2',
        'danger',
        'iec-60364-4-43',
        { conductors: sorted.map((hot) => hot.id), parts: [worst.guard.part] },
        {
          conductor: id,
          behind: sorted.slice(1).map((hot) => hot.id),
          guard: worst.guard.part,
          amps: worst.amps,
          seconds: worst.seconds,
          bearsS: bears / worst.amps ** 2,
        },
        { about: worst.guard.key },
      )
    })
  },
}

interface Hot {
  readonly id: ConductorId
  readonly worst: NonNullable<ReturnType<typeof worstHeat>>
  /** A²s. */
  readonly bears: number
}

/** Times what it bears; what differs by rounding stays in the order of the drawing. */
const excess = ({ worst, bears }: Hot): number => Number((worst.a2s / bears).toPrecision(6))

/** What a short circuit lets into a conductor beyond what it bears; null: nothing, or it is not known. */
function hotIn(c: Case, w: Conductor, faults: ReturnType<ReturnType<typeof faultsAlong>>): Hot | null {
  const facts = fuseFacts(c.design, c.border)
  const bandOf = (g: Clearing): FuseBand | null => facts.get(`${g.part}/${g.key}`)?.band ?? null
  const size = sizeIn(c.design, w.size)
  if (!faults || !size || toldAlready(c, w)) return null
  const k = withstandK(statedInsulationC(c.design, w) ?? c.ruleSet.insulationC)
  const bears = (k * size.sectionMm2) ** 2
  const worst = worstHeat(faults, bandOf)
  return !worst || worst.a2s <= bears * (1 + 1e-9) ? null : { id: w.id, worst, bears }
}

/** P1, P2, P5: the same cause, told by a rule of its own. */
function toldAlready(c: Case, { id }: Conductor): boolean {
  const verdict = c.answers.runs.get(id)?.verdict
  return (
    verdict !== undefined &&
    'value' in verdict &&
    ['unprotected', 'device-too-big', 'thin-return'].includes(verdict.value)
  )
}
