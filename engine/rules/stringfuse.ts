import type { Part } from '../model/design'
import { conductorsAt } from '../model/lookup'
import { PV_IRRADIANCE, stringBackfeedA, stringFuseRange } from '../tables/pvfactors'
import type { Amps } from '../units'
import { numberOf } from './ratings'
import { type Case, found, type Rule } from './rule'

/**
 * V3: strings side by side can push more into a faulty one than its modules bear, and no fuse in the string stops it; or
 * the fuse that is fitted is out of range (IEC 62548: above 1.5, below 2.4 times the short-circuit current, and no more
 * than the module bears).
 */
export const stringFuse: Rule = {
  id: 'V3',
  looksFor: 'PV strings that need a fuse, and string fuses out of range',
  check: (c) =>
    c.design.parts.flatMap((part) => {
      if (part.kind !== 'pv-array') return []
      const [isc, parallel, bears] = ['iscA', 'parallel', 'maxFuseA'].map((key) => numberOf(part, key))
      if (isc == null || parallel == null || bears == null) return []
      const fitted = numberOf(part, 'stringFuseA')
      const backfeed = stringBackfeedA(parallel, isc) + fromOutside(c, part)
      const { above, below } = stringFuseRange(isc)
      const facts = { part: part.id, backfeed, bears, above, below, fitted: fitted ?? 0 }
      const subjects = { parts: [part.id] }
      const limit = { limit: { value: bears, unit: 'A' } as const }
      if (fitted === null) {
        if (backfeed <= bears * (1 + 1e-9)) return []
        const actual = Number.isFinite(backfeed) ? backfeed : ('unlimited' as const)
        return [
          found('V3', 'danger', 'iec-62548', subjects, facts, {
            ...limit,
            actual: { value: actual, unit: 'A' },
          }),
        ]
      }
      if (fitted > above && fitted < below && fitted <= bears) return []
      return [
        found('V3', fitted > bears ? 'danger' : 'warning', 'iec-62548', subjects, facts, {
          ...limit,
          actual: { value: fitted, unit: 'A' },
        }),
      ]
    }),
}

/** What the rest of the network can push into the array, with sources at their current under the standard sun. */
function fromOutside(c: Case, part: Part): Amps {
  return conductorsAt(c.design, part.id, '+').reduce((sum, w) => {
    const run = c.answers.runs.get(w.id)
    const far = w.from.part === part.id ? run?.to : run?.from
    if (!far || !('value' in far)) return sum
    if (far.value.amps === 'unlimited') return Number.POSITIVE_INFINITY
    const guards = far.value.guards.map((g) => (g.is === 'source' ? g.amps / PV_IRRADIANCE : g.amps))
    return sum + guards.reduce((a, b) => a + b, 0)
  }, 0)
}
