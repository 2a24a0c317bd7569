import { fuseFacts, valuesOf } from '../calc/fusefacts'
import { found, type Rule } from './rule'

/** F5: a way of a block holds a larger fuse than the block is made for: the way overheats before the fuse opens. */
export const wayFuse: Rule = {
  id: 'F5',
  looksFor: 'ways of fuse blocks with a larger fuse than they may hold',
  check: ({ design, border }) =>
    [...fuseFacts(design, border).values()].flatMap((of) => {
      const most = valuesOf(design, of.part)('wayMaxA')
      if (typeof most !== 'number' || of.ratingA === null || of.ratingA <= most) return []
      return [
        found(
          'F5',
          'danger',
          'rating',
          { parts: [of.part] },
          { part: of.part, way: of.name },
          { about: of.key, actual: { value: of.ratingA, unit: 'A' }, limit: { value: most, unit: 'A' } },
        ),
      ]
    }),
}
