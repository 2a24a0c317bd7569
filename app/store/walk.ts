import { type Conductor, conductorById, type PartId, partById, terminalsOf } from '../../engine'
import { terminalName } from './join'
import { laidOf } from './laid'
import { useLatest } from './latest'
import { say } from './say'
import { seenDesign } from './seen'
import { lookAt, select, useView } from './view'

/** Walking along the wiring by keys: round the conductors of a part, and over each to the part at its far end. */

/** The part that the walk goes round. */
let at: PartId | null = null

interface Stand {
  readonly part: PartId
  readonly conductor: Conductor | null
}

/** Where the selection stands: on a part, or on a conductor of one. */
function stand(): Stand | null {
  const { parts, conductors } = useView.getState()
  if (parts.size === 1 && conductors.size === 0) return { part: [...parts][0]!, conductor: null }
  if (conductors.size !== 1 || parts.size > 0) return null
  const conductor = conductorById(seenDesign(), [...conductors][0]!)
  if (!conductor) return null
  const { from, to } = conductor
  return { part: at === to.part || at === from.part ? at : from.part, conductor }
}

export const nowhereToWalk = (): boolean => stand() === null

/** The conductors of a part that the view draws, in the order of its terminals. */
function conductorsAt(id: PartId): readonly Conductor[] {
  const design = seenDesign()
  const part = partById(design, id)
  if (!part) return []
  const { scene } = useLatest.getState()
  const order = terminalsOf(part, design.conductors).map((t) => t.key)
  const placeOf = ({ from, to }: Conductor) => order.indexOf(from.part === id ? from.terminal : to.terminal)
  return design.conductors
    .filter((c) => (c.from.part === id || c.to.part === id) && laidOf(scene, c.id))
    .sort((a, b) => placeOf(a) - placeOf(b))
}

/** To the next conductor of the part, or the one before. */
export function walkRound(step: 1 | -1): void {
  const now = stand()
  if (!now) return
  const all = conductorsAt(now.part)
  const designation = partById(seenDesign(), now.part)?.designation ?? ''
  if (all.length === 0) {
    say(`${designation} has no conductor in this view.`)
    return
  }
  const before = now.conductor ? all.findIndex((c) => c.id === now.conductor?.id) : step > 0 ? -1 : all.length
  const i = (before + step + all.length) % all.length
  const next = all[i]!
  at = now.part
  select([], [next.id])
  lookAt([], [next.id])
  say(
    `${next.number}, ${i + 1} of ${all.length} at ${designation}: ${terminalName(next.from)} to ${terminalName(next.to)}.`,
  )
}

/** Over the selected conductor to the part at its far end. */
export function walkOver(): void {
  const now = stand()
  if (!now?.conductor) {
    if (now) walkRound(1)
    return
  }
  const { from, to } = now.conductor
  const far = from.part === now.part ? to.part : from.part
  at = far
  select([far])
  lookAt([far], [])
  const part = partById(seenDesign(), far)
  say(`${[part?.designation, part?.name].filter(Boolean).join(', ')}, over ${now.conductor.number}.`)
}
