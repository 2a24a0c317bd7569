import type { Millimetres } from '../../units'
import type { Plan } from './graph'
import { GRID, type Stack, snapUp } from './stack'

/** Widths of the channels right of each column, for the conductors that turn there. */
export function channelWidths(plan: Plan, s: Stack, label: (column: number) => Millimetres): Millimetres[] {
  const columnOf = new Map<number, number>()
  s.columns.forEach((column, c) => {
    for (const i of column) columnOf.set(i, c)
  })
  const spans: { from: number; to: number }[][] = s.columns.map(() => [])
  for (const l of plan.links) {
    const [a, b] = [columnOf.get(l.from), columnOf.get(l.to)]
    if (a === undefined || b === undefined) continue
    const y1 = s.top.get(l.from)! + l.fromY
    const y2 = s.top.get(l.to)! + l.toY
    if (y1 === y2) continue
    const span = { from: Math.min(y1, y2), to: Math.max(y1, y2) }
    spans[Math.min(a, b)]!.push(span)
    if (Math.abs(a - b) > 1) spans[Math.max(a, b) - 1]!.push(span)
  }
  return s.columns.map((_, c) => snapUp(label(c) + 7.5 + GRID * densest(spans[c]!)))
}

/** Most spans that stand side by side at one height. */
function densest(spans: readonly { from: number; to: number }[]): number {
  const ends = spans.flatMap((s) => [
    { at: s.from, by: 1 },
    { at: s.to + GRID / 2, by: -1 },
  ])
  ends.sort((a, b) => a.at - b.at || a.by - b.by)
  let [now, most] = [0, 0]
  for (const e of ends) {
    now += e.by
    most = Math.max(most, now)
  }
  return most
}
