import type { Design } from '../../model/design'
import type { WorkedBy } from '../../model/kind'
import { operate } from '../operate'
import { planOf } from './plan'
import { NOTHING_SET, type OperatingState } from './state'

/**
 * Everything switched on: hand contacts closed, fuses in, loads at full use, sources resting, batteries full. Relays
 * stand as their coils bring them from rest, cut-outs and combiners as their voltages do; where there is no operating
 * point they stay at rest. Costs one `operate`.
 */
export function usualState(design: Design): OperatingState {
  const { contacts, devices } = planOf(design)
  const named = (test: (is: string) => boolean, value: number): Map<string, number> =>
    new Map(devices.flatMap(({ id, is }) => (test(is) ? [[id, value] as const] : [])))
  const rest: OperatingState = {
    ...NOTHING_SET,
    open: new Set(contacts.flatMap(({ id, workedBy: w }) => (startsOpen(w) ? [id] : []))),
    throws: new Map(contacts.flatMap(({ changeover: c }) => (c ? [[c.id, c.rest] as const] : []))),
    loads: named((is) => is === 'load' || is === 'two-way', 1),
    sources: new Map([
      ...named((is) => is === 'source' || is === 'array' || is === 'two-way', 0),
      ...devices.flatMap(({ id, is, waitsFor }) =>
        is === 'charger' ? [[id, waitsFor.length > 0 ? 1 : 0] as const] : [],
      ),
    ]),
    charge: named((is) => is === 'battery', 1),
  }
  const point = operate(design, rest)
  return point.ok ? point.state : rest
}

const startsOpen = (w: WorkedBy | null): boolean =>
  w?.by === 'coil' || (w?.by === 'voltage' && w.usually === 'open')
