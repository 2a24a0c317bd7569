import { kindOf } from '../kinds/all'
import type { Design, Part, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import type { Amps } from '../units'

/** A number typed on the card of a part; null where it is empty or its kind has no such field. */
export function numberOf(part: Part, field: string): number | null {
  const kind = kindOf(part.kind)
  const value = kind && complete(kind.fields, part.values)[field]
  return typeof value === 'number' ? value : null
}

/** Rated current of a part that has one figure for it; null where none is stated. */
export function ratingOf(design: Design, id: PartId): Amps | null {
  const part = partById(design, id)
  return part ? numberOf(part, 'ratingA') : null
}
