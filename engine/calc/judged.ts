import type { Conductor } from '../model/design'
import { nearSourceM, type RuleSet } from '../tables/rulesets'
import type { Amps } from '../units'
import type { Answer, NotChecked, RunAnswer, Verdict } from './answers'
import { devicesBehind } from './devicesbehind'
import { endAnswer, gapOf } from './guarded'
import type { Border } from './network'
import type { Solved, State } from './solved'
import { type Allowed, type ConductorVerdict, verdict } from './verdict'

type Judged = Pick<RunAnswer, 'verdict' | 'cause' | 'aheadM' | 'aheadAllowedM'>
type Told = Pick<RunAnswer, 'from' | 'to' | 'sustained'>

/**
 * The gravest verdict over all throws of changeovers. What is a fault without the devices of unknown size is a
 * fault with them, whatever else is missing; all other verdicts need both ends told. `limitA`: what the rule set
 * allows for the conductor, null where that is not known.
 */
export function judged(
  states: readonly State[],
  ruleSet: RuleSet,
  w: Conductor,
  limitA: Amps | null,
  run: Told,
): Judged {
  const allowed: Allowed = { amps: limitA, aheadM: nearSourceM(ruleSet, w.sheathed) }
  const found = gravest(states.flatMap(({ none, opened }) => (opened ? [] : (judge(none, w, allowed) ?? []))))
  const { border } = states[0]!.none
  if (!found) return noFigures({ notChecked: 'not-in-network', parts: [], conductors: [] })
  switch (found.verdict) {
    case 'unprotected':
      return {
        verdict: { value: 'unprotected' },
        cause: endAnswer(border, { flow: 'unlimited', path: found.path, source: found.source }),
        aheadM: typeof found.aheadM === 'number' ? found.aheadM : null,
        aheadAllowedM: found.allowedM,
      }
    case 'device-too-big':
      return {
        ...noFigures({ value: 'device-too-big' }),
        cause: endAnswer(border, { flow: found.member.amps, cut: [found.member] }),
      }
    case 'sources-add-up':
      return { ...noFigures({ value: 'sources-add-up' }), cause: endAnswer(border, found) }
  }
  const gap = [run.from, run.to].find((end): end is NotChecked => 'notChecked' in end)
  if (gap) return noFigures(gap)
  switch (found.verdict) {
    case 'near-source':
      return {
        verdict: isThin(run, limitA) ? { value: 'thin-return' } : { value: 'near-source' },
        cause: null,
        aheadM: found.aheadM,
        aheadAllowedM: found.allowedM,
      }
    case 'not-checked':
      return noFigures(unjudged(border, found.because, w))
    case 'protected':
      return noFigures(asReturn(run, limitA, w))
  }
}

const noFigures = (verdict: Answer<Verdict>): Judged => ({
  verdict,
  cause: null,
  aheadM: null,
  aheadAllowedM: null,
})

const GRAVEST: readonly ConductorVerdict['verdict'][] = [
  'unprotected',
  'device-too-big',
  'sources-add-up',
  'not-checked',
  'near-source',
  'protected',
]

const gravest = (verdicts: readonly ConductorVerdict[]): ConductorVerdict | undefined =>
  GRAVEST.flatMap((name) => verdicts.filter((v) => v.verdict === name))[0]

function judge({ border, p, protection }: Solved, w: Conductor, allowed: Allowed): ConductorVerdict | null {
  const e = p.branchIndex.get(w.id)
  if (e === undefined) return null
  const lengthM = (branch: number): number | null =>
    border.conductors.get(p.form.branches[branch]!.id)?.lengthM ?? null
  const end = (side: 'from' | 'to') => {
    const into = (side === 'from' ? protection.intoFrom : protection.intoTo)[e]
    const open = into === Number.POSITIVE_INFINITY
    return {
      protection: protection.end(e, side),
      ahead: open ? protection.ahead(e, side, lengthM) : null,
      behind: open ? devicesBehind(p, e, side) : [],
    }
  }
  return verdict(end('from'), end('to'), allowed)
}

const isThin = ({ sustained }: Told, limitA: Amps | null): boolean =>
  sustained !== null &&
  'value' in sustained &&
  limitA !== null &&
  (sustained.value.amps === 'unlimited' || sustained.value.amps > limitA * (1 + 1e-9))

/** A conductor that no source feeds from its ends is judged by what it can carry as a return. */
function asReturn(run: Told, limitA: Amps | null, w: Conductor): Answer<Verdict> {
  const { sustained } = run
  if (isThin(run, limitA)) return { value: 'thin-return' }
  if (sustained !== null && 'notChecked' in sustained) return sustained
  if (sustained !== null && sustained.value.amps !== 0 && limitA === null)
    return { notChecked: 'missing-size', parts: [], conductors: [w.id] }
  return { value: 'protected' }
}

function unjudged(
  border: Border,
  because: Extract<ConductorVerdict, { verdict: 'not-checked' }>['because'],
  w: Conductor,
): NotChecked {
  switch (because.code) {
    case 'missing-length':
      return { notChecked: 'missing-run', parts: [], conductors: because.conductors }
    case 'missing-ampacity':
      return { notChecked: 'missing-size', parts: [], conductors: [w.id] }
    default:
      return gapOf(border, because)
  }
}
