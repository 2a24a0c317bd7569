import { otherEnd, type Plan } from './graph'

/** Sources joined by links, protection or switching that hangs on them and on no store, and what hangs on these alone. */
export function chainsOf(plan: Plan): number[][] {
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

/** The parts in sets that hang together by links among themselves. */
export function linkedSets(plan: Plan, members: readonly number[]): number[][] {
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
