import { kindOf } from '../kinds/all'
import { found, type Rule } from './rule'

/** X1: a part of a kind that this version does not know stands in the design; nothing through it is checked. */
export const unknownKind: Rule = {
  id: 'X1',
  looksFor: 'parts of a kind that is not known here',
  check: ({ design }) =>
    design.parts
      .filter((part) => !kindOf(part.kind))
      .map((part) =>
        found('X1', 'not-checked', 'method', { parts: [part.id] }, { part: part.id, kind: part.kind }),
      ),
}
