import { type Alignment, alignEdit, distributeEdit } from '../../engine'
import { doEdit, useOpen } from './open'
import { useView } from './view'

const selected = () => [...useView.getState().parts]

export function lineUp(to: Alignment): void {
  if (selected().length > 1) doEdit('Line up', alignEdit(useOpen.getState().design, selected(), to))
}

export function spread(along: 'x' | 'y'): void {
  if (selected().length > 2) doEdit('Even gaps', distributeEdit(useOpen.getState().design, selected(), along))
}
