import type { Design, Part, TerminalRef } from '../model/design'
import { conductorsAt, partById } from '../model/lookup'
import { isBlock } from './distribution'
import { keyOf, netsOf } from './nets'

/**
 * The block or bar that a terminal is fed from: its own part, or the nearest along conductors, fuses, switches,
 * contacts and splices. What takes or gives current at a terminal, and leads no further, is not passed. null: none. O(what hangs before it).
 */
export function blockBehind(design: Design, start: TerminalRef): Part | null {
  const nets = netsOf(design)
  const queue: TerminalRef[] = [start]
  const seen = new Set(queue.map(keyOf))
  const push = (t: TerminalRef): void => {
    if (seen.has(keyOf(t))) return
    seen.add(keyOf(t))
    queue.push(t)
  }
  for (const t of queue) {
    const part = partById(design, t.part)
    if (!part) continue
    if (isBlock(part)) return part
    const model = nets.electrical(t.part)
    const ways = model?.branches.filter((b) => b.from === t.terminal || b.to === t.terminal) ?? []
    const ends = model?.devices.some((d) => d.positive === t.terminal || d.negative === t.terminal) ?? false
    if (ends && ways.length === 0) continue
    for (const b of ways) push({ part: t.part, terminal: b.from === t.terminal ? b.to : b.from })
    for (const group of model?.merges ?? [])
      if (group.includes(t.terminal)) for (const terminal of group) push({ part: t.part, terminal })
    for (const c of conductorsAt(design, t.part, t.terminal)) {
      push(c.from)
      push(c.to)
    }
  }
  return null
}
