import { arrangeEdit, arrangeLinksEdit, designIn, type Edit, type PartId } from '../../engine'
import { useLatest } from './latest'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { inThisView, seenDesign } from './seen'
import { lookAtAll, useView } from './view'

function arranged(only?: ReadonlySet<PartId>): Edit {
  const { answers } = useLatest.getState()
  const edit = useView.getState().view === 'data' ? arrangeLinksEdit : arrangeEdit
  return inThisView(edit(seenDesign(), answers, only))
}

/** Lays the whole drawing out for reading, in the view that one looks at. */
export function arrangeAll(): void {
  if (doEdit('Arrange', arranged())) lookAtAll()
}

/** The same with the selected parts alone, where they are. */
export function arrangeSelected(): void {
  const { parts } = useView.getState()
  doEdit(`Arrange ${parts.size} parts`, arranged(parts))
}

/** The parts that stand elsewhere in this view than in the single-line one: of the selection, or of all. */
function ownPlaced(): readonly string[] {
  const { view, parts } = useView.getState()
  const { design } = useOpen.getState()
  if (view === 'single-line' || designIn(design, view) === design) return []
  return design.parts.filter((p) => p.at?.[view] && (parts.size === 0 || parts.has(p.id))).map((p) => p.id)
}

export const nothingToFollow = (): boolean => ownPlaced().length === 0

/** Lets them stand where the single-line view has them, and follow it from now on. */
export function followSingleLine(): void {
  const { view } = useView.getState()
  const parts = ownPlaced()
  if (view === 'single-line' || parts.length === 0) return
  const what = parts.length === 1 ? '1 part' : `${parts.length} parts`
  if (doEdit(`Place ${what} as in the single-line view`, { do: 'follow', parts, view }))
    say(`${what} placed as in the single-line view.`)
}
