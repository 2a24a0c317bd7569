import { remembering } from '../../math/remember'
import type { PlannedDevice } from '../operating/plan'
import { LOAD_AMPS } from './practice'
import { onlyThese, type Rig } from './rig'

/** Notes on an operating point that say that something is asked too much. */
const TOO_MUCH: ReadonlySet<string> = new Set([
  'above-rating',
  'discharge-limit',
  'starved',
  'converter-limit',
])

/** The load that draws most without more than anything on its way may carry. */
export const heaviestLoad = remembering((rig: Rig): PlannedDevice | undefined =>
  byWeight(rig).find((x) => bears(rig, x)),
)

/** The heaviest of those that a battery feeds, by more than a clamp meter tells from nothing. */
export const heaviestOf = (rig: Rig, battery: string): PlannedDevice | undefined =>
  byWeight(rig).find((x) => bears(rig, x, battery))

const byWeight = (rig: Rig): PlannedDevice[] =>
  rig.plan.devices
    .filter((x) => x.is === 'load' && asks(rig, x) > 0 && !rig.monitor.includes(x.part))
    .sort((a, b) => asks(rig, b) - asks(rig, a))

function bears(rig: Rig, x: PlannedDevice, battery?: string): boolean {
  const point = rig.at(onlyThese(rig, [x.id]))
  if (!point.ok || !((point.devices.get(x.id)?.amps ?? 0) < 0)) return false
  if (point.notes.some((n) => TOO_MUCH.has(n.note))) return false
  return battery === undefined || (point.devices.get(battery)?.amps ?? 0) > LOAD_AMPS
}

/** What a load asks for at the system voltage, A. */
function asks({ plan }: Rig, { device }: PlannedDevice): number {
  const full = device.atFullUse
  if (full && 'watts' in full) return full.watts / plan.systemV
  if (full && 'ohms' in full) return plan.systemV / full.ohms
  return typeof device.minA === 'number' ? -device.minA : 0
}

/** Loads that may run together, and those left out of it, the heaviest first, so that nothing carries more than it may. */
export interface Together {
  readonly on: readonly PlannedDevice[]
  readonly left: readonly PlannedDevice[]
}

export const allAtOnce: (rig: Rig) => Together = remembering(findTogether)

/** Leaves out what draws and what is asked too much is about first; then simply the heaviest. */
function findTogether(rig: Rig): Together {
  let on = rig.plan.devices
    .filter((x) => x.is === 'load' || x.is === 'two-way')
    .sort((a, b) => asks(rig, a) - asks(rig, b))
  const left: PlannedDevice[] = []
  while (on.length > 1) {
    const point = rig.at(
      onlyThese(
        rig,
        on.map((x) => x.id),
      ),
    )
    const notes = point.ok ? point.notes.filter((n) => TOO_MUCH.has(n.note)) : []
    if (point.ok && notes.length === 0) break
    const parts = new Set(notes.flatMap((n) => n.parts))
    const goes = on.findLast((x) => parts.has(x.part)) ?? on.at(-1)!
    on = on.filter((x) => x !== goes)
    left.push(goes)
  }
  return { on, left }
}
