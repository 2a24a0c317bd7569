import type { Conductor, ConductorId, Design, PartId } from '../model/design'
import type { Pole } from '../model/kind'
import { ampacityOf } from '../tables/ampacity'
import { nearSourceM, type RuleSet } from '../tables/rulesets'
import type { Answer, NotChecked, RunAnswer, ShuntAnswer, Verdict, WorstCase } from './answers'
import { gapOf, guardedEnd, guardsOf } from './guarded'
import { meteredOf } from './metered'
import { natures } from './nature'
import { type Border, conductorOhms } from './network'
import type { State } from './solved'
import { type Allowed, type ConductorVerdict, verdict } from './verdict'
import { worse, worstOf } from './worst'

export interface RunCase {
  readonly design: Design
  readonly ruleSet: RuleSet
  readonly border: Border
  readonly states: readonly State[]
  readonly shunts: ReadonlyMap<PartId, ShuntAnswer>
  readonly poles: ReadonlyMap<string, Pole>
}

/** Answers about every conductor of a design. */
export function runsOf(c: RunCase): Map<ConductorId, RunAnswer> {
  const natureOf = natures(c.states[0]!.any.p, c.poles)
  return new Map(c.design.conductors.map((w) => [w.id, runOf(c, w, natureOf(w))]))
}

function runOf(c: RunCase, w: Conductor, nature: RunAnswer['nature']): RunAnswer {
  const forward = worstOf(c.states, w.id, 'max')
  const backward = worstOf(c.states, w.id, 'min')
  const worst = worse(forward, backward)
  const ampacity = ampacityOf(c.ruleSet, w, c.design.settings.ambientC)
  const from = guardedEnd(c.states, w.id, 'from')
  const to = guardedEnd(c.states, w.id, 'to')
  const sustained = sustainedOf(c, w.id)
  const limitA = 'value' in ampacity ? ampacity.value.amps * c.ruleSet.deviceShare.value : null
  const judged = judge(c, w, limitA)
  const ohms = conductorOhms(w)
  return {
    forward,
    backward,
    design: w.designCurrent
      ? { value: w.designCurrent.amps }
      : 'value' in worst
        ? { value: worst.value.amps }
        : worst,
    ownFigure: w.designCurrent !== null,
    from,
    to,
    ...verdictOf(judged, [from, to], sustained, limitA, w),
    sustained,
    ampacity: 'value' in ampacity ? ampacity : { ...ampacity, parts: [], conductors: [w.id] },
    ohms: ohms === null ? { notChecked: 'missing-run', parts: [], conductors: [w.id] } : { value: ohms },
    metered: c.border.conductors.has(w.id) ? meteredOf(values([forward, backward]), c.shunts.values()) : null,
    nature,
  }
}

const values = (answers: readonly Answer<WorstCase>[]): WorstCase[] =>
  answers.flatMap((a) => ('value' in a ? [a.value] : []))

/** Largest lasting current over all positions of the contacts; null where the conductor is no return. */
function sustainedOf({ states }: RunCase, id: ConductorId): RunAnswer['sustained'] {
  let worst: RunAnswer['sustained'] = null
  for (const { any } of states) {
    const e = any.p.branchIndex.get(id)
    if (e === undefined || any.returns.isReturn[e] !== 1) continue
    const answer = any.returns.sustained(e)
    if ('notChecked' in answer) {
      const gap = answer.notChecked
      return gap.code === 'missing-rating'
        ? gapOf(any, gap)
        : { notChecked: gap.code, parts: [], conductors: [] }
    }
    if (worst === null || above(answer.sustained, 'value' in worst ? worst.value.amps : 0))
      worst = { value: { amps: answer.sustained, guards: guardsOf(any, answer.limiting) } }
  }
  return worst
}

const above = (a: number | 'unlimited', b: number | 'unlimited'): boolean =>
  b !== 'unlimited' && (a === 'unlimited' || a > b)

const GRAVEST: readonly ConductorVerdict['verdict'][] = [
  'unprotected',
  'device-too-big',
  'sources-add-up',
  'not-checked',
  'near-source',
  'protected',
]

/** The gravest verdict over all positions of the contacts; null for what is not in the network. */
function judge(c: RunCase, w: Conductor, limitA: number | null): ConductorVerdict | null {
  const allowed: Allowed = { amps: limitA, aheadM: nearSourceM(c.ruleSet, w.sheathed) }
  const verdicts = c.states.flatMap(({ any: { border, p, protection } }) => {
    const e = p.branchIndex.get(w.id)
    if (e === undefined) return []
    const lengthM = (branch: number): number | null =>
      border.conductors.get(p.form.branches[branch]!.id)?.lengthM ?? null
    const end = (side: 'from' | 'to') => {
      const into = (side === 'from' ? protection.intoFrom : protection.intoTo)[e]
      return {
        protection: protection.end(e, side),
        ahead: into === Number.POSITIVE_INFINITY ? protection.ahead(e, side, lengthM) : null,
      }
    }
    return [verdict(end('from'), end('to'), allowed)]
  })
  return GRAVEST.flatMap((name) => verdicts.filter((v) => v.verdict === name))[0] ?? null
}

type Judged = Pick<RunAnswer, 'verdict' | 'aheadM' | 'aheadAllowedM'>

function verdictOf(
  judged: ConductorVerdict | null,
  ends: readonly (RunAnswer['from'] | RunAnswer['to'])[],
  sustained: RunAnswer['sustained'],
  limitA: number | null,
  w: Conductor,
): Judged {
  const none = { aheadM: null, aheadAllowedM: null }
  if (judged === null)
    return { verdict: { notChecked: 'not-in-network', parts: [], conductors: [] }, ...none }
  const gap = ends.find((end): end is NotChecked => 'notChecked' in end)
  if (gap) return { verdict: gap, ...none }
  const thin =
    sustained !== null &&
    'value' in sustained &&
    limitA !== null &&
    above(sustained.value.amps, limitA * (1 + 1e-9))
  switch (judged.verdict) {
    case 'unprotected':
      return {
        verdict: { value: 'unprotected' },
        aheadM: typeof judged.aheadM === 'number' ? judged.aheadM : null,
        aheadAllowedM: judged.allowedM,
      }
    case 'near-source':
      return {
        verdict: { value: thin ? 'thin-return' : 'near-source' },
        aheadM: judged.aheadM,
        aheadAllowedM: judged.allowedM,
      }
    case 'device-too-big':
    case 'sources-add-up':
      return { verdict: { value: judged.verdict }, ...none }
    case 'not-checked':
      return { verdict: unjudged(judged.because, w), ...none }
    case 'protected':
      return { verdict: returnVerdict(thin, sustained, limitA, w), ...none }
  }
}

/** A conductor that no source feeds from its ends is judged by what it can carry as a return. */
function returnVerdict(
  thin: boolean,
  sustained: RunAnswer['sustained'],
  limitA: number | null,
  w: Conductor,
): Answer<Verdict> {
  if (thin) return { value: 'thin-return' }
  if (sustained !== null && 'notChecked' in sustained) return sustained
  if (sustained !== null && sustained.value.amps !== 0 && limitA === null)
    return { notChecked: 'missing-size', parts: [], conductors: [w.id] }
  return { value: 'protected' }
}

function unjudged(
  because: Extract<ConductorVerdict, { verdict: 'not-checked' }>['because'],
  w: Conductor,
): NotChecked {
  switch (because.code) {
    case 'missing-length':
      return { notChecked: 'missing-run', parts: [], conductors: because.conductors }
    case 'missing-ampacity':
      return { notChecked: 'missing-size', parts: [], conductors: [w.id] }
    default:
      return { notChecked: because.code, parts: [], conductors: [] }
  }
}
