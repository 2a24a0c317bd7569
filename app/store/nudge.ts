import { partById } from '../../engine'
import { doEdit, useOpen } from './open'
import { useView } from './view'

const STEP_MM = 2.5

/** Moves the selected parts by grid steps. */
export function nudge(dx: number, dy: number, steps = 1): void {
  const { design } = useOpen.getState()
  const to = [...useView.getState().parts].flatMap((id) => {
    const part = partById(design, id)
    return part ? [{ part: id, x: part.x + dx * steps * STEP_MM, y: part.y + dy * steps * STEP_MM }] : []
  })
  if (to.length) doEdit('Nudge', { do: 'move', to })
}
