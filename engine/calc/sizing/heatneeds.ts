import type { ConductorId, Design } from '../../model/design'
import { statedInsulationC } from '../../model/sizes'
import type { RuleSet } from '../../tables/rulesets'
import { withstandK, withstandSection } from '../../tables/withstand'
import { faultsAlong } from '../alongreturn'
import { worstHeat } from '../faultheat'
import { faultsOf } from '../faults'
import { fuseFacts } from '../fusefacts'
import type { States } from '../states'
import type { FreeRun } from './freeruns'
import type { HeatNeed } from './sizing'

/**
 * Sections that conductors need to bear a short circuit until their devices clear it (I²t ≤ k²S²), where they are thinner.
 * The fault currents are those of one trial. Where even the thickest size is too thin, none is asked for.
 */
export function heatNeeds(
  design: Design,
  ruleSet: RuleSet,
  { border, states }: States,
  free: readonly FreeRun[],
  sizes: ReadonlyMap<ConductorId, string>,
): Map<ConductorId, HeatNeed> {
  const along = faultsAlong(design, faultsOf(design, states).runs)
  const facts = fuseFacts(design, border)
  const needs = new Map<ConductorId, HeatNeed>()
  for (const { conductor, options } of free) {
    const faults = along(conductor)
    const heat = faults && worstHeat(faults, (g) => facts.get(`${g.part}/${g.key}`)?.band ?? null)
    if (!heat) continue
    const k = withstandK(statedInsulationC(design, conductor) ?? ruleSet.insulationC)
    const leastMm2 = withstandSection(k, heat.amps, heat.seconds)
    const now = options.find((o) => o.size.key === sizes.get(conductor.id))
    if (!now || now.size.sectionMm2 >= leastMm2 * (1 - 1e-9)) continue
    if (options.at(-1)!.size.sectionMm2 < leastMm2) continue
    const { amps, seconds, guard } = heat
    needs.set(conductor.id, { leastMm2, faultA: amps, seconds, part: guard.part })
  }
  return needs
}
