import { apply } from '../../edit/apply'
import type { ConductorId, Design } from '../../model/design'
import { ruleSetOf } from '../../model/rules'
import { RULE_SETS } from '../../tables/rulesets'
import { dropsOf } from '../drops'
import { statesOf } from '../states'
import { sizeIt } from './sizeit'
import type { LeftOut, NoSize, Sized, SizedInPart, SizingScope } from './sizing'

/** Choices made at most: each leaves out what no standard size or rating would do for, and tries the rest again. */
const MOST_TRIES = 40

type Leaving = { readonly [K in keyof LeftOut]: Set<string> }

/**
 * As `sizeIt`; where not everything can be held, what can is chosen and the rest is told with its reason. Left as they are: a
 * rating or a conductor for which nothing made would do, and conductors that serve loads alone whose drop no size keeps; what
 * such a load shares with others gets no thinner. Cost: that of `sizeIt` for each round of reasons.
 */
export function sizeInPart(design: Design, scope: SizingScope): SizedInPart {
  const none: NoSize[] = []
  const left: Leaving = {
    conductors: new Set(),
    ways: new Set(),
    drops: new Set(),
    noThinner: new Set(),
  }
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const sizing = sizeIt(design, scope, left)
    if ('infeasible' in sizing) {
      none.push(...sizing.infeasible)
      if (sizing.infeasible.some((no) => no.key === 'unsettled')) break
      for (const no of sizing.infeasible) leaveOut(left, no)
      continue
    }
    const alone = servingNone(design, sizing, left)
    if (alone.length === 0)
      return none.length > 0 && sizing.choices.length === 0 ? { sized: null, none } : { sized: sizing, none }
    for (const id of alone) left.conductors.add(id)
  }
  return { sized: null, none }
}

function leaveOut(left: Leaving, no: NoSize): void {
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

/** Chosen conductors on the way of loads whose drop is not kept, and of no other load. */
function servingNone(design: Design, { edit, choices }: Sized, left: LeftOut): ConductorId[] {
  if (left.drops.size === 0) return []
  const now = apply(design, edit)
  if (now.refused) return []
  const drops = dropsOf(now.design, ruleSetOf(design) ?? RULE_SETS[0]!, statesOf(now.design).states)
  const serving = new Set(
    [...drops].flatMap(([id, { drop }]) =>
      'value' in drop && !left.drops.has(id) ? drop.value.conductors.map((c) => c.conductor) : [],
    ),
  )
  return choices.flatMap((c) =>
    'conductor' in c && left.noThinner.has(c.conductor) && !serving.has(c.conductor) ? [c.conductor] : [],
  )
}
