import type { Design } from '../../model/design'
import { sizeIt } from './sizeit'
import type { LeftOut, NoSize, SizedInPart, SizingScope } from './sizing'

/** Choices made at most: each leaves out what no standard size or rating would do for, and tries the rest again. */
const MOST_TRIES = 40

/**
 * As `sizeIt`; where not everything can be held, what can is chosen and the rest is told with its reason. A conductor or a
 * rating for which nothing made would do is left as it is; a load whose drop no size keeps has its conductors chosen by their
 * currents, and none of them gets thinner than it is. Cost: that of `sizeIt` for each round of reasons.
 */
export function sizeInPart(design: Design, scope: SizingScope): SizedInPart {
  const none: NoSize[] = []
  const left = {
    conductors: new Set<string>(),
    ways: new Set<string>(),
    drops: new Set<string>(),
    noThinner: new Set<string>(),
  } satisfies LeftOut
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const sizing = sizeIt(design, scope, left)
    if (!('infeasible' in sizing))
      return none.length > 0 && sizing.choices.length === 0 ? { sized: null, none } : { sized: sizing, none }
    none.push(...sizing.infeasible)
    if (sizing.infeasible.some((no) => no.key === 'unsettled')) break
    for (const no of sizing.infeasible) leaveOut(left, no)
  }
  return { sized: null, none }
}

function leaveOut(left: { readonly [K in keyof LeftOut]: Set<string> }, no: NoSize): void {
  switch (no.key) {
    case 'ampacity':
      left.conductors.add(no.conductor)
      return
    case 'rating':
      left.ways.add(`${no.part}/${no.way}`)
      return
    case 'drop':
      left.drops.add(`${no.part}/${no.device}`)
      for (const id of no.on) left.noThinner.add(id)
      return
    case 'unsettled':
  }
}
