import type { PartId } from '../model/design'
import { partById } from '../model/lookup'
import { found, type Rule } from './rule'

/** R4: the chargers on the starting circuit take more than its alternators give: the starting battery runs down on the way. */
export const alternatorLoad: Rule = {
  id: 'R4',
  looksFor: 'alternator chargers that take more than the alternator gives',
  check: ({ design, border, p }) => {
    const nets = new Map<
      number,
      { givesA: number; takesA: number; alternators: PartId[]; chargers: PartId[] }
    >()
    for (const [id, { part, device }] of border.devices) {
      const kind = partById(design, part)?.kind
      const d = p.deviceIndex.get(id)
      if (d === undefined) continue
      const net = p.net[p.positive[d]!]!
      const at = nets.get(net) ?? { givesA: 0, takesA: 0, alternators: [], chargers: [] }
      nets.set(net, at)
      if (kind === 'alternator') {
        at.alternators.push(part)
        at.givesA += typeof device.maxA === 'number' ? device.maxA : Number.POSITIVE_INFINITY
      } else if (kind === 'alternator-charger' && typeof device.minA === 'number' && device.minA < 0) {
        at.chargers.push(part)
        at.takesA -= device.minA
      }
    }
    return [...nets.values()].flatMap(({ givesA, takesA, alternators, chargers }) => {
      if (alternators.length === 0 || takesA <= givesA * (1 + 1e-9)) return []
      return [
        found(
          'R4',
          'warning',
          'rating',
          { parts: [...alternators, ...chargers] },
          { alternators, chargers },
          { actual: { value: takesA, unit: 'A' }, limit: { value: givesA, unit: 'A' } },
        ),
      ]
    })
  },
}
