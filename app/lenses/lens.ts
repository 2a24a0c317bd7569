import type { Answers, ConductorId, RunAnswer } from '../../engine'
import { CURRENT_LOOKS, currentOf } from './current'
import { DROP_LOOKS, dropOf } from './drop'
import type { Look, Painted } from './look'
import { METER_LOOKS, meterOf } from './meter'
import { PROTECTION_LOOKS, protectionOf } from './protection'

/** A lens lies over the drawing and shows one thing about every conductor. */
export type Lens = 'current' | 'protection' | 'meter' | 'drop'

export interface LensFacts {
  readonly title: string
  /** Heads the key on the sheet. */
  readonly says: string
  readonly key: string
  readonly looks: readonly Look[]
}

export const LENSES: Readonly<Record<Lens, LensFacts>> = {
  current: {
    title: 'Worst-case current',
    says: 'Worst-case current of each conductor',
    key: '5',
    looks: CURRENT_LOOKS,
  },
  protection: {
    title: 'Protection',
    says: 'Point at a fuse or breaker: what it guards lights up. Select a conductor: what guards it is ringed.',
    key: '6',
    looks: PROTECTION_LOOKS,
  },
  meter: {
    title: 'Meter truth',
    says: 'What the load-side shunt sees of each conductor',
    key: '7',
    looks: METER_LOOKS,
  },
  drop: {
    title: 'Voltage drop',
    says: 'Drop in per cent at each load; on a conductor, its share of it at the load it is worst for',
    key: '8',
    looks: DROP_LOOKS,
  },
}

export const LENS_KEYS = Object.keys(LENSES) as readonly Lens[]

/**
 * A line seen through a lens. `ids`: the conductors that it stands for. `guarded`: conductors of the device that is
 * pointed at; null: none is. Answers of a conductor that is new to them are left out. O(ids).
 */
export function seenThrough(
  lens: Lens,
  answers: Answers,
  ids: readonly ConductorId[],
  guarded: ReadonlySet<ConductorId> | null,
): Painted {
  const runs = ids.flatMap((id): readonly RunAnswer[] => {
    const run = answers.runs.get(id)
    return run ? [run] : []
  })
  switch (lens) {
    case 'current':
      return currentOf(runs)
    case 'protection':
      return protectionOf(runs, guarded && ids.some((id) => guarded.has(id)))
    case 'meter':
      return meterOf(runs)
    case 'drop':
      return dropOf(answers.drops, ids, runs)
  }
}
