import { netAndAbove, sourceOrder } from '../calc/above'
import type { Prepared } from '../calc/prepare'
import { kindOf } from '../kinds/all'
import { partById } from '../model/lookup'
import type { Case } from './rule'

/** Ids of devices whose two terminals lie in one net in some position of the contacts. Parts of unknown kinds are left out. */
export function shortedDevices(c: Case): Set<string> {
  const shorted = new Set<string>()
  for (const { any, opened } of c.states)
    if (!opened)
      any.p.form.devices.forEach((d, i) => {
        if (any.p.net[any.p.positive[i]!] === any.p.net[any.p.negative[i]!] && isKnown(c, d.id))
          shorted.add(d.id)
      })
  return shorted
}

/** Ids of devices that draw and are joined the wrong way round in some position of the contacts, and rightly in none. */
export function reversedDevices(c: Case): Set<string> {
  const reversed = new Set<string>()
  const right = new Set<string>()
  for (const { any, opened } of c.states) {
    if (opened) continue
    const above = liftedFrom(any.p)
    any.p.form.devices.forEach((d, i) => {
      if (d.sustainedFault !== 0 || !isKnown(c, d.id)) return
      const low = any.p.net[any.p.negative[i]!]!
      const high = any.p.net[any.p.positive[i]!]!
      if (low === high) return
      if (above(low).has(high)) right.add(d.id)
      else if (above(high).has(low)) reversed.add(d.id)
    })
  }
  return new Set([...reversed].filter((id) => !right.has(id)))
}

/** Nets that sources lift to from a net, itself included. */
function liftedFrom(p: Prepared): (net: number) => Set<number> {
  const order = sourceOrder(p)
  const known = new Map<number, Set<number>>()
  return (net) => {
    let found = known.get(net)
    if (!found) {
      found = netAndAbove(order, net)
      known.set(net, found)
    }
    return found
  }
}

export function isKnown(c: Case, device: string): boolean {
  const part = c.border.devices.get(device)?.part
  return part !== undefined && kindOf(partById(c.design, part)?.kind ?? '') !== undefined
}
