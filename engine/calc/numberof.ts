import { kindOf } from '../kinds/all'
import type { Part } from '../model/design'
import { complete } from '../model/values'

/** A number typed on the card of a part; null where it is empty or its kind has no such field. */
export function numberOf(part: Part, field: string): number | null {
  const kind = kindOf(part.kind)
  const value = kind && complete(kind.fields, part.values)[field]
  return typeof value === 'number' ? value : null
}
