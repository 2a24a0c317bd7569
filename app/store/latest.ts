import { create } from 'zustand'
import type { Answers, Design, Finding, Scene } from '../../engine'

/** The newest results. Each replaces the last one whole; `scene` may be of an older design than `answers`. */
interface LatestState {
  readonly answers: Answers | null
  readonly findings: readonly Finding[]
  /** The design that answers and findings speak of. */
  readonly checked: Design | null
  readonly scene: Scene | null
  /** The design that the scene was laid out for. */
  readonly laidOut: Design | null
  /** Not null: the last computation broke off, and why. Nothing shown before it is to be trusted then. */
  readonly failure: string | null
}

export const useLatest = create<LatestState>(() => ({
  answers: null,
  findings: [],
  checked: null,
  scene: null,
  laidOut: null,
  failure: null,
}))
