import { keptAside } from '../edit/benchrecord'
import { found, type Rule } from './rule'

/**
 * A2: the workshop has made a conductor that the drawing does not have any more. It may hang in the vehicle, and no
 * figure reckons with it.
 */
export const leftBehind: Rule = {
  id: 'A2',
  looksFor: 'conductors that the workshop has made and the drawing does not have any more',
  check: ({ design }) =>
    keptAside(design).flatMap(({ record, number }) => {
      const done = record.ticks.flatMap((t) => (t.done ? [t.step] : []))
      if (done.length === 0) return []
      const fastened = done.includes('terminated') || done.includes('torqued')
      return [
        found(
          'A2',
          fastened ? 'warning' : 'note',
          'method',
          {},
          { number, fastened },
          { about: record.conductor },
        ),
      ]
    }),
}
