import type { ConductorId } from '../../model/design'
import type { DropCut } from './dropcuts'
import type { FreeRun } from './freeruns'
import type { Selected } from './leastcopper'
import type { Need } from './needs'
import type { BondNeed, HeatNeed, SizeReason } from './sizing'

/** Why a chosen conductor is no thinner: what the next thinner size would break, the gravest first. */
export function sizeReason(
  { conductor, options, thinnest }: FreeRun,
  chosen: number,
  needs: readonly Need[],
  { heat, bond }: { readonly heat: HeatNeed | undefined; readonly bond: BondNeed | undefined },
  cuts: readonly DropCut[],
  dropAt: (cut: DropCut, instead: Selected) => number,
): SizeReason {
  const thinner = options[chosen - 1]
  if (!thinner) return thinnest
  const broken = needs.filter((n) => n.amps > thinner.amps)
  if (broken.length > 0) {
    const { key, amps, guards } = broken.reduce((a, b) => (b.amps > a.amps ? b : a))
    return { key, thinner: thinner.size.key, carriesA: thinner.amps, neededA: amps, guards }
  }
  if (heat && thinner.size.sectionMm2 < heat.leastMm2 * (1 - 1e-9))
    return { key: 'heat', thinner: thinner.size.key, ...heat }
  if (bond && thinner.size.sectionMm2 < bond.leastMm2 * (1 - 1e-9))
    return { key: 'bond', thinner: thinner.size.key, ...bond }
  const instead = new Map<ConductorId, number>([[conductor.id, chosen - 1]])
  let worst: { cut: DropCut; percent: number } | null = null
  for (const cut of cuts) {
    if (!cut.amps.has(conductor.id)) continue
    const percent = dropAt(cut, instead) / cut.onePercentV
    if (percent <= cut.limitPercent * (1 + 1e-9)) continue
    if (!worst || percent / cut.limitPercent > worst.percent / worst.cut.limitPercent)
      worst = { cut, percent }
  }
  if (!worst) return { key: 'settled', thinner: thinner.size.key }
  const { part, device, limitPercent } = worst.cut
  return { key: 'drop', thinner: thinner.size.key, part, device, percent: worst.percent, limitPercent }
}
