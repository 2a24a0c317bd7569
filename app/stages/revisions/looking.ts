import { create } from 'zustand'
import type { SceneView } from '../../../engine'

/** What the page of revisions looks at; kept while another stage is in front. */
interface Looking {
  /** Design that the choice below was made for. */
  readonly design: string
  /** null: the usual pair. */
  readonly pair: { readonly from: string; readonly to: string } | null
  /** One state that is only looked at; null: two are compared. */
  readonly alone: string | null
  readonly beside: boolean
  readonly view: SceneView
  /** Key of the row that is shown on the drawing. */
  readonly row: string | null
}

const START: Looking = { design: '', pair: null, alone: null, beside: false, view: 'single-line', row: null }

export const useLooking = create<Looking>(() => START)

/** Another design is on the table: what was chosen for the one before does not hold. */
export function lookAtDesign(design: string): void {
  if (useLooking.getState().design !== design) useLooking.setState({ ...START, design })
}

export const choosePair = (from: string, to: string) =>
  useLooking.setState({ pair: { from, to }, alone: null, row: null })
export const lookAlone = (alone: string | null) => useLooking.setState({ alone, row: null })
export const setBeside = (beside: boolean) => useLooking.setState({ beside })
export const setView = (view: SceneView) => useLooking.setState({ view, row: null })
export const pickRow = (row: string | null) => useLooking.setState({ row })
