import type { NetworkForm } from '../../engine/calc/form'
import { toNumber } from '../../engine/units'
import { type KeptLp, keepLp, type LpRow } from './highs'

/**
 * The plain statement of what currents can be, as a linear program: a column for each device and each branch, one
 * row a node (Kirchhoff's current law), one row an independent ring (Ohm's law round the ring, Kirchhoff's voltage
 * law). Rings are closed by the branch of most resistance, whose own current leads its row, so that tolerances
 * stay tolerances in amps. Columns: devices, then branches, in the order of the form.
 */
export function currentsLp(form: NetworkForm): KeptLp {
  const node = new Map(form.nodes.map((id, i) => [id, i]))
  const deviceCount = form.devices.length
  const columns: number[][] = form.nodes.map(() => [])
  const values: number[][] = form.nodes.map(() => [])
  const put = (v: number, column: number, value: number): void => {
    columns[v]!.push(column)
    values[v]!.push(value)
  }
  form.devices.forEach((d, i) => {
    if (d.positive === d.negative) return
    put(node.get(d.positive)!, i, 1)
    put(node.get(d.negative)!, i, -1)
  })
  form.branches.forEach((b, e) => {
    if (b.from === b.to) return
    put(node.get(b.from)!, deviceCount + e, -1)
    put(node.get(b.to)!, deviceCount + e, 1)
  })
  const rows: LpRow[] = columns.map((list, v) => ({ lower: 0, upper: 0, columns: list, values: values[v]! }))
  rows.push(...ringRows(form, node, deviceCount))
  const free: [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY]
  return keepLp({
    rows,
    bounds: [
      ...form.devices.map((d): [number, number] => [
        d.min === 'unlimited' ? Number.NEGATIVE_INFINITY : d.min,
        toNumber(d.max),
      ]),
      ...form.branches.map((b): [number, number] => (b.from === b.to ? [0, 0] : free)),
    ],
  })
}

/** One row for each branch outside the spanning forest of least resistance: the ring it closes. */
function ringRows(form: NetworkForm, node: ReadonlyMap<string, number>, firstBranch: number): LpRow[] {
  const parent = new Int32Array(form.nodes.length).map((_, i) => i)
  const root = (v: number): number => {
    let at = v
    while (parent[at] !== at) at = parent[at] = parent[parent[at]!]!
    return at
  }
  const byResistance = form.branches.map((_, e) => e)
  byResistance.sort((a, b) => form.branches[a]!.resistance - form.branches[b]!.resistance)
  const tree: { edge: number; far: number; sign: number }[][] = form.nodes.map(() => [])
  const rows: LpRow[] = []
  for (const e of byResistance) {
    const b = form.branches[e]!
    const u = node.get(b.from)!
    const v = node.get(b.to)!
    if (u === v) continue
    if (root(u) !== root(v)) {
      parent[root(u)] = root(v)
      tree[u]!.push({ edge: e, far: v, sign: 1 })
      tree[v]!.push({ edge: e, far: u, sign: -1 })
      continue
    }
    const row = { columns: [firstBranch + e], values: [1] }
    for (const step of way(tree, u, v)) {
      row.columns.push(firstBranch + step.edge)
      row.values.push((-step.sign * form.branches[step.edge]!.resistance) / b.resistance)
    }
    rows.push({ lower: 0, upper: 0, ...row })
  }
  return rows
}

function way(
  tree: readonly (readonly { edge: number; far: number; sign: number }[])[],
  from: number,
  to: number,
): { edge: number; sign: number }[] {
  const reached = new Map<number, { edge: number; sign: number; before: number }>()
  const queue = [from]
  for (let v = queue.shift(); v !== undefined && v !== to; v = queue.shift())
    for (const step of tree[v]!) {
      if (step.far === from || reached.has(step.far)) continue
      reached.set(step.far, { edge: step.edge, sign: step.sign, before: v })
      queue.push(step.far)
    }
  const steps: { edge: number; sign: number }[] = []
  for (let v = to; v !== from; ) {
    const step = reached.get(v)!
    steps.push(step)
    v = step.before
  }
  return steps
}

/** Extreme of one branch's current by the plain program; ±Infinity where it has no end. */
export function extremeOf(lp: KeptLp, form: NetworkForm, branch: number, sense: 'min' | 'max'): number {
  const objective = new Float64Array(form.devices.length + form.branches.length)
  objective[form.devices.length + branch] = 1
  const answer = lp.optimise(sense, objective)
  if (answer.status === 'infeasible') throw new Error('no currents at all, though zero is always one')
  if (answer.status === 'unbounded')
    return sense === 'max' ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY
  return answer.value
}
