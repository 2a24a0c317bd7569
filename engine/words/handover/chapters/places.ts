import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Piece } from '../book'
import type { Say } from '../say'

/** What sits where. */
export const placePieces = ({ places }: HandoverFacts, { w, part, capital }: Say): Piece[] => {
  const byName = new Intl.Collator(w.locale, { numeric: true })
  const sorted = [...places].sort(
    (a, b) => Number(a.place === '') - Number(b.place === '') || byName.compare(a.place, b.place),
  )
  return [
    { is: 'text', text: w.chapters.places.lead },
    ...sorted.map(
      ({ place, parts }): Piece => ({
        is: 'entry',
        title: place === '' ? w.places.noPlace : capital(place),
        place: '',
        lines: [parts.map(part).join(' · ')],
      }),
    ),
  ]
}
