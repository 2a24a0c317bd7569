import { keyOf } from '../edit/nets'
import type { Conductor, ConductorId, Design, TerminalRef } from '../model/design'
import type { Border } from './network'
import type { Prepared } from './prepare'
import type { ShortTo } from './shortto'

/**
 * What a short circuit at one end of a conductor closes to, as far as the drawing tells: the other terminal of the
 * device that it ends at; the return that was drawn with it, where that ends at the same part; otherwise a return
 * as long and as thick as the way out. Prepared once; O(1) each.
 */
export function besideOf(
  design: Design,
  border: Border,
  p: Prepared,
): (c: Conductor, end: 'from' | 'to') => ShortTo {
  const nodeAt = (part: string, terminal: string): number | undefined => {
    const key = keyOf({ part, terminal })
    return p.nodeIndex.get(border.nodeOf.get(key) ?? key)
  }
  const opposite = new Map<string, number>()
  for (const { part, device } of border.devices.values()) {
    const [positive, negative] = [nodeAt(part, device.positive), nodeAt(part, device.negative)]
    if (positive === undefined || negative === undefined) continue
    opposite.set(`${part}/${positive}`, negative)
    opposite.set(`${part}/${negative}`, positive)
  }
  const returns = new Map<ConductorId, Conductor>()
  for (const c of design.conductors) if (c.returnOf !== null) returns.set(c.returnOf, c)

  return (c, end) => {
    const here: TerminalRef = c[end]
    const node = nodeAt(here.part, here.terminal)
    const across = opposite.get(`${here.part}/${node}`)
    if (across !== undefined) return across
    const back = returns.get(c.id)
    const there = back && [back.from, back.to].find((t) => t.part === here.part)
    const beside = there && nodeAt(there.part, there.terminal)
    return beside === undefined || beside === node ? 'as-way-out' : beside
  }
}
