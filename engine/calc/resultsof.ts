import { kindOf } from '../kinds/all'
import type { Design, Part } from '../model/design'
import type { Cell } from '../model/fields'
import { complete } from '../model/values'
import { contextOf } from './network'

/** The result fields of a part, computed from its inputs in the system it stands in; none for an unknown kind. */
export function resultsOf(design: Design, part: Part): Readonly<Record<string, Cell>> {
  const kind = kindOf(part.kind)
  return kind?.results?.(complete(kind.fields, part.values), contextOf(design)) ?? {}
}
