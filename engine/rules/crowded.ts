import { plainTerminalsIn } from '../edit/terminal'
import { found, type Rule } from './rule'

/** J4: more lugs on one terminal than it takes. */
export const crowded: Rule = {
  id: 'J4',
  looksFor: 'terminals with more lugs than they take',
  check: ({ design }) => {
    const count = new Map<string, string[]>()
    for (const c of design.conductors)
      for (const end of [c.from, c.to]) {
        const key = `${end.part}/${end.terminal}`
        const at = count.get(key)
        if (at) at.push(c.id)
        else count.set(key, [c.id])
      }
    return design.parts.flatMap((part) =>
      (plainTerminalsIn(part) ?? []).flatMap((t) => {
        const at = count.get(`${part.id}/${t.key}`) ?? []
        if (t.takes === undefined || at.length <= t.takes) return []
        return [
          found(
            'J4',
            'warning',
            'common-practice',
            { parts: [part.id], conductors: at },
            { part: part.id, terminal: t.name, data: t.pole === 'data' },
            { about: t.key, actual: { value: at.length, unit: '' }, limit: { value: t.takes, unit: '' } },
          ),
        ]
      }),
    )
  },
}
