import type { ConductorId, Design } from '../../model/design'
import { GRAVITY, type Level } from '../../model/level'
import type { MaybeUnlimited } from '../../units'
import type { Answer, Answers } from '../answers'

/** As much of a finding as a comparison needs. */
export interface FoundThing {
  readonly key: string
  readonly level: Level
}

/** Worst-case current of a conductor that is on both sides. */
export interface CurrentChange {
  readonly conductor: ConductorId
  readonly before: Answer<MaybeUnlimited>
  readonly after: Answer<MaybeUnlimited>
}

/** What differs in the answers to two states of a design. */
export interface ResultChanges<F extends FoundThing> {
  readonly currents: readonly CurrentChange[]
  readonly newFindings: readonly F[]
  readonly goneFindings: readonly F[]
  /** Still there, at another level: graver or less grave. */
  readonly otherLevel: readonly { readonly before: F; readonly after: F }[]
}

export interface State<F extends FoundThing> {
  readonly design: Design
  readonly answers: Answers
  readonly findings: readonly F[]
}

/** Part by which a current may differ before it is told: figures are worked out afresh, and sums round. */
const TOLERANCE = 0.001

/** Pure; linear in both. */
export function compareResults<F extends FoundThing>(before: State<F>, after: State<F>): ResultChanges<F> {
  const was = new Map(before.findings.map((f) => [f.key, f]))
  const is = new Map(after.findings.map((f) => [f.key, f]))
  return {
    currents: after.design.conductors.flatMap(({ id }) => {
      const a = before.answers.runs.get(id)?.design
      const b = after.answers.runs.get(id)?.design
      return a && b && !isAlike(a, b) ? [{ conductor: id, before: a, after: b }] : []
    }),
    newFindings: after.findings.filter((f) => !was.has(f.key)),
    goneFindings: before.findings.filter((f) => !is.has(f.key)),
    otherLevel: after.findings.flatMap((f) => {
      const then = was.get(f.key)
      return then && GRAVITY[then.level] !== GRAVITY[f.level] ? [{ before: then, after: f }] : []
    }),
  }
}

function isAlike(a: Answer<MaybeUnlimited>, b: Answer<MaybeUnlimited>): boolean {
  if (!('value' in a) || !('value' in b)) return 'value' in a === 'value' in b
  if (a.value === 'unlimited' || b.value === 'unlimited') return a.value === b.value
  return Math.abs(a.value - b.value) <= TOLERANCE * Math.max(Math.abs(a.value), Math.abs(b.value), 1)
}
