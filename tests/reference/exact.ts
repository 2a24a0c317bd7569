import type { NetworkForm } from '../../engine/calc/form'

/**
 * How currents divide in a network, in whole numbers of any length: no rounding until the end. By loop analysis (ring
 * currents as unknowns), which shares nothing with the engine's node voltages.
 */
export interface ExactShares {
  /** Current in branch e, from → to, for 1 A put in at node v and taken out at the first node of its net: share[e][v]. */
  readonly share: readonly Float64Array[]
}

export function exactShares(form: NetworkForm): ExactShares {
  const node = new Map(form.nodes.map((id, i) => [id, i]))
  const from = form.branches.map((b) => node.get(b.from)!)
  const to = form.branches.map((b) => node.get(b.to)!)
  const ohms = wholeNumbers(form.branches.map((b) => b.resistance))
  /** Way from each node down to its root, as signed branches. */
  const toRoot = spanningForest(form.nodes.length, from, to)
  const rings: Map<number, bigint>[] = []
  form.branches.forEach((_, e) => {
    if (toRoot.tree.has(e) || from[e] === to[e]) return
    const ring = new Map([[e, 1n]])
    for (const [b, sign] of toRoot.way[to[e]!]!) ring.set(b, (ring.get(b) ?? 0n) + sign)
    for (const [b, sign] of toRoot.way[from[e]!]!) ring.set(b, (ring.get(b) ?? 0n) - sign)
    rings.push(ring)
  })
  const along = (a: Map<number, bigint>, b: ReadonlyMap<number, bigint>): bigint => {
    let sum = 0n
    for (const [e, sign] of a) sum += sign * (b.get(e) ?? 0n) * ohms[e]!
    return sum
  }
  const { numerators, determinant } = solveWhole(
    rings.map((r) => rings.map((s) => along(r, s))),
    rings.map((r) => form.nodes.map((_, v) => -along(r, new Map(toRoot.way[v]!)))),
  )
  const share = form.branches.map((_, e) =>
    Float64Array.from(form.nodes, (_, v) => {
      let sum = (new Map(toRoot.way[v]!).get(e) ?? 0n) * determinant
      rings.forEach((r, i) => {
        sum += (r.get(e) ?? 0n) * numerators[i]![v]!
      })
      return ratio(sum, determinant)
    }),
  )
  return { share }
}

/** Current of a branch under given device currents, by device id. */
export function exactCurrent(
  form: NetworkForm,
  { share }: ExactShares,
  branch: number,
  devices: readonly { readonly device: string; readonly current: number }[],
): number {
  const node = new Map(form.nodes.map((id, i) => [id, i]))
  const device = new Map(form.devices.map((d) => [d.id, d]))
  let sum = 0
  for (const { device: id, current } of devices) {
    const d = device.get(id)!
    sum += current * (share[branch]![node.get(d.positive)!]! - share[branch]![node.get(d.negative)!]!)
  }
  return sum
}

/** A double is a whole number times a power of two; all of them times one power. */
function wholeNumbers(values: readonly number[]): bigint[] {
  let shift = 0
  while (values.some((v) => !Number.isInteger(v * 2 ** shift))) shift++
  return values.map((v) => BigInt(v * 2 ** shift))
}

function spanningForest(
  n: number,
  from: readonly number[],
  to: readonly number[],
): { tree: Set<number>; way: (readonly (readonly [number, bigint])[])[] } {
  const tree = new Set<number>()
  const way: (readonly (readonly [number, bigint])[])[] = new Array(n)
  for (let root = 0; root < n; root++) {
    if (way[root]) continue
    way[root] = []
    const queue = [root]
    for (let v = queue.shift(); v !== undefined; v = queue.shift())
      from.forEach((u, e) => {
        const w = to[e]!
        const far = u === v ? w : w === v ? u : -1
        if (far === -1 || way[far]) return
        tree.add(e)
        way[far] = [...way[v!]!, [e, u === far ? 1n : -1n]]
        queue.push(far)
      })
  }
  return { tree, way }
}

/** Fraction-free elimination. Source: E. H. Bareiss, "Sylvester's identity and multistep Gaussian elimination", 1968. */
function solveWhole(a: bigint[][], b: bigint[][]): { numerators: bigint[][]; determinant: bigint } {
  const n = a.length
  const rows = a.map((row, i) => [...row, ...b[i]!])
  let before = 1n
  for (let k = 0; k < n; k++) {
    const pivot = rows[k]![k]!
    for (let i = 0; i < n; i++) {
      if (i === k) continue
      const factor = rows[i]![k]!
      rows[i] = rows[i]!.map((x, j) => (x * pivot - factor * rows[k]![j]!) / before)
    }
    before = pivot
  }
  return { numerators: rows.map((row) => row.slice(n)), determinant: before }
}

function ratio(numerator: bigint, denominator: bigint): number {
  return Number((numerator << 200n) / denominator) / 2 ** 200
}
