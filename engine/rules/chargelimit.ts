import type { PartId } from '../model/design'
import { found, type Rule } from './rule'

interface Bank {
  readonly batteries: PartId[]
  readonly chargers: PartId[]
  limitA: number
  pushA: number
}

/** R1: everything that charges a bank can push more into it than its batteries may take together. */
export const chargeLimit: Rule = {
  id: 'R1',
  looksFor: 'batteries that may be charged harder than their limit',
  check: ({ border, p }) => {
    const banks = new Map<number, Bank>()
    const bankAt = (net: number): Bank => {
      const bank = banks.get(net) ?? { batteries: [], chargers: [], limitA: 0, pushA: 0 }
      banks.set(net, bank)
      return bank
    }
    for (const [id, { part, device, role }] of border.devices) {
      const d = p.deviceIndex.get(id)
      if (d === undefined) continue
      const bank = bankAt(p.net[p.positive[d]!]!)
      if (role === 'battery') {
        bank.batteries.push(part)
        bank.limitA += typeof device.minA === 'number' ? -device.minA : Number.POSITIVE_INFINITY
      } else if ((role === 'source' || role === 'two-way') && typeof device.maxA === 'number') {
        bank.chargers.push(part)
        bank.pushA += device.maxA
      }
    }
    return [...banks.values()].flatMap(({ batteries, chargers, limitA, pushA }) => {
      if (batteries.length === 0 || pushA <= limitA * (1 + 1e-9)) return []
      return [
        found(
          'R1',
          'warning',
          'rating',
          { parts: batteries },
          { batteries, chargers },
          { actual: { value: pushA, unit: 'A' }, limit: { value: limitA, unit: 'A' } },
        ),
      ]
    })
  },
}
