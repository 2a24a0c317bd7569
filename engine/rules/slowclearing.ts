import type { Clearing } from '../calc/faultanswers'
import { fuseFacts } from '../calc/fusefacts'
import type { ConductorId } from '../model/design'
import { found, type Rule } from './rule'

/** Longest clearing of a short circuit, s: the range of the adiabatic law of IEC 60364-4-43. */
const LONGEST_S = 5

/**
 * K3: the least short circuit at the far end of a conductor is too small for its device to clear it within 5 s by the
 * slow edge of its band: commonly too long or too thin a run. One finding for each device, at its worst conductor.
 */
export const slowClearing: Rule = {
  id: 'K3',
  looksFor: 'devices that do not clear a short circuit at the far end within 5 s',
  check: (c) => {
    const slow = new Map<string, { guard: Clearing; worst: ConductorId; conductors: ConductorId[] }>()
    for (const [conductor, { from, to }] of c.answers.faults.runs)
      for (const guard of [...from.clearing, ...to.clearing]) {
        if (!('value' in guard.within)) continue
        if (guard.within.value !== null && guard.within.value <= LONGEST_S) continue
        const id = `${guard.part}/${guard.key}`
        const before = slow.get(id)
        const conductors = [...(before?.conductors ?? []), conductor]
        const worse = !before || guard.amps < before.guard.amps
        slow.set(id, worse ? { guard, worst: conductor, conductors } : { ...before, conductors })
      }
    const facts = fuseFacts(c.design, c.border)
    return [...slow].map(([id, { guard, worst, conductors }]) => {
      const within = 'value' in guard.within ? guard.within.value : null
      const of = facts.get(id)
      return found(
        'K3',
        within === null ? 'danger' : 'warning',
        of?.band?.source ?? 'method',
        { parts: [guard.part], conductors: [...new Set(conductors)] },
        {
          part: guard.part,
          way: of?.name ?? '',
          conductor: worst,
          amps: guard.amps,
          rating: of?.ratingA ?? 0,
          never: within === null,
        },
        {
          about: guard.key,
          limit: { value: LONGEST_S, unit: 's' },
          ...(within === null ? {} : { actual: { value: within, unit: 's' } }),
        },
      )
    })
  },
}
