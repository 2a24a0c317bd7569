import type { Design, PartId } from '../../model/design'
import { effectsOf } from './effects'
import type { Handle } from './handles'
import type { Thing } from './things'

/** What a switch does to the things of a design. */
export interface SwitchEffect {
  readonly handle: Handle
  /** What goes off when it alone is opened, loads first. */
  readonly off: readonly Thing[]
  /** What comes on then. */
  readonly on: readonly Thing[]
}

/** What every switch, breaker and plug does. Costs the effects. */
export function switchEffects(design: Design): SwitchEffect[] {
  const { things, opened } = effectsOf(design)
  const inOrder = (ids: ReadonlySet<PartId>): Thing[] => {
    const found = things.filter((t) => ids.has(t.part.id))
    return [...found.filter((t) => t.role !== 'charging'), ...found.filter((t) => t.role === 'charging')]
  }
  return [...opened].map(([handle, { off, on }]) => ({ handle, off: inOrder(off), on: inOrder(on) }))
}
