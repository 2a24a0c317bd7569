import { partById } from '../../engine'
import { moveTexts, moveZone, zoneById } from './onsheet'
import { doEdit } from './open'
import { inThisView, seenDesign } from './seen'
import { useView } from './view'

const STEP_MM = 2.5

/** Moves the selected parts and texts, or the selected outline with its parts, by grid steps. */
export function nudge(dx: number, dy: number, steps = 1): void {
  const design = seenDesign()
  const { parts, texts, zone: zoneId } = useView.getState()
  const [right, down] = [dx * steps * STEP_MM, dy * steps * STEP_MM]
  const zone = zoneById(zoneId)
  if (zone) {
    moveZone(zone, right, down)
    return
  }
  const to = [...parts].flatMap((id) => {
    const part = partById(design, id)
    return part ? [{ part: id, x: part.x + right, y: part.y + down }] : []
  })
  if (to.length + texts.size > 0)
    doEdit('Nudge', inThisView({ do: 'all', edits: [{ do: 'move', to }, ...moveTexts(texts, right, down)] }))
}
