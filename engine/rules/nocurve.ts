import type { ConductorId, PartId } from '../model/design'
import { found, type Rule } from './rule'

/** K5: how fast a device clears is not known: its class has no published limits here and no point of its curve is typed. */
export const noCurve: Rule = {
  id: 'K5',
  looksFor: 'protective devices whose operating times are not known',
  check: ({ answers }) => {
    const conductors = new Map<PartId, Set<ConductorId>>()
    for (const [id, { from, to }] of answers.faults.runs)
      for (const { part, within } of [...from.clearing, ...to.clearing]) {
        if (!('notChecked' in within) || within.notChecked !== 'operating-times-unknown') continue
        const at = conductors.get(part) ?? new Set()
        conductors.set(part, at.add(id))
      }
    return [...conductors].map(([part, at]) =>
      found('K5', 'not-checked', 'method', { parts: [part] }, { part, conductors: [...at] }),
    )
  },
}
