import { type ConductorId, conductorById } from '../../engine'
import { doEdit, useOpen } from './open'
import { pathEdit } from './path'
import { say } from './say'
import { seenDesign } from './seen'
import { useView } from './view'

/** The selected conductors that are held by corners laid by hand. */
export function heldByHand(): readonly ConductorId[] {
  const design = seenDesign()
  return [...useView.getState().conductors].filter((id) => conductorById(design, id)?.path.length)
}

/** Lets them go: the layout finds their way again. */
export function runFreely(): void {
  const held = heldByHand()
  if (held.length === 0) {
    say('No selected conductor is laid by hand.')
    return
  }
  const { design } = useOpen.getState()
  const what = held.length === 1 ? conductorById(design, held[0]!)!.number : `${held.length} conductors`
  const free = held.map((id) => pathEdit(id, []))
  if (doEdit(`Let ${what} run freely`, { do: 'all', edits: free })) say(`${what}: runs freely again.`)
}
