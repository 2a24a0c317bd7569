import type { ConductorId } from '../../model/design'
import type { RuleSet } from '../../tables/rulesets'
import type { Amps } from '../../units'
import type { Guard, NotChecked, RunAnswer } from '../answers'
import type { NeedKey } from './sizing'

/** An ampacity that a conductor must have, and what asks for it. */
export interface Need {
  readonly key: NeedKey
  readonly amps: Amps
  readonly guards: readonly Guard[]
}

/**
 * The ampacities that a conductor must have under the rule set: its worst-case current (`arrayA`: what arrays alone give it for hours, 0 for others); what can come into its ends;
 * what can last in it as a return; and, where nothing protects it, what the devices behind it let through (`ahead`).
 * Currents without a limit are no matter of size and ask for nothing.
 */
export function needsOf(
  ruleSet: RuleSet,
  run: RunAnswer,
  arrayA: Amps,
  ahead: { readonly amps: Amps; readonly guards: readonly Guard[] },
): readonly Need[] | NotChecked {
  const share = ruleSet.deviceShare.value
  const needs: Need[] = []
  const add = (key: NeedKey, amps: Amps | 'unlimited', guards: readonly Guard[]): void => {
    if (amps !== 'unlimited' && amps > 0) needs.push({ key, amps, guards })
  }
  if ('notChecked' in run.design) return run.design
  add('current', run.design.value, [])
  add('array', arrayA, [])
  for (const end of [run.from, run.to]) {
    if ('notChecked' in end) return end
    if (end.value.amps !== 'unlimited') add('device', end.value.amps / share, end.value.guards)
    else add('ahead', ahead.amps / share, ahead.guards)
  }
  if (run.sustained) {
    if ('notChecked' in run.sustained) return run.sustained
    const { amps, guards } = run.sustained.value
    if (amps !== 'unlimited') add('return', amps / share, guards)
  }
  return needs
}

export type Needs = ReadonlyMap<ConductorId, readonly Need[]>

export const ampsOf = (needs: readonly Need[]): Amps => needs.reduce((most, n) => Math.max(most, n.amps), 0)
