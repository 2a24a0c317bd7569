import type { NetworkForm } from '../../engine/calc/form'

/** A battery as it stands in a plain solve: V behind Ω. */
export interface DenseBattery {
  readonly positive: string
  readonly negative: string
  readonly emf: number
  readonly ohms: number
}

/**
 * Node voltages of a network by Gaussian elimination on the full matrix of conductances: nothing sparse, nothing shared.
 * Nodes without any way to the one at 0 V are held at 0 V as well. `inject`: A put in at a node and taken out at another.
 */
export function denseVoltages(
  form: Pick<NetworkForm, 'nodes' | 'branches'>,
  batteries: readonly DenseBattery[],
  zero: string,
  inject: readonly (readonly [into: string, outOf: string, amps: number])[] = [],
): Map<string, number> {
  const at = new Map(form.nodes.map((id, i) => [id, i]))
  const n = form.nodes.length
  const a = Array.from({ length: n }, () => new Float64Array(n + 1))
  const join = (u: string, v: string, conductance: number, volts = 0): void => {
    const [i, j] = [at.get(u)!, at.get(v)!]
    if (i === j) return
    a[i]![i]! += conductance
    a[j]![j]! += conductance
    a[i]![j]! -= conductance
    a[j]![i]! -= conductance
    a[i]![n]! += conductance * volts
    a[j]![n]! -= conductance * volts
  }
  for (const b of form.branches) join(b.from, b.to, 1 / b.resistance)
  for (const b of batteries) join(b.positive, b.negative, 1 / b.ohms, b.emf)
  for (const [into, outOf, amps] of inject) {
    a[at.get(into)!]![n]! += amps
    a[at.get(outOf)!]![n]! -= amps
  }
  const hold = (i: number): void => {
    a[i]!.fill(0)
    a[i]![i] = 1
  }
  const reached = new Set([zero])
  for (const v of reached)
    for (const [u, w] of [
      ...form.branches.map((b) => [b.from, b.to] as const),
      ...batteries.map((b) => [b.positive, b.negative] as const),
    ]) {
      if (u === v) reached.add(w)
      if (w === v) reached.add(u)
    }
  for (const id of form.nodes) if (id === zero || !reached.has(id)) hold(at.get(id)!)
  for (let k = 0; k < n; k++) {
    let pivot = k
    for (let i = k + 1; i < n; i++) if (Math.abs(a[i]![k]!) > Math.abs(a[pivot]![k]!)) pivot = i
    ;[a[k], a[pivot]] = [a[pivot]!, a[k]!]
    for (let i = 0; i < n; i++) {
      const share = a[i]![k]! / a[k]![k]!
      if (i === k || share === 0) continue
      for (let j = k; j <= n; j++) a[i]![j]! -= share * a[k]![j]!
    }
  }
  return new Map(form.nodes.map((id, i) => [id, a[i]![n]! / a[i]![i]!]))
}
