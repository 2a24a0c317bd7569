import type { Design, PartId } from '../../model/design'
import { hasStages } from './charging'
import { planOf } from './plan'

/** Something of a design that a person can set, for a row of switches and sliders. Ids as in `OperatingState`. */
export type Control =
  | {
      readonly is: 'contact' | 'fuse' | 'stage'
      readonly id: string
      readonly part: PartId
      readonly name: string
    }
  | {
      readonly is: 'throw'
      readonly id: string
      readonly part: PartId
      readonly name: string
      readonly positions: readonly string[]
    }
  | {
      readonly is: 'load' | 'source' | 'charge'
      readonly id: string
      readonly part: PartId
      readonly name: string
    }

/**
 * What can be set by hand, in the order of the design: contacts and changeovers that nothing works, latching relays,
 * cut-outs and combiners without typed voltages, fuses, loads, sources, batteries, stages of chargers. `name`: of the branch or device
 * inside its part, empty where the part has one only. O(parts).
 */
export function controlsOf(design: Design): Control[] {
  const { border, contacts, devices } = planOf(design)
  const byHand = contacts.filter(({ workedBy: w }) => {
    return !w || w.by === 'pulses' || (w.by === 'voltage' && (w.closesV === null || w.opensV === null))
  })
  const nameOf = (id: string): string => border.branches.get(id)?.branch.name ?? ''
  const thrown = new Map<string, { part: PartId; positions: string[] }>()
  for (const { part, changeover: c } of byHand) {
    if (!c) continue
    const positions = thrown.get(c.id)?.positions ?? []
    thrown.set(c.id, { part, positions: [...positions, c.position] })
  }
  return [
    ...byHand.flatMap(({ id, part, changeover }): Control[] =>
      changeover ? [] : [{ is: 'contact', id, part, name: nameOf(id) }],
    ),
    ...[...thrown].map(
      ([id, { part, positions }]): Control => ({ is: 'throw', id, part, name: '', positions }),
    ),
    ...[...border.branches].flatMap(([id, { part, branch }]): Control[] =>
      branch.kind === 'fuse' ? [{ is: 'fuse', id, part, name: nameOf(id) }] : [],
    ),
    ...devices.flatMap(({ id, part, is, device }): Control[] => {
      const name = device.name ?? ''
      if (is === 'battery') return [{ is: 'charge', id, part, name }]
      if (is === 'load') return [{ is: 'load', id, part, name }]
      if (is === 'two-way')
        return [
          { is: 'load', id, part, name },
          { is: 'source', id, part, name },
        ]
      return is === 'source' || is === 'array' || is === 'charger' ? [{ is: 'source', id, part, name }] : []
    }),
    ...devices.flatMap(({ id, part, is, device }): Control[] => {
      const given = is === 'unknown' || is === 'follower'
      return hasStages(device) && !given ? [{ is: 'stage', id, part, name: '' }] : []
    }),
  ]
}
