import type { Conductor, ConductorId, Design } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import type { Border } from '../network'
import { type RunOptions, runOptions } from './runoptions'
import type { Kept } from './sizing'

/** A conductor whose size is to be chosen; it has at least one option. */
export interface FreeRun extends RunOptions {
  readonly conductor: Conductor
}

/** The conductors that carry power, are named and are not locked. */
export function freeRuns(
  design: Design,
  ruleSet: RuleSet,
  border: Border,
  isNamed: (id: ConductorId) => boolean,
): { readonly free: readonly FreeRun[]; readonly kept: readonly Kept[] } {
  const optionsOf = runOptions(design, ruleSet)
  const free: FreeRun[] = []
  const kept: Kept[] = []
  for (const conductor of design.conductors) {
    if (!border.conductors.has(conductor.id) || !isNamed(conductor.id)) continue
    const of = optionsOf(conductor)
    if (conductor.locked) kept.push({ conductor: conductor.id, because: { key: 'locked' } })
    else if (of.options.length === 0)
      kept.push({ conductor: conductor.id, because: { key: 'no-standard-sizes' } })
    else free.push({ conductor, ...of })
  }
  return { free, kept }
}
