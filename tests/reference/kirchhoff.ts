import type { NetworkForm } from '../../engine/calc/form'
import type { LpRow } from './highs'

/** The whole network written out: columns x by device, i by branch, v by node in mV; Kirchhoff's and Ohm's laws as rows. */
export function wholeNetwork(form: NetworkForm): { rows: LpRow[]; bounds: [number, number][] } {
  const k = form.devices.length
  const m = form.branches.length
  const at = new Map(form.nodes.map((id, i) => [id, i]))
  const sums = form.nodes.map(() => new Map<number, number>())
  const put = (node: string, column: number, value: number): void => {
    const row = sums[at.get(node)!]!
    row.set(column, (row.get(column) ?? 0) + value)
  }
  form.devices.forEach((d, j) => {
    put(d.positive, j, 1)
    put(d.negative, j, -1)
  })
  form.branches.forEach((b, e) => {
    put(b.from, k + e, -1)
    put(b.to, k + e, 1)
  })
  const row = (entries: Iterable<[number, number]>): LpRow => {
    const kept = [...entries].filter(([, value]) => value !== 0)
    return { lower: 0, upper: 0, columns: kept.map((x) => x[0]), values: kept.map((x) => x[1]) }
  }
  const ohm = form.branches.map((b, e) => {
    const entries = new Map([[k + e, 1000 * b.resistance]])
    for (const [node, sign] of [
      [b.from, -1],
      [b.to, 1],
    ] as const) {
      const column = k + m + at.get(node)!
      entries.set(column, (entries.get(column) ?? 0) + sign)
    }
    return row(entries)
  })
  const end = (x: number | 'unlimited', sign: number): number => (x === 'unlimited' ? sign * Infinity : x)
  return {
    rows: [...sums.map(row), ...ohm],
    bounds: [
      ...form.devices.map((d): [number, number] => [end(d.min, -1), end(d.max, 1)]),
      ...form.branches.map((): [number, number] => [-Infinity, Infinity]),
      ...form.nodes.map((): [number, number] => [-Infinity, Infinity]),
    ],
  }
}
