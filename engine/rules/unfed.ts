import type { PartId } from '../model/design'
import { joinedNodes } from './looseend'
import { isKnown, reversedDevices, shortedDevices } from './polarity'
import { type Case, found, type Rule } from './rule'

/** J6: a load that nothing can feed in any position of the contacts: its current is in no figure, and no check is made of it. */
export const unfed: Rule = {
  id: 'J6',
  looksFor: 'loads that no source feeds',
  check: (c) => {
    const parts = fedByNothing(c)
    return parts.length === 0 ? [] : [found('J6', 'warning', 'method', { parts }, { parts })]
  },
}

function fedByNothing(c: Case): PartId[] {
  const joined = joinedNodes(c)
  const apart = new Set([...shortedDevices(c), ...reversedDevices(c)])
  const loads = c.border.form.devices.filter(
    (d) =>
      d.sustainedFault === 0 &&
      d.min !== 0 &&
      isKnown(c, d.id) &&
      !apart.has(d.id) &&
      joined.has(d.positive) &&
      joined.has(d.negative),
  )
  const fed = new Set<string>()
  for (const { any, opened } of c.states) {
    if (opened) continue
    /** Between one pair of nets, one load speaks for all: other loads cannot feed it. */
    const known = new Map<string, boolean>()
    for (const { id } of loads) {
      const d = any.p.deviceIndex.get(id)!
      const pair = `${any.p.net[any.p.positive[d]!]} ${any.p.net[any.p.negative[d]!]}`
      let feeds = known.get(pair)
      if (feeds === undefined) {
        feeds = (any.envelope.greatest(new Map([[d, -1]]))?.value ?? 1) > 0
        known.set(pair, feeds)
      }
      if (feeds) fed.add(id)
    }
  }
  return [...new Set(loads.flatMap((d) => (fed.has(d.id) ? [] : (c.border.devices.get(d.id)?.part ?? []))))]
}
