import type { Answers } from '../calc/answers'
import { asBuilt } from '../edit/benchfacts'
import type { Design } from '../model/design'
import { sortAccepted } from './accepted'
import { analyse } from './analyse'
import type { Finding } from './finding'

/** What the checks say of a design as it was built. */
export interface BuiltAnalysed {
  /** The design as built: findings and answers speak of it. */
  readonly design: Design
  readonly answers: Answers
  readonly findings: readonly Finding[]
  /** Those that the drawing does not give, or less gravely: what building otherwise has brought about. */
  readonly worse: readonly Finding[]
}

/**
 * Runs every check on the design as it was built and sorts out what the drawing does not give. `drawn`: the findings of
 * the drawing. null: nothing was built otherwise. Cost of one analysis.
 */
export function builtFindings(design: Design, drawn: readonly Finding[]): BuiltAnalysed | null {
  const built = asBuilt(design)
  if (built === design) return null
  const { answers, findings } = analyse(built)
  const open = sortAccepted(built, findings).open
  const before = drawn.map(({ key, level, actual }) => ({
    ...{ key, level, reason: 'stands in the drawing' },
    ...(actual ? { actual: actual.value } : {}),
  }))
  return { design: built, answers, findings, worse: sortAccepted({ ...built, accepted: before }, open).open }
}
