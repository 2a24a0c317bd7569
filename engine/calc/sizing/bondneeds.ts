import type { ConductorId, Design } from '../../model/design'
import { bondsOf } from '../bonds'
import type { Border } from '../network'
import type { FreeRun } from './freeruns'
import type { BondNeed } from './sizing'

/** Sections that bonds to the frame need beside the leads of one trial, where they are thinner and some size is thick enough. */
export function bondNeeds(
  design: Design,
  border: Border,
  free: readonly FreeRun[],
  sizes: ReadonlyMap<ConductorId, string>,
): Map<ConductorId, BondNeed> {
  const byId = new Map(free.map((run) => [run.conductor.id, run]))
  const needs = new Map<ConductorId, BondNeed>()
  for (const { bond, lead, leastMm2 } of bondsOf(design, border)) {
    const options = byId.get(bond.id)?.options ?? []
    const now = options.find((o) => o.size.key === sizes.get(bond.id))
    const thick = options.some((o) => o.size.sectionMm2 >= leastMm2 * (1 - 1e-9))
    if (!now || !thick || now.size.sectionMm2 >= leastMm2 * (1 - 1e-9)) continue
    needs.set(bond.id, { leastMm2, lead: lead.id })
  }
  return needs
}
