import type { Design, PartId } from '../../model/design'
import { effectsOf } from './effects'
import type { Handle } from './handles'
import type { Thing } from './things'

/** What a switch does to the things of a design. */
export interface SwitchEffect {
  readonly handle: Handle
  /** What goes off when it alone is opened, loads first. */
  readonly off: readonly Thing[]
  /** A changeover: what goes off and on in each position, against how it usually stands. */
  readonly positions: readonly {
    readonly position: string
    readonly isUsual: boolean
    readonly off: readonly Thing[]
    readonly on: readonly Thing[]
  }[]
}

/** What every switch, breaker and plug does. Costs the effects. */
export function switchEffects(design: Design): SwitchEffect[] {
  const { handles, things, opened, thrown, working, usual } = effectsOf(design)
  const inOrder = (test: (id: PartId) => boolean): Thing[] => {
    const found = things.filter((t) => test(t.part.id))
    return [...found.filter((t) => t.role !== 'charging'), ...found.filter((t) => t.role === 'charging')]
  }
  return handles.map((handle) => ({
    handle,
    off: inOrder((id) => opened.get(handle)?.has(id) ?? false),
    positions: [...(thrown.get(handle) ?? [])].map(([position, works]) => ({
      position,
      isUsual: usual.throws.get(handle.throws!.id) === position,
      off: inOrder((id) => working.has(id) && !works.has(id)),
      on: inOrder((id) => !working.has(id) && works.has(id)),
    })),
  }))
}
