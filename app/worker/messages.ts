import type { Answers, Design, Finding, Scene, SceneView } from '../../engine'

export interface Request {
  readonly seq: number
  readonly design: Design
  readonly view: SceneView
}

/** Answers come first, the laid-out scene as soon as it is ready; each replaces the one before it whole. */
export type Reply =
  | {
      readonly is: 'answers'
      readonly seq: number
      readonly answers: Answers
      readonly findings: readonly Finding[]
    }
  | { readonly is: 'scene'; readonly seq: number; readonly scene: Scene }
  | { readonly is: 'failure'; readonly seq: number; readonly why: string }
