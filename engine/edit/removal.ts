import type { Design } from '../model/design'
import type { Selection } from './clip'
import type { EditOf } from './edit'

/** Removes a selection, and with each feed the return that was drawn with it: both read as one line. */
export function removeEdit(design: Design, { parts, conductors }: Selection): EditOf<'remove'> {
  const gone = new Set(conductors)
  const gonePart = new Set(parts)
  for (const c of design.conductors) if (gonePart.has(c.from.part) || gonePart.has(c.to.part)) gone.add(c.id)
  const returns = design.conductors.filter(
    (c) => c.returnOf !== null && gone.has(c.returnOf) && !gone.has(c.id),
  )
  return { do: 'remove', parts, conductors: [...conductors, ...returns.map((c) => c.id)] }
}
