import { otherEnd, type Plan } from './graph'

/** Switches that hang on cells alone, by the cell of what they switch. */
export function controlsOf(
  plan: Plan,
  rest: readonly number[],
  inCell: ReadonlyMap<number, number>,
): Map<number, number> {
  const found = new Map<number, number>()
  const cellOf = (i: number): number | undefined => inCell.get(i) ?? found.get(i)
  for (let before = -1; before < found.size; ) {
    before = found.size
    for (const i of rest) {
      if (found.has(i) || plan.parts[i]!.column !== 'switching') continue
      const next = plan.at[i]!.map((l) => otherEnd(l, i))
      const switched = plan.at[i]!.filter((l) => l.from === i).map((l) => cellOf(l.to))
      const cell = switched.find((c) => c !== undefined) ?? next.map(cellOf).find((c) => c !== undefined)
      if (
        cell !== undefined &&
        next.every((n) => cellOf(n) !== undefined || plan.parts[n]!.column === 'switching')
      )
        found.set(i, cell)
    }
  }
  return found
}

/** For each load, and each switching part on the way to it, the distribution part that feeds it; −1: none. */
export function feedersOf(plan: Plan, taken: ReadonlySet<number>): number[] {
  const { parts, at } = plan
  const feeder = new Array<number>(parts.length).fill(-1)
  const isOnTheWay = (i: number): boolean =>
    parts[i]!.column === 'switching' || parts[i]!.column === 'protection'
  parts.forEach((p, load) => {
    if (p.column !== 'load') return
    // Against the current, from the load to the nearest distribution part.
    const queue = [load]
    const next = new Map<number, number>([[load, -1]])
    for (const i of queue) {
      for (const l of at[i]!) {
        if (l.to !== i || next.has(l.from) || taken.has(l.from)) continue
        next.set(l.from, i)
        if (parts[l.from]!.column === 'distribution') {
          for (let back = i; back >= 0; back = next.get(back)!) if (feeder[back] === -1) feeder[back] = l.from
          return
        }
        if (isOnTheWay(l.from)) queue.push(l.from)
      }
    }
  })
  return feeder
}

/** Do more than half of the links of this bar go to these parts? */
export function servesMostly(plan: Plan, bar: number, fed: readonly number[]): boolean {
  if (plan.parts[bar]!.column !== 'distribution') return false
  const inside = new Set(fed)
  const links = plan.at[bar]!
  return links.length > 2 && links.filter((l) => inside.has(otherEnd(l, bar))).length > links.length / 2
}

/** Loads in the order of the ways that feed them. */
export function byWay(
  plan: Plan,
  head: number,
  loads: readonly number[],
  feeder: readonly number[],
): number[] {
  const wayY = (load: number, seen: ReadonlySet<number> = new Set()): number => {
    const into = plan.at[load]!.filter((l) => l.to === load)
    const direct = into.find((l) => l.from === head)
    if (direct) return direct.fromY
    const through = into.filter((l) => feeder[l.from] === head && !seen.has(l.from))
    return Math.min(Infinity, ...through.map((l) => wayY(l.from, new Set([...seen, load]))))
  }
  const keys = new Map(loads.map((i) => [i, [wayY(i), plan.parts[i]!.order ?? 0, i] as const]))
  return [...loads].sort((a, b) => {
    const [p, q] = [keys.get(a)!, keys.get(b)!]
    return (p[0] === q[0] ? 0 : p[0] - q[0]) || p[1] - q[1] || p[2] - q[2]
  })
}
