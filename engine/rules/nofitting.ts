import { plainTerminalsIn } from '../edit/terminal'
import type { Part, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { found, type Rule } from './rule'

/** J11: how a conductor is fastened at an end is not stated: whether a lug fits is not checked there. */
export const noFitting: Rule = {
  id: 'J11',
  looksFor: 'terminals in use of which the fitting is not stated',
  check: ({ design, border }) => {
    const parts = new Set<PartId>()
    for (const c of border.conductors.values())
      for (const end of [c.from, c.to]) {
        const part = partById(design, end.part)
        const terminal = part && plainTerminalsIn(part)?.find((t) => t.key === end.terminal)
        if (terminal && terminal.stud === undefined && isLeftOpen(part)) parts.add(end.part)
      }
    if (parts.size === 0) return []
    return [found('J11', 'not-checked', 'method', { parts: [...parts] }, { parts: [...parts] })]
  },
}

/** Is a fitting of it chosen as not stated? Data ports and mains terminals have none to state. */
const isLeftOpen = (part: Part): boolean =>
  Object.entries(part.values).some(([key, value]) => /fitting$/i.test(key) && value === 'unknown')
