import type { ConductorId } from '../model/design'
import { type Case, found, type Rule } from './rule'
import { thinBehind } from './thinbehind'

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

/**
 * P2: a device (or a source that limits itself) lets through more than the rule set allows for conductors behind it. One
 * finding for each device, with the returns that are too thin for the same reason.
 */
export const tooBig: Rule = {
  id: 'P2',
  looksFor: 'protective devices too big for the conductor behind them',
  check: (c) => {
    const returns = thinBehind(c, oversized(c))
    return oversized(c).map((of) => {
      const thin = returns.get(of) ?? []
      return found(
        'P2',
        'danger',
        c.ruleSet.deviceShare.source,
        { conductors: [...of.conductors, ...thin], parts: [of.part] },
        {
          conductor: of.conductors[0]!,
          behind: of.conductors.slice(1),
          returns: thin,
          guard: of.part,
          key: of.key,
          is: of.is,
          ampacity: of.ampacityA,
        },
        {
          about: of.key,
          actual: { value: of.amps, unit: 'A' },
          limit: { value: of.allowedA, unit: 'A' },
        },
      )
    })
  },
}

const remembered = new WeakMap<Case, readonly Oversized[]>()

/** Worked out once for each case: P5 asks for them too. O(conductors). */
export function oversized(c: Case): readonly Oversized[] {
  const known = remembered.get(c)
  if (known) return known
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
  const all = [...byGuard.values()]
  remembered.set(c, all)
  return all
}
