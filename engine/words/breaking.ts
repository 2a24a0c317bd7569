import type { RunAnswer } from '../calc/answers'
import { fuseFactsOf } from '../calc/fusefacts'
import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { figure } from './names'

/**
 * "F3: 5 kA up to 32 V": what each device that guards a conductor interrupts, and up to which voltage that is stated; a figure
 * that is not stated is told as not checked. Each device once.
 */
export function breakingWords(run: RunAnswer, design: Design): string[] {
  const ends = [run.from, run.to, ...(run.sustained ? [run.sustained] : [])]
  const guards = ends.flatMap((end) => ('value' in end ? end.value.guards : []))
  const lines = guards.flatMap((g) => {
    const of = g.is === 'device' ? fuseFactsOf(design, g.part, g.key) : undefined
    return of ? [`${partById(design, g.part)?.designation ?? g.part}: ${capacityOf(of)}`] : []
  })
  return [...new Set(lines)]
}

function capacityOf({
  breakingA,
  breakingV,
}: {
  breakingA: number | null
  breakingV: number | null
}): string {
  if (breakingA === null) return 'not stated, so not checked'
  const amps = figure(breakingA / 1000, 'kA')
  return breakingV === null
    ? `${amps}; up to which voltage is not stated, so not checked`
    : `${amps} up to ${figure(breakingV, 'V')}`
}
