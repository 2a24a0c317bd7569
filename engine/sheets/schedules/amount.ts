import type { Answer } from '../../calc/answers'
import type { Design } from '../../model/design'
import type { MaybeUnlimited } from '../../units'
import { figure } from '../../words/names'
import { whyNot } from '../../words/why'
import type { ScheduleCell } from './schedule'

/** An answer in A as a cell, to about three digits; without one, why there is none. Absent: does not apply. */
export function ampsCell(answer: Answer<MaybeUnlimited> | undefined, design: Design): ScheduleCell {
  if (!answer) return ''
  if ('value' in answer) return answer.value === 'unlimited' ? 'unlimited' : Number(figure(answer.value, ''))
  return { notKnown: whyNot(answer, design) }
}
