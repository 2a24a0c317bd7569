import { remembering } from '../math/remember'
import type { ConductorId } from '../model/design'
import type { Case } from './rule'

/** Conductors that one device or source is too big for, the one that may have least first. */
export interface Oversized {
  readonly part: string
  readonly key: string
  readonly is: 'device' | 'source'
  readonly amps: number
  /** What the rule set allows for the first of them, A, and its ampacity. */
  readonly allowedA: number
  readonly ampacityA: number
  readonly conductors: readonly ConductorId[]
}

/** Worked out once for each case: P5 asks for them too. O(conductors). */
export const oversized = remembering((c: Case): readonly Oversized[] => {
  const byGuard = new Map<string, Oversized>()
  for (const { id } of c.design.conductors) {
    const run = c.answers.runs.get(id)
    if (!run || !('value' in run.verdict) || run.verdict.value !== 'device-too-big') continue
    const guard = run.cause?.guards[0]
    if (!guard || !('value' in run.ampacity)) continue
    const ampacityA = run.ampacity.value.amps
    const allowedA = ampacityA * c.ruleSet.deviceShare.value
    const at = `${guard.part}/${guard.key}`
    const before = byGuard.get(at)
    const worse = !before || allowedA < before.allowedA
    byGuard.set(at, {
      ...guard,
      ...(worse ? { allowedA, ampacityA } : { allowedA: before.allowedA, ampacityA: before.ampacityA }),
      conductors: worse ? [id, ...(before?.conductors ?? [])] : [...before.conductors, id],
    })
  }
  return [...byGuard.values()]
})
