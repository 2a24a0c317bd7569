import type { BenchStep, Tick, WorkedOn } from '../model/bench'
import type { Conductor, Design } from '../model/design'
import { builtFacts, type Recorded, sameValue } from './benchfacts'
import { recordOf } from './benchrecord'
import { netsOf } from './nets'

/** Something that was so when a step was ticked, and is otherwise in the drawing now. */
export interface SinceThen {
  readonly key: keyof WorkedOn | 'number'
  readonly was: Recorded
  readonly now: Recorded
}

export interface StepAnswer {
  readonly step: BenchStep
  /** Again: it was done, but the drawing has changed since in what decides it. */
  readonly state: 'open' | 'done' | 'again'
  readonly tick?: Tick
  readonly since: readonly SinceThen[]
}

/** What it is to the workshop: its own work, a lead that comes made up, or mains, which is for licensed persons only. */
export function workOf(design: Design, c: Conductor): 'conductor' | 'data' | 'mains' {
  const nets = netsOf(design)
  const poles = [nets.terminal(c.from)?.pole, nets.terminal(c.to)?.pole]
  return poles.includes('mains') ? 'mains' : poles.includes('data') ? 'data' : 'conductor'
}

/**
 * Steps of a conductor as built, in order; those that do not apply are not among them. `wired`: a design with the same
 * parts and conductors, of which the nets are known already. O(1) after the first.
 */
export function benchSteps(
  design: Design,
  drawn: Conductor,
  built: Conductor = drawn,
  wired: Design = design,
): StepAnswer[] {
  const record = recordOf(design, drawn.id)
  return stepsFor(wired, built).map((step) => {
    const tick = record?.ticks.find((t) => t.step === step)
    if (!tick?.done) return { step, state: 'open', since: [] }
    const since = changesSince(design, wired, drawn, built, tick)
    return { step, state: since.length === 0 ? 'done' : 'again', tick, since }
  })
}

export function stepsFor(design: Design, c: Conductor): readonly BenchStep[] {
  const work = workOf(design, c)
  if (work === 'mains') return []
  if (work === 'data') return ['labelled', 'terminated']
  const forms = [c.from, c.to].map((end) => netsOf(design).terminal(end)?.stud ?? null)
  const torqued = forms.some((form) => form === null || isTightened(form))
  return ['cut', 'crimped', 'labelled', 'terminated', ...(torqued ? (['torqued'] as const) : [])]
}

/** Is a terminal of this form tightened by a nut or a screw? */
export const isTightened = (form: string): boolean => /^(M\d|post |clamp )/.test(form)

/** What decides a step, of a conductor as it is to be. */
export function workedOn(design: Design, c: Conductor, step: BenchStep): WorkedOn {
  const form = (end: 'from' | 'to') => netsOf(design).terminal(c[end])?.stud ?? null
  switch (step) {
    case 'cut':
      return { size: c.size, lengthM: c.lengthM, colour: c.colour }
    case 'crimped':
      return { size: c.size, fromForm: form('from'), toForm: form('to') }
    case 'labelled':
    case 'terminated':
    case 'torqued':
      return { from: c.from, to: c.to }
  }
}

/** What is otherwise now; of what is recorded as built otherwise, the record tells. */
function changesSince(
  design: Design,
  wired: Design,
  drawn: Conductor,
  built: Conductor,
  tick: Tick,
): SinceThen[] {
  const told = new Set(
    builtFacts(design, drawn.id).flatMap((f) => (f.fact.value === null ? [] : f.fact.what)),
  )
  const now = workedOn(wired, built, tick.step)
  const changed = (Object.keys(tick.on ?? {}) as (keyof WorkedOn)[]).flatMap((key): SinceThen[] => {
    const of = key === 'fromForm' ? 'from' : key === 'toForm' ? 'to' : key
    if (told.has(of as never) || !Object.hasOwn(now, key)) return []
    const [a, b] = [tick.on![key], now[key]]
    return sameValue(a, b) ? [] : [{ key, was: a, now: b }]
  })
  const renamed = tick.step === 'labelled' && tick.number !== built.number
  return renamed ? [{ key: 'number', was: tick.number, now: built.number }, ...changed] : changed
}
