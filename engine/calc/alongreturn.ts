import type { Conductor, Design } from '../model/design'
import { conductorById } from '../model/lookup'
import type { Volts } from '../units'
import type { EndFault, FaultAnswers } from './faultanswers'
import { GREATEST } from './faultsystem'
import { conductorOhms, contextOf } from './network'

/** Short circuits at the two ends of a conductor. */
interface RunFaults {
  readonly from: EndFault
  readonly to: EndFault
}

const NO_END: EndFault = { greatest: { value: 0 }, least: { value: 0 }, clearing: [] }

/**
 * The short circuits that a conductor carries: its own, or, of a return that was drawn with a feed, those of the feed at
 * the device that both serve, since they come back through it. Undefined: neither is known. O(1) each.
 */
export function faultsAlong(
  design: Design,
  runs: FaultAnswers['runs'],
): (c: Conductor) => RunFaults | undefined {
  const volts = highestEmf(design)
  return (c) => {
    const own = runs.get(c.id)
    const feed = own || c.returnOf === null ? undefined : conductorById(design, c.returnOf)
    const there = feed && runs.get(feed.id)
    if (!feed || !there) return own
    const isServed = (end: 'from' | 'to'): boolean =>
      c.from.part === feed[end].part || c.to.part === feed[end].part
    const at = (end: 'from' | 'to'): EndFault =>
      isServed(end) ? through(design, c, there[end], volts) : NO_END
    return { from: at('from'), to: at('to') }
  }
}

/** The greatest fault of the feed alone, I = E / R, has the return in its way: E / (R + r), with the return cold. */
function through(design: Design, c: Conductor, end: EndFault, volts: Volts): EndFault {
  const ohms = (conductorOhms(design, c) ?? 0) * GREATEST.conductorFactor
  if (!('value' in end.greatest) || end.greatest.value === 'unlimited') return end
  const alone = end.greatest.value
  return { ...end, greatest: { value: alone / (1 + (alone * ohms) / volts) } }
}

/** No smaller than the emf behind any fault: the more, the greater the current that is left. */
function highestEmf(design: Design): Volts {
  const { systemV, highestV } = contextOf(design)
  const stated = design.parts.map((part) => Number(part.values.volts ?? 0) || 0)
  return (Math.max(systemV, ...stated) * highestV) / systemV
}
