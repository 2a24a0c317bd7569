import type { Design, Part, TerminalRef } from '../model/design'
import { conductorsAt, partById } from '../model/lookup'
import { isBlock } from './distribution'
import { keyOf, netsOf } from './nets'

/**
 * The block or bar that a terminal is fed from: its own part, or the nearest along conductors, fuses, switches,
 * contacts and splices. Parts that themselves take or give current are not passed. null: none. O(what hangs before it).
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
    if (model?.devices.some((d) => d.positive === t.terminal || d.negative === t.terminal)) continue
    for (const b of model?.branches ?? []) {
      if (b.from === t.terminal) push({ part: t.part, terminal: b.to })
      if (b.to === t.terminal) push({ part: t.part, terminal: b.from })
    }
    for (const group of model?.merges ?? [])
      if (group.includes(t.terminal)) for (const terminal of group) push({ part: t.part, terminal })
    for (const c of conductorsAt(design, t.part, t.terminal)) {
      push(c.from)
      push(c.to)
    }
  }
  return null
}
