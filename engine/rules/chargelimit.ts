import type { PartId } from '../model/design'
import { partById } from '../model/lookup'
import { lastingNets } from './lastingnets'
import { found, type Rule } from './rule'

interface Bank {
  readonly batteries: PartId[]
  readonly net: number
  limitA: number
}

interface Push {
  readonly chargers: PartId[]
  amps: number
}

/**
 * R1: everything that charges a bank can push more into it than its batteries may take together. A starting battery, and what
 * stands behind a combiner, is a bank of its own: it may be full while the other is empty, and takes nothing off it then.
 */
export const chargeLimit: Rule = {
  id: 'R1',
  looksFor: 'batteries that may be charged harder than their limit',
  check: (c) => {
    const { design, border, p } = c
    const lasting = lastingNets(c)
    const banks = new Map<string, Bank>()
    const pushes = new Map<number, Push>()
    for (const [id, { part, device, role }] of border.devices) {
      const d = p.deviceIndex.get(id)
      if (d === undefined) continue
      const node = p.positive[d]!
      const net = p.net[node]!
      if (role === 'battery') {
        const key = `${lasting[node]} ${partById(design, part)?.kind}`
        const bank = banks.get(key) ?? { batteries: [], net, limitA: 0 }
        banks.set(key, bank)
        bank.batteries.push(part)
        bank.limitA += typeof device.minA === 'number' ? -device.minA : Number.POSITIVE_INFINITY
      } else if ((role === 'source' || role === 'two-way') && typeof device.maxA === 'number') {
        const push = pushes.get(net) ?? { chargers: [], amps: 0 }
        pushes.set(net, push)
        push.chargers.push(part)
        push.amps += device.maxA
      }
    }
    return [...banks.values()].flatMap(({ batteries, net, limitA }) => {
      const push = pushes.get(net)
      if (!push || push.amps <= limitA * (1 + 1e-9)) return []
      return [
        found(
          'R1',
          'warning',
          'rating',
          { parts: batteries },
          { batteries, chargers: push.chargers },
          { actual: { value: push.amps, unit: 'A' }, limit: { value: limitA, unit: 'A' } },
        ),
      ]
    })
  },
}
