import type { Design, Part } from '../../model/design'

/** What sits in one place; '' holds what has no place noted. */
export interface PlaceOf {
  readonly place: string
  readonly parts: readonly Part[]
}

/** Parts by place, both in the order of the design. O(parts). */
export function placesOf({ parts }: Design): PlaceOf[] {
  const by = new Map<string, Part[]>()
  for (const part of parts) {
    if (part.kind === 'spare-way') continue
    const place = part.location.trim()
    const list = by.get(place)
    if (list) list.push(part)
    else by.set(place, [part])
  }
  return [...by].map(([place, found]) => ({ place, parts: found }))
}
