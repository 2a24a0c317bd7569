import { otherEnd, type Plan } from './graph'

/** Least layer of a part by what it is there for: bars and switches never stand among the stores. */
const LEAST = { store: 0, source: 0, protection: 1, distribution: 2, switching: 1, load: 4, data: 0 } as const

/** The given parts in layers by their distance, in links among themselves, from the nearest that `isFirst`. */
export function layersFrom(
  plan: Plan,
  members: readonly number[],
  isFirst: (part: number) => boolean,
  hasLeast: boolean,
): number[][] {
  const inside = new Set(members)
  const distance = new Map<number, number>()
  const queue = members.filter(isFirst)
  for (const i of queue) distance.set(i, 0)
  for (const i of queue)
    for (const l of plan.at[i]!) {
      const n = otherEnd(l, i)
      if (!inside.has(n) || distance.has(n)) continue
      distance.set(n, distance.get(i)! + 1)
      queue.push(n)
    }
  const layers: number[][] = []
  for (const i of members) {
    const least = hasLeast ? LEAST[plan.parts[i]!.column] : 0
    const layer = Math.max(least, distance.get(i) ?? least)
    layers[layer] ??= []
    layers[layer].push(i)
  }
  return layers.map((l) => l ?? []).filter((l) => l.length > 0)
}
