import { otherEnd, type Plan } from './graph'

/** Parts that stand together. */
export interface Groups {
  /** Chains of sources with what protects and switches them, each a list of part numbers. */
  readonly chains: readonly (readonly number[])[]
  /** Stores, main protection, bars: what everything else hangs on. */
  readonly trunk: readonly number[]
  /** Parts of the rest that hang together and hold no store, such as a mains group. */
  readonly asides: readonly (readonly number[])[]
  readonly cells: readonly Cell[]
  readonly data: readonly number[]
}

/** A block with everything that it alone feeds, in the columns in which it stands. */
export interface Cell {
  /** The feeding block, and the bars that mostly take returns of this cell. */
  readonly heads: readonly number[]
  /** Switches that work what stands between. */
  readonly controls: readonly number[]
  readonly between: readonly number[]
  readonly loads: readonly number[]
}

export function groupsOf(plan: Plan): Groups {
  const { parts } = plan
  const all = parts.map((_, i) => i)
  const data = all.filter((i) => parts[i]!.column === 'data')
  const chains = chainsOf(plan)
  const inChain = new Set(chains.flat())
  const feeder = feedersOf(plan, inChain)
  const heads = all.filter((i) => feeder.includes(i) && parts[i]!.column !== 'load')
  const cells = heads.map((head) => {
    const fed = all.filter((i) => feeder[i] === head && i !== head)
    return {
      heads: [head, ...all.filter((i) => i !== head && !heads.includes(i) && servesMostly(plan, i, fed))],
      controls: [],
      between: fed.filter((i) => parts[i]!.column !== 'load'),
      loads: byWay(
        plan,
        head,
        fed.filter((i) => parts[i]!.column === 'load'),
        feeder,
      ),
    }
  })
  const inCell = new Map(
    cells.flatMap((c, k) => [...c.heads, ...c.between, ...c.loads].map((i) => [i, k] as const)),
  )
  const rest = all.filter((i) => parts[i]!.column !== 'data' && !inChain.has(i) && !inCell.has(i))
  const controls = controlsOf(plan, rest, inCell)
  const sets = linkedSets(
    plan,
    rest.filter((i) => !controls.has(i)),
  )
  const isStore = (i: number): boolean => parts[i]!.column === 'store'
  const trunk = sets.some((set) => set.some(isStore))
    ? sets.filter((set) => set.some(isStore))
    : sets.slice(0, 1)
  return {
    chains,
    trunk: trunk.flat(),
    asides: sets.filter((set) => !trunk.includes(set)),
    cells: cells.map((c, k) => ({ ...c, controls: rest.filter((i) => controls.get(i) === k) })),
    data,
  }
}

/** Switches that hang on cells alone, by the cell of what they switch. */
function controlsOf(
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

/** The parts in sets that hang together by links among themselves. */
function linkedSets(plan: Plan, members: readonly number[]): number[][] {
  const inside = new Set(members)
  const seen = new Set<number>()
  return members.flatMap((first) => {
    if (seen.has(first)) return []
    seen.add(first)
    const set = [first]
    for (const i of set)
      for (const l of plan.at[i]!) {
        const n = otherEnd(l, i)
        if (!inside.has(n) || seen.has(n)) continue
        seen.add(n)
        set.push(n)
      }
    return [set.sort((a, b) => a - b)]
  })
}

/** Sources joined by links, protection or switching that hangs on them and on no store, and what hangs on these alone. */
function chainsOf(plan: Plan): number[][] {
  const { parts, at } = plan
  const isSource = (i: number): boolean => parts[i]!.column === 'source'
  const neighbours = (i: number): number[] => at[i]!.map((l) => otherEnd(l, i))
  const follows = (i: number): boolean =>
    (parts[i]!.column === 'protection' || parts[i]!.column === 'switching') &&
    neighbours(i).some(isSource) &&
    neighbours(i).every(
      (n) => isSource(n) || parts[n]!.column === 'distribution' || parts[n]!.column === 'protection',
    )
  const members = new Set(parts.map((_, i) => i).filter((i) => isSource(i) || follows(i)))
  const others = parts
    .map((_, i) => i)
    .filter((i) => parts[i]!.column !== 'store' && parts[i]!.column !== 'data')
  for (let before = -1; before < members.size; ) {
    before = members.size
    for (const i of others)
      if (at[i]!.length > 0 && neighbours(i).every((n) => members.has(n))) members.add(i)
  }
  return linkedSets(
    plan,
    parts.map((_, i) => i).filter((i) => members.has(i)),
  )
}

/** For each load, and each switching part on the way to it, the distribution part that feeds it; −1: none. */
function feedersOf(plan: Plan, taken: ReadonlySet<number>): number[] {
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
function servesMostly(plan: Plan, bar: number, fed: readonly number[]): boolean {
  if (plan.parts[bar]!.column !== 'distribution') return false
  const inside = new Set(fed)
  const links = plan.at[bar]!
  return links.length > 2 && links.filter((l) => inside.has(otherEnd(l, bar))).length > links.length / 2
}

/** Loads in the order of the ways that feed them. */
function byWay(plan: Plan, head: number, loads: readonly number[], feeder: readonly number[]): number[] {
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
