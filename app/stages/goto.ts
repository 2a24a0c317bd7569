import type { ConductorId, PartId } from '../../engine'
import { lookAt, select, setStage } from '../store/view'

/** Goes to the drawing with these selected and in sight. */
export function showOnDrawing(at: {
  readonly parts?: readonly PartId[]
  readonly conductors?: readonly ConductorId[]
}): void {
  const { parts = [], conductors = [] } = at
  setStage('drawing')
  select(parts, conductors)
  lookAt(parts, conductors, true)
}
