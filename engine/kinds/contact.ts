import type { Electrical, PartBranch, PartDevice } from '../model/kind'
import type { FittingKey } from '../tables/fittings'
import type { Amps } from '../units'
import { ratedFittingField } from './fitting'
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

/** The form of contacts goes with their rating. Common practice, no source. */
export const contactFitting = ratedFittingField('By its rating: tab 6.3 mm to 40 A, stud M8 above')

export const contactForm = (v: {
  readonly fitting: FittingKey | 'by-rating'
  readonly ratingA: Amps | null
}): FittingKey => (v.fitting !== 'by-rating' ? v.fitting : (v.ratingA ?? 0) > 40 ? 'M8' : 'blade 6.3')
