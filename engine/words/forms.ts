import { FITTING_TITLES, type FittingKey, fittingOf } from '../tables/fittings'
import { plugWords } from '../tables/plugs'

/** Form of a terminal in a sentence or a list: "M8", "tab 6.3 mm, push-on"; of a data port, what its lead needs. */
export function formWords(form: string): string {
  if (/^M\d/.test(form)) return form
  return plugWords(form) ?? lowered(FITTING_TITLES[form as FittingKey] ?? form)
}

/** What is made up on conductors that go there: "ring lugs", "ferrules". */
export const piecesFor = (form: string): string => `${lowered(fittingOf(form)?.piece ?? 'Lug')}s`

const lowered = (title: string): string =>
  title.startsWith('PV') ? title : title.charAt(0).toLowerCase() + title.slice(1)
