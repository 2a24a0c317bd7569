import type { Design, PartId } from '../../model/design'
import { startOf } from './contacts'
import { planOf } from './plan'
import type { OperatingState } from './state'

/**
 * Parts of which a contact stands otherwise than their symbol shows it at rest: a make contact that is closed, a
 * changeover that is thrown over, a breaker that is on. O(contacts) after the first call for a design.
 */
export function workedParts(design: Design, state: OperatingState): ReadonlySet<PartId> {
  const plan = planOf(design)
  const closed = startOf(plan, state)
  const worked = new Set<PartId>()
  for (const { id, part, changeover } of plan.contacts)
    if (closed.has(id) && (!changeover || changeover.position !== changeover.rest)) worked.add(part)
  for (const [id, { part, branch }] of plan.border.branches)
    if (branch.kind === 'fuse' && !state.blown.has(id)) worked.add(part)
  return worked
}
