import type { ConductorId } from '../../model/design'
import type { OperatingState } from '../operating/state'
import { notKnown } from './expect'
import { onlyThese, type Rig } from './rig'
import type { Expected } from './step'

/** The same switches with one device off. */
export const withoutIt = (rig: Rig, device: string): OperatingState => ({
  ...onlyThese(rig, [device]),
  loads: new Map([...rig.quiet.loads, [device, 0]]),
})

/** A, of a change of current that matters. */
const CHANGES = 0.01

/** Why the voltage left for a device cannot be known: runs without size or length carry its current. null: it can. */
export function missingRuns(rig: Rig, device: string): Expected | null {
  const { assumed } = rig.plan.border
  if (assumed.size === 0) return null
  const on = rig.at(onlyThese(rig, [device]))
  const off = rig.at(withoutIt(rig, device))
  if (!on.ok || !off.ok) return null
  const amps = (id: ConductorId): number => (on.conductors.get(id) ?? 0) - (off.conductors.get(id) ?? 0)
  const moved = [...assumed].filter((id) => Math.abs(amps(id)) > CHANGES)
  return moved.length === 0 ? null : notKnown('missing-run', [], moved)
}
