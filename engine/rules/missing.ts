import { conductorOhms } from '../calc/network'
import { kindOf } from '../kinds/all'
import { complete } from '../model/values'
import { found, type Rule } from './rule'

/** D1: size or length of a conductor is not stated: shares, drop and the run ahead of the first device are not checked. */
export const missingRun: Rule = {
  id: 'D1',
  looksFor: 'conductors without a size or a length',
  check: ({ border }) =>
    [...border.conductors.values()].flatMap((c) => {
      if (conductorOhms(c) !== null) return []
      return [
        found(
          'D1',
          'not-checked',
          'method',
          { conductors: [c.id] },
          { conductor: c.id, size: c.size === null, length: c.lengthM === null },
        ),
      ]
    }),
}

/** D2: a figure of a part is not stated, and some check needs it. */
export const missingField: Rule = {
  id: 'D2',
  looksFor: 'parts with a figure missing that a check needs',
  check: ({ design }) =>
    design.parts.flatMap((part) => {
      const kind = kindOf(part.kind)
      if (!kind) return []
      const values = complete(kind.fields, part.values)
      const lacking = Object.entries(kind.fields)
        .filter(([key, field]) => field.required && (values[key] === null || values[key] === ''))
        .map(([, field]) => field.label)
      if (lacking.length === 0) return []
      return [found('D2', 'not-checked', 'method', { parts: [part.id] }, { part: part.id, fields: lacking })]
    }),
}
