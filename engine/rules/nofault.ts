import type { Answer } from '../calc/answers'
import { found, type Rule } from './rule'

/** Gaps that only fault currents have; the others are told by D1, D2 and D4. */
const CODES = ['internal-resistance-missing', 'resistance-is-limit']

/** K4: fault currents are not checked, because a battery states no resistance that they could be worked out from. */
export const noFaultCurrent: Rule = {
  id: 'K4',
  looksFor: 'batteries without a figure that fault currents need',
  check: ({ answers }) => {
    const parts = new Map<string, Set<string>>()
    const look = (answer: Answer<unknown>): void => {
      if (!('notChecked' in answer) || !CODES.includes(answer.notChecked)) return
      const at = parts.get(answer.notChecked) ?? new Set()
      parts.set(answer.notChecked, at)
      for (const part of answer.parts) at.add(part)
    }
    for (const { greatest } of answers.faults.devices.values()) look(greatest)
    for (const { from, to } of answers.faults.runs.values())
      for (const end of [from, to]) for (const answer of [end.greatest, end.least]) look(answer)
    return [...parts].map(([code, batteries]) =>
      found('K4', 'not-checked', 'method', { parts: [...batteries] }, { code, batteries: [...batteries] }),
    )
  },
}
