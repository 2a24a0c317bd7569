import { type OperatingState, type PartId, workedParts } from '../../engine'
import { useView } from '../store/view'
import { type Trial, useTrial } from './trial'

const known = new WeakMap<OperatingState, ReadonlySet<PartId>>()

function workedIn({ design, state }: Trial): ReadonlySet<PartId> {
  let parts = known.get(state)
  if (!parts) {
    parts = workedParts(design, state)
    known.set(state, parts)
  }
  return parts
}

/** Is a contact of this part closed or thrown over, in a design that is tried out? At rest otherwise. */
export function useWorked(part: PartId): boolean {
  const trying = useView((s) => s.trying)
  return useTrial(({ trial }) => trying && trial !== null && workedIn(trial).has(part))
}
