import { kindOf } from '../../kinds/all'
import type { Design, Part, PartId } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Behaves, Plan, PlannedDevice } from '../operating/plan'

/** What a part is to the one who lives with the system: it draws, it charges, or it makes another voltage for others. */
export type ThingRole = 'load' | 'charging' | 'converter'

/** A part that can be dead, and its device that tells. */
export interface Thing {
  readonly part: Part
  readonly role: ThingRole
  /** Index among the devices of the plan. */
  readonly device: number
}

/** Parts that draw, charge or convert, in the order of the design. Coils, arrays, batteries and spare ways are none. O(parts). */
export function thingsOf(design: Design, plan: Plan): Thing[] {
  const found = new Map<PartId, Thing>()
  plan.devices.forEach((x, device) => {
    const role = roleOf(x)
    const part = partById(design, x.part)
    if (role === null || !part || part.kind === 'spare-way' || found.has(part.id)) return
    found.set(part.id, { part, role, device })
  })
  return [...found.values()]
}

const ROLES: Readonly<Record<Behaves, ThingRole | null>> = {
  battery: null,
  load: 'load',
  coil: null,
  source: 'charging',
  'two-way': 'load',
  array: null,
  charger: 'charging',
  controller: 'charging',
  held: 'converter',
  follower: null,
  unknown: null,
}

function roleOf({ is, device }: PlannedDevice): ThingRole | null {
  if (is !== 'unknown') return ROLES[is]
  if (device.array || device.role === 'battery') return null
  if (device.role !== 'source') return 'load'
  return device.holdsV !== undefined ? 'converter' : 'charging'
}

/** Parts that only watch and show: they draw day and night. */
export const isMonitoring = (part: Part): boolean => kindOf(part.kind)?.group === 'data'
