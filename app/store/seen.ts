import { type Design, designIn, type Edit } from '../../engine'
import { useLatest } from './latest'
import { useOpen } from './open'
import { useView } from './view'

/** The open design as the view shows it: parts where they stand in that view. */
export const seenDesign = (): Design => designIn(useOpen.getState().design, useView.getState().view)

/** Something of the open design as the view shows it. */
export function useSeen<T>(select: (seen: Design) => T): T {
  const view = useView((s) => s.view)
  return useOpen((s) => select(designIn(s.design, view)))
}

/** The design that the newest layout is of, as it stands there; null: there is none yet. */
export function laidOutSeen(): Design | null {
  const { laidOut, scene } = useLatest.getState()
  return laidOut && scene && designIn(laidOut, scene.view)
}

/** What moves parts moves them in the view that one looks at. */
export function inThisView(edit: Edit): Edit {
  if (edit.do === 'all') return { do: 'all', edits: edit.edits.map(inThisView) }
  return edit.do === 'move' ? { ...edit, view: useView.getState().view } : edit
}
