import { kindOf } from '../kinds/all'
import { terminalsOf } from '../kinds/place'
import type { Design, Part, TerminalRef } from '../model/design'
import { conductorsAt } from '../model/lookup'
import { complete } from '../model/values'
import { isBlock } from './distribution'
import { netsOf } from './nets'

/** A bar on which returns meet. */
export interface ReturnBar {
  readonly part: Part
  readonly behindLoadShunt: boolean
}

/** Parts with a bar that is negative: declared so, or by what is joined to it. In the order of the design. */
export function negativeBars(design: Design): readonly ReturnBar[] {
  const behind = behindLoadShunts(design)
  return design.parts.flatMap((part) => {
    if (!isBlock(part)) return []
    const studs = returnStuds(design, part)
    return studs.length === 0 ? [] : [{ part, behindLoadShunt: behind.has(part.id) }]
  })
}

/** The stud of a part's return bar with the fewest conductors and room for one more; null: none. */
export function freeStud(design: Design, part: Part): TerminalRef | null {
  let best: { key: string; there: number } | null = null
  for (const { key, takes } of returnStuds(design, part)) {
    const there = conductorsAt(design, part.id, key).length
    if (there < (takes ?? Number.POSITIVE_INFINITY) && (!best || there < best.there)) best = { key, there }
  }
  return best && { part: part.id, terminal: best.key }
}

/** Terminals of a distribution part that stand on one bar and are negative. Ways out of a block come before its common. */
function returnStuds(design: Design, part: Part) {
  const nets = netsOf(design)
  const merges = nets.electrical(part.id)?.merges ?? []
  return terminalsOf(part)
    .filter((t) => merges.some((group) => group.includes(t.key)))
    .filter((t) => {
      if (t.pole !== 'any') return t.pole === 'negative'
      const net = nets.netOf({ part: part.id, terminal: t.key })
      return nets.negatives(net).length > 0 && nets.positives(net).length === 0
    })
    .sort((a, b) => Number(a.use === 'out') - Number(b.use === 'out'))
}

/** Ids of bars that the load side of a load-side shunt reaches along conductors. */
function behindLoadShunts(design: Design): ReadonlySet<string> {
  const reached = new Set<string>()
  for (const shunt of design.parts) {
    const kind = kindOf(shunt.kind)
    if (shunt.kind !== 'shunt' || !kind || complete(kind.fields, shunt.values).role !== 'load') continue
    const branch = netsOf(design)
      .electrical(shunt.id)
      ?.branches.find((b) => b.kind === 'shunt')
    if (!branch) continue
    const queue = [...barsAt(design, { part: shunt.id, terminal: branch.from })]
    for (const part of queue) {
      if (reached.has(part)) continue
      reached.add(part)
      for (const t of netsOf(design).electrical(part)?.merges.flat() ?? [])
        queue.push(...barsAt(design, { part, terminal: t }))
    }
  }
  return reached
}

/** Distribution parts at the far ends of the conductors on a terminal. */
function barsAt(design: Design, t: TerminalRef): readonly string[] {
  const bars = new Set(design.parts.filter(isBlock).map((p) => p.id))
  return conductorsAt(design, t.part, t.terminal)
    .map((c) => (c.from.part === t.part && c.from.terminal === t.terminal ? c.to.part : c.from.part))
    .filter((id) => bars.has(id))
}
