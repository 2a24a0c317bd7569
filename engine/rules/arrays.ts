import type { Part } from '../model/design'
import type { Amps } from '../units'
import { numberOf } from './ratings'
import type { Case } from './rule'

interface Edge {
  readonly part: Part
  readonly low: number
  readonly high: number
}

/** Ways looked at for one device; beyond that, arrays are joined in more combinations than any roof has. */
const MOST_WAYS = 256

/**
 * Strings of arrays from the negative to the positive of a device, with every contact closed: arrays in series, each drawn
 * as a part of its own, make one way together. Arrays beside each other are a way each.
 */
export function arrayWays(c: Case, device: string): readonly (readonly Part[])[] {
  const netsOf = (id: string): readonly [number, number] | null => {
    const d = c.p.deviceIndex.get(id)
    return d === undefined ? null : [c.p.net[c.p.negative[d]!]!, c.p.net[c.p.positive[d]!]!]
  }
  const at = netsOf(device)
  if (!at || at[0] === at[1]) return []
  const edges = c.design.parts.flatMap((part): Edge[] => {
    const nets = part.kind === 'pv-array' ? netsOf(`${part.id}/array`) : null
    return nets && nets[0] !== nets[1] ? [{ part, low: nets[0], high: nets[1] }] : []
  })
  const ways: Part[][] = []
  const climb = (net: number, way: readonly Edge[]): void => {
    if (ways.length >= MOST_WAYS) return
    if (net === at[1]) ways.push(way.map((e) => e.part))
    else
      for (const e of edges)
        if (e.low === net && e.high !== at[0] && !way.some((w) => w.low === e.high))
          climb(e.high, [...way, e])
  }
  climb(at[0], [])
  return ways
}

/** Short-circuit current of all strings of an array under the standard sun, A; null: a figure is missing. */
export function arrayIsc(part: Part): Amps | null {
  const isc = numberOf(part, 'iscA')
  const parallel = numberOf(part, 'parallel')
  return isc === null || parallel === null ? null : isc * parallel
}
