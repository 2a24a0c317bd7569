import { create } from 'zustand'
import type { ConductorId, PartId, XY } from '../../engine'
import type { Box } from './view'

/**
 * What the hand does on the sheet, in stores of their own: they change with each step of the hand, and only what
 * moves with it may listen to them.
 */

/** What is under the hand. It changes when the hand takes hold and when it lets go. */
interface Hand {
  readonly parts: ReadonlySet<PartId>
  /** A conductor of which one stretch is held. */
  readonly conductor: ConductorId | null
}

/** How far it has come. It changes with each step. */
interface Motion {
  /** How far the parts are from where they stand in the design, mm. */
  readonly by: XY
  /** The held conductor as it would be, mm. */
  readonly line: readonly XY[]
}

const NOTHING: ReadonlySet<PartId> = new Set()
const STILL: XY = [0, 0]

export const useHand = create<Hand>(() => ({ parts: NOTHING, conductor: null }))
export const useMotion = create<Motion>(() => ({ by: STILL, line: [] }))

/** What the router makes of the conductors of the carried parts, for one place of the hand; null: for none yet. */
interface CarriedWays {
  readonly by: XY | null
  readonly ways: ReadonlyMap<ConductorId, readonly XY[]>
}

export const useWays = create<CarriedWays>(() => ({ by: null, ways: new Map() }))

/** Rectangles under the hand as they would be, mm. */
export const useGhosts = create<{ readonly boxes: readonly Box[] }>(() => ({ boxes: [] }))

/** Where the pointer last was on the sheet, mm; null: outside. */
export const usePointer = create<{ readonly at: XY | null }>(() => ({ at: null }))

/** These parts are carried, and are so far from where they stand, mm. */
export function carry(parts: Iterable<PartId>, by: XY): void {
  const ids = new Set(parts)
  const { parts: held } = useHand.getState()
  const { by: before } = useMotion.getState()
  if (by[0] !== before[0] || by[1] !== before[1]) useMotion.setState({ by })
  if (ids.size !== held.size || [...ids].some((id) => !held.has(id))) useHand.setState({ parts: ids })
}

/** Nothing is carried any more. */
export function putDown(): void {
  if (useHand.getState().parts.size > 0) useHand.setState({ parts: NOTHING })
  useMotion.setState({ by: STILL })
}

/** One stretch of a conductor is held: its line as it would be; null: it is let go. */
export function setPulled(
  pulled: { readonly conductor: ConductorId; readonly points: readonly XY[] } | null,
) {
  if (pulled) useMotion.setState({ line: pulled.points })
  const conductor = pulled?.conductor ?? null
  if (useHand.getState().conductor !== conductor) useHand.setState({ conductor })
}

export const setGhosts = (boxes: readonly Box[]): void => useGhosts.setState({ boxes })
export const setPointer = (at: XY | null): void => usePointer.setState({ at })
