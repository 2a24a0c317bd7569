import type { Answers } from '../calc/answers'
import { answersOf } from '../calc/answersof'
import { polesOf } from '../calc/network'
import type { Design } from '../model/design'
import { findingsOf } from './all'
import type { Finding } from './finding'

export interface Analysed {
  readonly answers: Answers
  readonly findings: readonly Finding[]
}

/** Everything that the engine has to say about a design: figures and findings. Pure; cost as in answersOf. */
export function analyse(design: Design): Analysed {
  const analysis = answersOf(design)
  return { answers: analysis.answers, findings: findingsOf({ design, poles: polesOf(design), ...analysis }) }
}
