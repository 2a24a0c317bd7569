import type { Answer, Answers, NotChecked } from '../calc/answers'
import { found, type Rule } from './rule'
import { unfedParts } from './unfedparts'

/** Gaps that a rule of its own tells: D1, D2, J3, X3, J1; and what carries no power. Reasons of ampacity are D3's. */
const TOLD = new Set([
  'missing-run',
  'missing-size',
  'missing-figure',
  'missing-rating',
  'source-cycle',
  'too-many-positions',
  'terminals-joined',
  'not-in-network',
])

/** D4: a check that could not be made for a reason that no other rule tells. */
export const unmade: Rule = {
  id: 'D4',
  looksFor: 'checks that could not be made for any other reason',
  check: (c) => {
    const byCode = new Map<string, { parts: Set<string>; conductors: Set<string> }>()
    for (const { answer, part, conductor } of allAnswers(c.answers)) {
      if (TOLD.has(answer.notChecked)) continue
      if (answer.notChecked === 'no-battery-feeds-it' && unfedParts(c).has(part ?? '')) continue
      const at = byCode.get(answer.notChecked) ?? { parts: new Set(), conductors: new Set() }
      byCode.set(answer.notChecked, at)
      for (const id of [...answer.parts, ...(part === undefined ? [] : [part])]) at.parts.add(id)
      for (const id of [...answer.conductors, ...(conductor === undefined ? [] : [conductor])])
        at.conductors.add(id)
    }
    return [...byCode].map(([code, at]) => {
      const subjects = { parts: [...at.parts], conductors: [...at.conductors] }
      return found('D4', 'not-checked', 'method', subjects, { code, ...subjects })
    })
  },
}

interface Gap {
  readonly answer: NotChecked
  readonly part?: string
  readonly conductor?: string
}

/** Every answer that is none, but for those of ampacity and resistance. */
function allAnswers(answers: Answers): Gap[] {
  const gaps: Gap[] = []
  const look = (answer: Answer<unknown> | null, of: Omit<Gap, 'answer'>): void => {
    if (answer !== null && 'notChecked' in answer) gaps.push({ answer, ...of })
  }
  for (const [conductor, run] of answers.runs)
    for (const answer of [run.forward, run.backward, run.from, run.to, run.verdict, run.sustained])
      look(answer, { conductor })
  for (const { part, worst } of answers.branches.values()) look(worst, { part })
  for (const [part, worst] of answers.bars) look(worst, { part })
  for (const { part, over, under } of answers.shunts.values())
    for (const x of [over, under]) look(x, { part })
  for (const { part, drop } of answers.drops.values()) look(drop, { part })
  return gaps
}
