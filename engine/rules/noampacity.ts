import type { ConductorId } from '../model/design'
import { sizeIn } from '../model/sizes'
import { found, type Rule } from './rule'

/** D3: the rule set has no ampacity for a conductor as it is laid: neither its load nor its protection is checked. */
export const noAmpacity: Rule = {
  id: 'D3',
  looksFor: 'conductors for which the rule set has no ampacity',
  check: ({ design, answers, border }) => {
    const byReason = new Map<string, ConductorId[]>()
    for (const c of design.conductors) {
      const ampacity = answers.runs.get(c.id)?.ampacity
      if (!border.conductors.has(c.id) || !sizeIn(design, c.size) || !ampacity || 'value' in ampacity)
        continue
      const list = byReason.get(ampacity.notChecked)
      if (list) list.push(c.id)
      else byReason.set(ampacity.notChecked, [c.id])
    }
    return [...byReason].map(([reason, conductors]) =>
      found('D3', 'not-checked', 'rule-set', { conductors }, { conductors, reason }),
    )
  },
}
