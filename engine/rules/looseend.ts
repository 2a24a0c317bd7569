import { keyOf } from '../edit/nets'
import { found, type Rule } from './rule'

/** J2: a device joined at one pole only: it cannot work, and what it would carry is not in any figure. */
export const looseEnd: Rule = {
  id: 'J2',
  looksFor: 'parts joined at one pole only, or not at all',
  check: ({ design, border }) => {
    const used = new Set<string>()
    for (const c of border.conductors.values()) {
      for (const end of [c.from, c.to]) {
        used.add(border.nodeOf.get(keyOf(end)) ?? keyOf(end))
      }
    }
    const findings = new Map<string, ReturnType<typeof found>>()
    for (const ref of border.devices.values()) {
      const node = (terminal: string) =>
        border.nodeOf.get(`${ref.part}/${terminal}`) ?? `${ref.part}/${terminal}`
      const positive = used.has(node(ref.device.positive))
      const negative = used.has(node(ref.device.negative))
      if (positive && negative) continue
      const part = design.parts.find((p) => p.id === ref.part)
      if (!part || findings.get(part.id)?.level === 'warning') continue
      const level = positive || negative ? 'warning' : 'note'
      findings.set(
        part.id,
        found(
          'J2',
          level,
          'method',
          { parts: [part.id] },
          { part: part.id, lacks: positive ? 'negative' : negative ? 'positive' : 'both' },
        ),
      )
    }
    return [...findings.values()]
  },
}
