import { operate } from '../../../engine/calc/operate'
import { planOf } from '../../../engine/calc/operating/plan'
import type { OperatingState } from '../../../engine/calc/operating/state'
import type { Design, PartId } from '../../../engine/model/design'

/**
 * Parts whose loads draw, or whose converters deliver, at the operating point of a state: by the load flow, which the
 * ngspice circuit simulator holds, and not by the walks over the wiring that are tested against it.
 */
export function drawing(design: Design, state: OperatingState): Set<PartId> {
  const point = operate(design, state)
  if (!point.ok) throw new Error(point.reason)
  const stopped = new Set(point.notes.flatMap((n) => (n.note === 'starved' ? n.parts : [])))
  return new Set(
    planOf(design).devices.flatMap(({ id, part, is }) => {
      const { amps, volts } = point.devices.get(id)!
      const runs = is === 'load' || is === 'two-way' ? Math.abs(amps) > 1e-6 : is === 'held' && volts > 1
      return runs && !stopped.has(part) ? [part] : []
    }),
  )
}
