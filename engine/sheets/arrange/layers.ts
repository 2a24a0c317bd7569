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
  return gathered(members, (i) => {
    const least = hasLeast ? LEAST[plan.parts[i]!.column] : 0
    return Math.max(least, distance.get(i) ?? least)
  })
}

/** Layers of a small chain by the longest way from its first part that visits none twice. Longer chains: by distance. */
export function longestLayers(plan: Plan, chain: readonly number[], first: number): number[][] {
  const MOST = 9
  if (chain.length > MOST) return layersFrom(plan, chain, (i) => i === first, false)
  const inside = new Set(chain)
  const layer = new Map<number, number>()
  const seen = new Set<number>()
  const walk = (i: number, depth: number): void => {
    seen.add(i)
    layer.set(i, Math.max(layer.get(i) ?? 0, depth))
    for (const l of plan.at[i]!)
      if (l.from === i && inside.has(l.to) && !seen.has(l.to)) walk(l.to, depth + 1)
    seen.delete(i)
  }
  walk(first, 0)
  return gathered(chain, (i) => layer.get(i) ?? 0)
}

/** Layers of parts that all hang on the rest: by the direction of the current. */
export function forwardLayers(plan: Plan, chain: readonly number[]): number[][] {
  const inside = new Set(chain)
  const first = chain.find((i) => !plan.at[i]!.some((l) => l.to === i && inside.has(l.from))) ?? chain[0]!
  return longestLayers(plan, chain, first)
}

function gathered(parts: readonly number[], layerOf: (part: number) => number): number[][] {
  const layers: number[][] = []
  for (const i of parts) {
    layers[layerOf(i)] ??= []
    layers[layerOf(i)]!.push(i)
  }
  return layers.map((l) => l ?? []).filter((l) => l.length > 0)
}
