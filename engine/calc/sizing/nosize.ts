import type { ConductorId, Design } from '../../model/design'
import { conductorById } from '../../model/lookup'
import type { Ohms } from '../../units'
import type { DropCut } from './dropcuts'
import type { FreeRun } from './freeruns'
import { ampsOf, type Need } from './needs'
import type { NoSize } from './sizing'

export function tooThin(
  runs: readonly FreeRun[],
  needs: ReadonlyMap<ConductorId, readonly Need[]>,
): NoSize[] {
  return runs.map(({ conductor, options }) => ({
    key: 'ampacity',
    conductor: conductor.id,
    neededA: ampsOf(needs.get(conductor.id) ?? []),
    thickest: options.at(-1)!.size.key,
    carriesA: options.at(-1)!.amps,
  }))
}

/** Each load once, by the worst case that is furthest out with the thickest sizes. */
export function tooLong(
  cuts: readonly DropCut[],
  free: readonly FreeRun[],
  design: Design,
  ohmsOf: (id: ConductorId) => Ohms,
): NoSize[] {
  const least = new Map(free.map(({ conductor, options }) => [conductor.id, options.at(-1)!.ohms]))
  const byLoad = new Map<string, NoSize & { key: 'drop' }>()
  for (const cut of cuts) {
    let [fixedV, freeV, lengthM] = [0, 0, 0]
    for (const [id, amps] of cut.amps) {
      lengthM += conductorById(design, id)?.lengthM ?? 0
      const ohms = least.get(id)
      if (ohms === undefined) fixedV += amps * ohmsOf(id)
      else freeV += Math.max(0, amps) * ohms
    }
    const percent = (fixedV + freeV) / cut.onePercentV
    const before = byLoad.get(cut.id)
    if (before && before.percent >= percent) continue
    byLoad.set(cut.id, {
      key: 'drop',
      part: cut.part,
      device: cut.device,
      percent,
      limitPercent: cut.limitPercent,
      fixedPercent: fixedV / cut.onePercentV,
      lengthM: lengthM / 2,
      on: [...cut.amps.keys()],
    })
  }
  return [...byLoad.values()]
}
