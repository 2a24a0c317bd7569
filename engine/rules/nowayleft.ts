import { valuesOf } from '../calc/fusefacts'
import { conductorsAt } from '../model/lookup'
import { isRows } from '../model/values'
import { found, type Rule } from './rule'

/** F6: every way of a block is taken: a further load has none. Common practice leaves room. */
export const noWayLeft: Rule = {
  id: 'F6',
  looksFor: 'fuse blocks without a way left',
  check: ({ design }) =>
    design.parts.flatMap((part) => {
      const ways = valuesOf(design, part.id)('ways')
      if (ways === undefined || !isRows(ways)) return []
      const free = ways.filter((_, i) => conductorsAt(design, part.id, `${i + 1}`).length === 0)
      if (free.length > 0) return []
      return [
        found('F6', 'note', 'common-practice', { parts: [part.id] }, { part: part.id, ways: ways.length }),
      ]
    }),
}
