import { clearsBy, type FuseBand } from '../tables/fuseband'
import type { Amps, Seconds } from '../units'
import type { Clearing, EndFault } from './faultanswers'

/** The adiabatic law holds up to this time, s; what lasts longer is for K3. */
const LONGEST_S = 5

/** A short circuit at the far end of a conductor, until its device has cleared it. */
export interface Heat {
  readonly guard: Clearing
  readonly amps: Amps
  readonly seconds: Seconds
  /** I²t, A²s. */
  readonly a2s: number
}

/** The short circuit at either end that heats a conductor most. Undefined: none that a device clears within the law. */
export function worstHeat(
  { from, to }: { readonly from: EndFault; readonly to: EndFault },
  bandOf: (guard: Clearing) => FuseBand | null,
): Heat | undefined {
  return [from, to].flatMap((end) => heats(end, bandOf)).sort((a, b) => b.a2s - a.a2s)[0]
}

/**
 * Heat of short circuits at an end, for every guard that clears within the law: of the least, of the greatest, and of
 * those between just below each gate of the band, where I²t is greatest.
 */
function heats(end: EndFault, bandOf: (g: Clearing) => FuseBand | null): Heat[] {
  if (!('value' in end.least) || end.least.value === 0) return []
  const least = end.least.value
  const greatest =
    'value' in end.greatest && typeof end.greatest.value === 'number' ? end.greatest.value : least
  return end.clearing.flatMap((guard) => {
    const band = bandOf(guard)
    if (!band) return []
    const most = Math.max(1, greatest / least)
    const belowGates = band.gates.map((g) => (g.amps * (1 - 1e-9)) / guard.amps)
    const between = belowGates.filter((times) => times > 1 && times < most)
    return [1, ...between, most].flatMap((times) => {
      const seconds = clearsBy(band, guard.amps * times)
      if (seconds === null || seconds > LONGEST_S) return []
      const amps = guard.runAmps * times
      return [{ guard, amps, seconds, a2s: amps ** 2 * seconds }]
    })
  })
}
