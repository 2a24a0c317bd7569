import { contextOf } from '../../calc/network'
import { electricalIn } from '../../edit/terminal'
import type { Design, Part, PartId, TerminalRef } from '../../model/design'
import { conductorsAt, partById } from '../../model/lookup'

/** Ends on the far side of the conductors that stand on a terminal, in the order of the design. */
export function farEnds(design: Design, { part, terminal }: TerminalRef): TerminalRef[] {
  return conductorsAt(design, part, terminal).map(({ from, to }) =>
    from.part === part && from.terminal === terminal ? to : from,
  )
}

/**
 * Parts that a terminal leads to: through conductors, bars, contacts, connectors and shunts, as far as something
 * that draws, feeds or is fused. Nearest first, each once, without the part that is asked about. O(parts + conductors).
 */
export function leadsTo(design: Design, start: TerminalRef): Part[] {
  const seen = new Set([keyOf(start)])
  const open = [...farEnds(design, start)]
  const found = new Map<PartId, Part>()
  for (const at of open) {
    if (seen.has(keyOf(at))) continue
    seen.add(keyOf(at))
    const part = partById(design, at.part)
    if (!part || part.id === start.part) continue
    const next = throughPart(design, part, at.terminal)
    if (next === null) found.set(part.id, part)
    else
      for (const terminal of next) {
        seen.add(keyOf({ part: part.id, terminal }))
        open.push(...farEnds(design, { part: part.id, terminal }))
      }
  }
  return [...found.values()]
}

const keyOf = ({ part, terminal }: TerminalRef): string => `${part}/${terminal}`

/** Terminals of the part that one of them leads on to; null where the way ends here. */
function throughPart(design: Design, part: Part, terminal: string): readonly string[] | null {
  const model = electricalIn(part, contextOf(design))
  if (!model) return null
  if (model.branches.some((b) => b.kind === 'fuse')) return null
  if (model.devices.some((d) => d.positive === terminal || d.negative === terminal)) {
    const passes = model.branches.some((b) => b.from === terminal || b.to === terminal)
    if (!passes) return null
  }
  const same = model.merges.find((m) => m.includes(terminal)) ?? [terminal]
  const across = model.branches.flatMap((b) =>
    same.includes(b.from) ? [b.to] : same.includes(b.to) ? [b.from] : [],
  )
  const reached = [...new Set([...same, ...across])]
  return reached.length > 1 ? reached : null
}
