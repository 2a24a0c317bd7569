import type { PartDevice } from '../model/kind'
import type { Amps, MaybeUnlimited } from '../units'

/** Makers of devices from one figure; null: not known. */

type Place = Omit<PartDevice, 'minA' | 'maxA' | 'sustainedFaultA' | 'role'>

/** Takes 0 to `amps` and feeds nothing. */
export const takes = (at: Place, amps: MaybeUnlimited | null): PartDevice => ({
  ...at,
  minA: typeof amps === 'number' ? 0 - amps : amps,
  maxA: 0,
  sustainedFaultA: 0,
  role: 'load',
})

/** Gives 0 to `amps`, and no more than that into a fault: it limits itself. */
export const gives = (at: Place, amps: Amps | null): PartDevice => ({
  ...at,
  minA: 0,
  maxA: amps,
  sustainedFaultA: amps,
  role: 'source',
})
