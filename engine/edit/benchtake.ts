import type { BuiltEnd } from '../model/bench'
import type { Difference } from './benchfacts'
import type { Edit } from './edit'

/**
 * Takes what was built over into the drawing. A size is locked with it: it lies in the vehicle, so that sizing leaves
 * it. The record of the bench stays as it is.
 */
export function takeOverEdit({ conductor, what, built }: Difference): Edit {
  if (what === 'from' || what === 'to')
    return { do: 'reconnect', conductor, end: what, to: built as BuiltEnd }
  const set = what === 'size' ? { size: built as string, locked: true } : { lengthM: built as number }
  return { do: 'conductor', conductors: [conductor], set }
}
