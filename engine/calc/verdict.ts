import type { Amps, MaybeUnlimited, Metres } from '../units'
import type { Ahead } from './ahead'
import type { CutMember, EndProtection, ProtectionGap } from './protection'

export type End = 'from' | 'to'

/** What can come into one end of a conductor; the rest only where that is unlimited. */
export interface JudgedEnd {
  readonly protection: EndProtection
  readonly ahead: Ahead | null
  /** The devices that stand first behind the conductor: no fault behind them puts more than these through it for long. */
  readonly behind: readonly CutMember[]
}

/** What the rule set in force allows for this conductor; null where it cannot be told. */
export interface Allowed {
  /** Largest device or source, and largest sum of them: the ampacity, or the exception the rule set states. */
  readonly amps: Amps | null
  /** Longest way from a source to the device; null where the rule set allows none. */
  readonly aheadM: Metres | null
}

export type VerdictGap =
  | ProtectionGap
  | { readonly code: 'missing-length'; readonly conductors: readonly string[] }
  | { readonly code: 'missing-ampacity' }

export type ConductorVerdict =
  | {
      /** Some unlimited source reaches this end through no protective device, and not within an allowance. */
      readonly verdict: 'unprotected'
      readonly end: End
      readonly path: readonly string[]
      readonly source: string
      /** From the source to the device behind the conductor; null unknown, 'unlimited' where there is none. */
      readonly aheadM: MaybeUnlimited | null
      readonly allowedM: Metres | null
    }
  | {
      readonly verdict: 'device-too-big'
      readonly end: End
      readonly member: CutMember
      readonly allowedA: Amps
    }
  | {
      readonly verdict: 'sources-add-up'
      readonly end: End
      readonly flow: Amps
      readonly cut: readonly CutMember[]
      readonly allowedA: Amps
    }
  | {
      readonly verdict: 'near-source'
      readonly end: End
      readonly source: string
      readonly aheadM: Metres
      readonly allowedM: Metres
    }
  | { readonly verdict: 'protected' }
  | { readonly verdict: 'not-checked'; readonly end: End; readonly because: VerdictGap }

/**
 * The verdict on one conductor from what can come into both its ends. The gravest stands: unprotected, device too
 * big, sources add up; then what could not be checked; then the note near the source; then protected.
 * Where unlimited sources reach both ends, each end must lie within the allowance, with a device behind it.
 */
export function verdict(from: JudgedEnd, to: JudgedEnd, allowed: Allowed): ConductorVerdict {
  const found = [judge('from', from, allowed), judge('to', to, allowed)]
  const gravest = ORDER.find((name) => found.some((v) => v.verdict === name))
  const at = found.filter((v) => v.verdict === gravest)
  return at.reduce((a, b) => (severity(b) > severity(a) ? b : a))
}

const ORDER = [
  'unprotected',
  'device-too-big',
  'sources-add-up',
  'not-checked',
  'near-source',
  'protected',
] as const

/** Of two ends with one verdict, the greater figure is told. */
function severity(v: ConductorVerdict): number {
  if (v.verdict === 'device-too-big') return v.member.amps
  if (v.verdict === 'sources-add-up') return v.flow
  return 0
}

function judge(end: End, judged: JudgedEnd, allowed: Allowed): ConductorVerdict {
  const { protection, ahead } = judged
  if ('notChecked' in protection) return { verdict: 'not-checked', end, because: protection.notChecked }
  if ('path' in protection) {
    const { path, source } = protection
    const allowedM = allowed.aheadM
    const aheadM = ahead?.toDeviceM ?? null
    const atLeastM = ahead?.toDeviceAtLeastM ?? 0
    if (allowedM === null || atLeastM > allowedM) {
      const told = aheadM === Number.POSITIVE_INFINITY ? 'unlimited' : aheadM
      return { verdict: 'unprotected', end, path, source, aheadM: told, allowedM }
    }
    if (aheadM !== null && aheadM <= allowedM)
      return (
        beyond(end, judged.behind, allowed.amps) ?? { verdict: 'near-source', end, source, aheadM, allowedM }
      )
    return {
      verdict: 'not-checked',
      end,
      because: { code: 'missing-length', conductors: ahead?.missing ?? [] },
    }
  }
  if (protection.flow === 0) return { verdict: 'protected' }
  return beyond(end, protection.cut, allowed.amps) ?? { verdict: 'protected' }
}

/** Do the members of a cut let through more than is allowed, one of them alone or all together? null: they do not. */
function beyond(end: End, cut: readonly CutMember[], allowedA: Amps | null): ConductorVerdict | null {
  if (cut.length === 0) return null
  if (allowedA === null) return { verdict: 'not-checked', end, because: { code: 'missing-ampacity' } }
  const unrated = cut.filter((of) => Number.isNaN(of.amps)).map((of) => of.id)
  const rated = cut.filter((of) => !Number.isNaN(of.amps))
  const flow = rated.reduce((sum, of) => sum + of.amps, 0)
  const member = rated.reduce<CutMember | null>((a, b) => (a && a.amps >= b.amps ? a : b), null)
  if (member && member.amps > allowedA * (1 + 1e-9))
    return { verdict: 'device-too-big', end, member, allowedA }
  if (flow > allowedA * (1 + 1e-9)) return { verdict: 'sources-add-up', end, flow, cut: rated, allowedA }
  return unrated.length > 0
    ? { verdict: 'not-checked', end, because: { code: 'missing-rating', fuses: unrated } }
    : null
}
