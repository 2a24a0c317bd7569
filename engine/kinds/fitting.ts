import type { ChoiceField } from '../model/fields'
import type { Terminal } from '../model/kind'
import { FITTING_TITLES, type FittingKey, fittingOf } from '../tables/fittings'
import { choice } from './field'

/** How conductors are fastened: a field with the usual form of the kind, and the terminals that follow it. */

/** `initial` is common practice for the kind, with no source. */
export const fittingField = (initial: FittingKey, label = 'Fastened by'): ChoiceField<FittingKey> =>
  choice(
    label,
    'Form of the terminals: decides the lug or ferrule. The usual one stands here, from common practice: look at the part.',
    FITTING_TITLES,
    initial,
    { group: 'Terminals' },
  )

/** The same for parts whose form goes with their rating. */
export const ratedFittingField = (rule: string): ChoiceField<FittingKey | 'by-rating'> =>
  choice(
    'Fastened by',
    'Form of the terminals: decides the lug or ferrule. The usual one stands here, from common practice: look at the part.',
    { 'by-rating': rule, ...FITTING_TITLES },
    'by-rating',
    { group: 'Terminals' },
  )

/** Form and room of a terminal. `takes` where the kind knows better than the form. */
export function fastened(form: FittingKey): Pick<Terminal, 'stud' | 'takes'> {
  if (form === 'unknown') return {}
  const takes = fittingOf(form)?.takes
  return { stud: form, ...(takes === undefined ? {} : { takes }) }
}
