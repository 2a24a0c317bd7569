import { fuseFacts } from '../calc/fusefacts'
import { type FuseForm, RATINGS } from '../tables/fuseratings'
import { found, type Rule } from './rule'

/** The series of ratings by fuse class; classes without one are not judged. */
const FORM: Readonly<Record<string, FuseForm>> = {
  c: 'blade',
  f: 'blade',
  e: 'large-blade',
  t: 'cartridge',
}

/** F4: no fuse of this class is commonly made with this rating. */
export const oddRating: Rule = {
  id: 'F4',
  looksFor: 'fuses of a rating that their class does not have',
  check: ({ design, border }) =>
    [...fuseFacts(design, border).values()].flatMap((of) => {
      const form = Object.hasOwn(FORM, of.class) ? FORM[of.class]! : undefined
      if (!form || of.ratingA === null || RATINGS[form].amps.some((a) => a === of.ratingA)) return []
      return [
        found(
          'F4',
          'note',
          RATINGS[form].source,
          { parts: [of.part] },
          { part: of.part, way: of.name, form: RATINGS[form].title },
          { about: of.key, actual: { value: of.ratingA, unit: 'A' } },
        ),
      ]
    }),
}
