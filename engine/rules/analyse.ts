import type { Answers } from '../calc/answers'
import { type Analysis, answersOf } from '../calc/answersof'
import { polesOf } from '../calc/network'
import { haveSameAnswers, onKnownObjects } from '../calc/sameanswers'
import type { Design } from '../model/design'
import { findingsOf } from './all'
import type { Finding } from './finding'

export interface Analysed {
  readonly answers: Answers
  readonly findings: readonly Finding[]
}

/** Everything that the engine has to say about a design: figures and findings. Pure; cost as in answersOf. */
export const analyse = (design: Design): Analysed => withFindings(design, answersOf(design))

/**
 * The same for one design after another: where the next differs from the last in nothing that an answer looks at (parts
 * moved, renamed, conductors routed otherwise) the answers are those of the last, and only the findings are made anew.
 * Parts that are copies of the last ones are taken for them, so that their models are not made again.
 */
export function analyser(): (design: Design) => Analysed {
  let last: { readonly design: Design; readonly analysis: Analysis } | null = null
  return (next) => {
    const design = last ? onKnownObjects(next, last.design) : next
    const analysis = last && haveSameAnswers(last.design, design) ? last.analysis : answersOf(design)
    last = { design, analysis }
    return withFindings(design, analysis)
  }
}

const withFindings = (design: Design, analysis: Analysis): Analysed => ({
  answers: analysis.answers,
  findings: findingsOf({ design, poles: polesOf(design), ...analysis }),
})
