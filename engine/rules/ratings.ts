import { numberOf } from '../calc/numberof'
import type { Design, PartId } from '../model/design'
import { partById } from '../model/lookup'
import type { Amps } from '../units'

export { numberOf } from '../calc/numberof'

/** Rated current of a part that has one figure for it; null where none is stated. */
export function ratingOf(design: Design, id: PartId): Amps | null {
  const part = partById(design, id)
  return part ? numberOf(part, 'ratingA') : null
}
