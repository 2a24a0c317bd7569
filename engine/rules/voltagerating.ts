import { valuesOf } from '../calc/fusefacts'
import { highestAt } from './highestat'
import { found, type Rule } from './rule'

/** U1: a fuse, breaker or isolator rated for less voltage than it may have to interrupt: its arc may not go out. */
export const voltageRating: Rule = {
  id: 'U1',
  looksFor: 'fuses, breakers and isolators rated for less than the highest voltage there',
  check: (c) =>
    [...highestAt(c)].flatMap(([part, volts]) => {
      const rated = valuesOf(c.design, part)('voltageV')
      if (typeof rated !== 'number' || volts <= rated * (1 + 1e-9)) return []
      return [
        found(
          'U1',
          'danger',
          'rating',
          { parts: [part] },
          { part },
          { actual: { value: volts, unit: 'V' }, limit: { value: rated, unit: 'V' } },
        ),
      ]
    }),
}
