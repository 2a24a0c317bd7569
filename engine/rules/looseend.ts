import { keyOf } from '../edit/nets'
import { plainTerminalsIn } from '../edit/terminal'
import { isKnown } from './polarity'
import { type Case, found, type Rule } from './rule'

/** J2: a device joined at one pole only: it cannot work, and what it would carry is not in any figure. */
export const looseEnd: Rule = {
  id: 'J2',
  looksFor: 'parts joined at one pole only, or not at all',
  check: (c) => {
    const { design, border } = c
    const used = joinedNodes(c)
    const findings = new Map<string, ReturnType<typeof found>>()
    for (const [id, ref] of border.devices) {
      if (!isKnown(c, id)) continue
      const node = (terminal: string) =>
        border.nodeOf.get(`${ref.part}/${terminal}`) ?? `${ref.part}/${terminal}`
      const positive = used.has(node(ref.device.positive))
      const negative = used.has(node(ref.device.negative))
      if (positive && negative) continue
      const part = design.parts.find((p) => p.id === ref.part)
      if (!part || findings.get(part.id)?.level === 'warning') continue
      const level = positive || negative ? 'warning' : 'note'
      const lacks = positive ? 'negative' : negative ? 'positive' : 'both'
      const bare = positive ? ref.device.negative : ref.device.positive
      const terminal = plainTerminalsIn(part)?.find((t) => t.key === bare)?.name ?? ''
      const frame = border.frames.some((f) => f.part === part.id)
      findings.set(
        part.id,
        found('J2', level, 'method', { parts: [part.id] }, { part: part.id, lacks, frame, terminal }),
      )
    }
    return [...findings.values()]
  },
}

/** Nodes at which a conductor ends, and those that are joined through the frame to another one of it. */
export function joinedNodes({ border }: Case): Set<string> {
  const used = new Set<string>()
  for (const c of border.conductors.values())
    for (const end of [c.from, c.to]) used.add(border.nodeOf.get(keyOf(end)) ?? keyOf(end))
  const reached = border.frames.filter((f) => used.has(f.node))
  const cases = border.frames.filter((f) => !used.has(f.node))
  for (const f of cases) if (reached.length > 0) used.add(f.node)
  return used
}
