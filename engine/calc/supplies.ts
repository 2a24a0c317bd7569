import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** A way to feed a device: batteries from its negative net up to its positive net, lowest first. */
export type Supply = readonly number[]

/** Ways in one answer; a bank with more is looked at through the first ones only. */
const MOST_SUPPLIES = 64

/**
 * All ways in which batteries, each delivering, reach from one net up to another without passing a net twice. More
 * than one where batteries stand in parallel. `all` is false where there are more than fit.
 */
export function suppliesOf(p: Prepared): (from: number, to: number) => { supplies: Supply[]; all: boolean } {
  const above = new Map<number, number[]>()
  p.form.devices.forEach((_, d) => {
    const low = p.net[p.negative[d]!]!
    if (!isBattery(p, d) || low === p.net[p.positive[d]!]) return
    const list = above.get(low)
    if (list) list.push(d)
    else above.set(low, [d])
  })
  const known = new Map<number, { supplies: Supply[]; all: boolean }>()
  const search = (from: number, to: number): { supplies: Supply[]; all: boolean } => {
    const supplies: Supply[] = []
    const way: { battery: number; net: number; next: number }[] = [{ battery: -1, net: from, next: 0 }]
    for (let tried = 0; way.length > 0; tried++) {
      if (supplies.length === MOST_SUPPLIES || tried > 100 * MOST_SUPPLIES) return { supplies, all: false }
      const here = way[way.length - 1]!
      const battery = above.get(here.net)?.[here.next++]
      if (battery === undefined) {
        way.pop()
        continue
      }
      const net = p.net[p.positive[battery]!]!
      if (net === to) supplies.push([...way.slice(1).map((step) => step.battery), battery])
      else if (!way.some((step) => step.net === net)) way.push({ battery, net, next: 0 })
    }
    return { supplies, all: true }
  }
  return (from, to) => {
    if (from === to) return { supplies: [], all: true }
    const key = from * p.netCount + to
    const found = known.get(key) ?? search(from, to)
    known.set(key, found)
    return found
  }
}
