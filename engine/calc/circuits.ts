import { isBattery } from './galvanic'
import type { Prepared } from './prepare'
import type { Found } from './share'

/** Middle of a range of shares; 0 where nothing balances. */
export const middle = (s: Found): number => (s.range ? (s.range.from + s.range.to) / 2 : 0)

/** What a device may draw or deliver; an unlimited one weighs as much as any other's thousandfold. */
export const weight = (p: Prepared, s: Found): number =>
  Math.min(1e6, Math.max(-p.min[s.device]!, s.nature === 'load' ? 0 : p.max[s.device]!))

/** Number of the circuit of a device: that of its positive net, the shunt's own net being cut out of the battery graph. */
export function circuits(p: Prepared, net: number): (device: number) => number {
  const parent = Int32Array.from({ length: p.netCount }, (_, i) => i)
  const root = (i: number): number => {
    let at = i
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!
      at = parent[at]!
    }
    return at
  }
  p.form.devices.forEach((_, d) => {
    const low = p.net[p.negative[d]!]!
    const high = p.net[p.positive[d]!]!
    if (isBattery(p, d) && low !== net && high !== net) parent[root(high)] = root(low)
  })
  return (d) => root(p.net[p.positive[d]!]!)
}

/** The circuit that passes the most through the shunt; where nothing passes, the one that may draw the most. */
export function servedBy(
  p: Prepared,
  found: readonly Found[],
  circuit: (device: number) => number,
  loadsOnly: boolean,
): number {
  const fed = new Set<number>()
  p.form.devices.forEach((_, d) => {
    if (isBattery(p, d)) fed.add(circuit(d))
  })
  const total = (size: (s: Found) => number): Map<number, number> => {
    const sums = new Map<number, number>()
    for (const s of found) {
      if (loadsOnly && s.nature !== 'load') continue
      const key = circuit(s.device)
      if (fed.has(key)) sums.set(key, (sums.get(key) ?? 0) + size(s) * weight(p, s))
    }
    return sums
  }
  const greatest = (sums: Map<number, number>): number | undefined =>
    [...sums].filter(([, sum]) => sum > 0).sort((x, y) => y[1] - x[1])[0]?.[0]
  return greatest(total((s) => Math.abs(middle(s)))) ?? greatest(total(() => 1)) ?? -1
}
