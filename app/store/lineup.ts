import { type Alignment, alignEdit, distributeEdit } from '../../engine'
import { doEdit } from './open'
import { inThisView, seenDesign } from './seen'
import { useView } from './view'

const selected = () => [...useView.getState().parts]

export function lineUp(to: Alignment): void {
  if (selected().length > 1) doEdit('Line up', inThisView(alignEdit(seenDesign(), selected(), to)))
}

export function spread(along: 'x' | 'y'): void {
  if (selected().length > 2) doEdit('Even gaps', inThisView(distributeEdit(seenDesign(), selected(), along)))
}
