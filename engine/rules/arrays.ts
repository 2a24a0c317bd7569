import type { Part } from '../model/design'
import type { Amps } from '../units'
import { numberOf } from './ratings'
import type { Case } from './rule'

/** Arrays of which both poles are joined to both poles of a device, with every contact closed: those beside each other. */
export function arraysAt(c: Case, device: string): Part[] {
  const netsOf = (id: string): readonly [number, number] | null => {
    const d = c.p.deviceIndex.get(id)
    return d === undefined ? null : [c.p.net[c.p.negative[d]!]!, c.p.net[c.p.positive[d]!]!]
  }
  const at = netsOf(device)
  if (!at) return []
  return c.design.parts.filter((part) => {
    const nets = part.kind === 'pv-array' ? netsOf(`${part.id}/array`) : null
    return nets !== null && nets[0] === at[0] && nets[1] === at[1]
  })
}

/** Short-circuit current of all strings of an array under the standard sun, A; null: a figure is missing. */
export function arrayIsc(part: Part): Amps | null {
  const isc = numberOf(part, 'iscA')
  const parallel = numberOf(part, 'parallel')
  return isc === null || parallel === null ? null : isc * parallel
}
