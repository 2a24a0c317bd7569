import type { Electrical, PartBranch, PartDevice } from '../model/kind'
import type { Amps } from '../units'
import { contactOhms } from './resistance'

/** A contact between two terminals of a part, closed as far as the worst case is concerned. */
export const contact = (
  from: string,
  to: string,
  ratingA: Amps | null,
  more: Partial<Pick<PartBranch, 'key' | 'name' | 'changeover' | 'workedBy'>> = {},
): PartBranch => ({
  key: 'contact',
  from,
  to,
  ohms: contactOhms(ratingA),
  kind: 'contact',
  ratingA,
  ...more,
})

/** One contact in a line, from terminal 1 to terminal 2, with the devices that work it, if any. */
export const contactModel = (
  ratingA: Amps | null,
  devices: readonly PartDevice[] = [],
  more: Pick<PartBranch, 'workedBy'> = {},
): Electrical => ({
  merges: [],
  branches: [contact('1', '2', ratingA, more)],
  devices,
})
