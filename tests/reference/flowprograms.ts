import type { NetworkForm } from '../../engine/calc/form'
import { keepLp, type LpRow, solveLp } from './highs'

const AT_WILL = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const

const amps = (x: number | 'unlimited'): number => (x === 'unlimited' ? Number.POSITIVE_INFINITY : x)

/** Nets by plain repeated merging of labels; net of each node id. */
export function netsOf(form: NetworkForm): Map<string, number> {
  const net = new Map(form.nodes.map((id, i) => [id, i]))
  for (let moved = true; moved; ) {
    moved = false
    for (const b of form.branches) {
      const low = Math.min(net.get(b.from)!, net.get(b.to)!)
      for (const end of [b.from, b.to])
        if (net.get(end)! > low) {
          net.set(end, low)
          moved = true
        }
    }
  }
  return net
}

/** reaches.get(a).has(b): from net a one comes to net b along one source or more, negative → positive. */
export function reaches(form: NetworkForm, net: Map<string, number>): Map<number, Set<number>> {
  const all = new Map([...net.values()].map((k) => [k, new Set<number>()]))
  for (const d of form.devices)
    if (amps(d.sustainedFault) > 0) all.get(net.get(d.negative)!)!.add(net.get(d.positive)!)
  for (let moved = true; moved; ) {
    moved = false
    for (const set of all.values())
      for (const via of [...set])
        for (const k of all.get(via)!)
          if (!set.has(k)) {
            set.add(k)
            moved = true
          }
  }
  return all
}

export interface EndFlowOptions {
  /** Only sources with their positive terminal in the conductor's own net, and nothing backwards. */
  readonly plain?: boolean
  /** Fuses, sources and backward ways that carry nothing, as `${kind} ${id}` of a cut. */
  readonly barred?: ReadonlySet<string>
  /** The physical problem: what comes out of the end goes back in at this node, and every net balances. */
  readonly backAt?: string
}

/**
 * The flow of the protection check as a linear program on branch currents, from the words of its definition alone:
 * Kirchhoff's current law at every node that is not part of the supply, fuses within ± their ratings, devices
 * between what they take in and their fault current, the conductor taken out. Infinity when unbounded.
 */
export function endFlowByLp(
  form: NetworkForm,
  branch: number,
  end: 'from' | 'to',
  { plain = false, barred, backAt }: EndFlowOptions = {},
): number {
  const net = netsOf(form)
  const home = net.get(form.branches[branch]!.from)!
  const above = reaches(form, net).get(home)!
  const touched = new Set(
    form.devices
      .filter((d) => amps(d.sustainedFault) > 0)
      .flatMap((d) => [net.get(d.positive)!, net.get(d.negative)!]),
  )
  const isSupply = (k: number): boolean =>
    backAt === undefined && k !== home && (plain || (!above.has(k) && touched.has(k)))
  const into = new Map<string, [number, number][]>()
  const put = (node: string, column: number, value: number): void => {
    if (isSupply(net.get(node)!)) return
    const row = into.get(node) ?? []
    row.push([column, value])
    into.set(node, row)
  }
  const bounds: (readonly [number, number])[] = [[0, Number.POSITIVE_INFINITY]]
  put(form.branches[branch]![end], 0, -1)
  if (backAt !== undefined) put(backAt, 0, 1)
  form.branches.forEach((b, e) => {
    if (e === branch || b.from === b.to) return
    const most = b.kind !== 'fuse' ? Number.POSITIVE_INFINITY : barred?.has(`fuse ${b.id}`) ? 0 : b.rating!
    put(b.from, bounds.length, -1)
    put(b.to, bounds.length, 1)
    bounds.push([-most, most])
  })
  for (const d of form.devices) {
    if (d.positive === d.negative) continue
    const most = amps(d.sustainedFault)
    const takes = d.min === 'unlimited' ? Number.POSITIVE_INFINITY : -d.min
    const back = plain ? 0 : most === Number.POSITIVE_INFINITY ? most : takes
    put(d.positive, bounds.length, 1)
    put(d.negative, bounds.length, plain ? 0 : -1)
    bounds.push([barred?.has(`intake ${d.id}`) ? 0 : -back, barred?.has(`source ${d.id}`) ? 0 : most])
  }
  const answer = solveLp({
    sense: 'max',
    objective: bounds.map((_, j) => (j === 0 ? 1 : 0)),
    rows: [...into.values()].map(balanced),
    bounds,
  })
  if (answer.status === 'infeasible') throw new Error('all currents 0 is always allowed')
  return answer.status === 'optimal' ? answer.value : Number.POSITIVE_INFINITY
}

function balanced(entries: readonly [number, number][]): LpRow {
  const sum = new Map<number, number>()
  for (const [j, v] of entries) sum.set(j, (sum.get(j) ?? 0) + v)
  return { lower: 0, upper: 0, columns: [...sum.keys()], values: [...sum.values()] }
}

/**
 * Greatest current in each branch asked for, in either sense, in any state that blows no fuse: currents of branches
 * and devices and, with `voltage`, potentials at the nodes. Devices deliver up to their fault current and take
 * any amount in. Infinity when unbounded.
 */
export function sustainedByLp(form: NetworkForm, branches: readonly number[], voltage: boolean): number[] {
  const m = form.branches.length
  const firstNode = m + form.devices.length
  const nodeAt = new Map(form.nodes.map((id, i) => [id, i]))
  const bounds: (readonly [number, number])[] = form.branches.map((b) => {
    const most = b.kind === 'fuse' ? b.rating! : Number.POSITIVE_INFINITY
    return b.from === b.to ? [0, 0] : [-most, most]
  })
  for (const d of form.devices) bounds.push([Number.NEGATIVE_INFINITY, amps(d.sustainedFault)])
  const nodeRows: [number, number][][] = form.nodes.map(() => [])
  const rows: LpRow[] = []
  form.branches.forEach((b, e) => {
    nodeRows[nodeAt.get(b.from)!]!.push([e, -1])
    nodeRows[nodeAt.get(b.to)!]!.push([e, 1])
  })
  form.devices.forEach((d, i) => {
    nodeRows[nodeAt.get(d.positive)!]!.push([m + i, 1])
    nodeRows[nodeAt.get(d.negative)!]!.push([m + i, -1])
  })
  for (const entries of nodeRows) rows.push(balanced(entries))
  if (voltage) {
    for (const _ of form.nodes) bounds.push(AT_WILL)
    form.branches.forEach((b, e) => {
      if (b.from === b.to) return
      rows.push({
        lower: 0,
        upper: 0,
        columns: [firstNode + nodeAt.get(b.from)!, firstNode + nodeAt.get(b.to)!, e],
        values: [1, -1, -b.resistance],
      })
    })
  }
  const kept = keepLp({ rows, bounds })
  try {
    return branches.map((e) =>
      Math.max(
        ...[1, -1].map((sign) => {
          const answer = kept.optimise(
            'max',
            bounds.map((_, j) => (j === e ? sign : 0)),
          )
          return answer.status === 'optimal' ? answer.value : Number.POSITIVE_INFINITY
        }),
      ),
    )
  } finally {
    kept.dispose()
  }
}

/**
 * Greatest lasting current through a bridge from a short across one device, by its definition: the lesser of the
 * flow from the device's negative terminal to one end and from the other end to its positive terminal, other
 * devices delivering 0 to their fault current; sources whose negative terminal lies on the shorted device's side of
 * the bridge are left out where both lie in the bridge's net. Two programs a device and sense.
 */
export function shortByLp(form: NetworkForm, bridge: number): number {
  const b = form.branches[bridge]!
  const rest = { ...form, branches: form.branches.filter((_, e) => e !== bridge) }
  const whole = netsOf(form)
  const parted = netsOf(rest)
  const inNet = (node: string): boolean => whole.get(node) === whole.get(b.from)
  let worst = 0
  for (const d of form.devices) {
    const able = (s: NetworkForm['devices'][number]): boolean =>
      s !== d &&
      !(inNet(s.negative) && inNet(d.negative) && parted.get(s.negative) === parted.get(d.negative))
    const flow = (from: string, to: string): number =>
      from === to ? Number.POSITIVE_INFINITY : flowByLp(rest, from, to, able)
    for (const [near, far] of [
      [b.from, b.to],
      [b.to, b.from],
    ] as const)
      worst = Math.max(worst, Math.min(flow(d.negative, near), flow(far, d.positive)))
  }
  return worst
}

function flowByLp(
  form: NetworkForm,
  from: string,
  to: string,
  able: (device: NetworkForm['devices'][number]) => boolean,
): number {
  const rows = new Map<string, [number, number][]>(form.nodes.map((id) => [id, []]))
  const bounds: (readonly [number, number])[] = []
  const arc = (tail: string, head: string, low: number, high: number): void => {
    rows.get(tail)!.push([bounds.length, -1])
    rows.get(head)!.push([bounds.length, 1])
    bounds.push([low, high])
  }
  arc(to, from, 0, Number.POSITIVE_INFINITY)
  for (const b of form.branches) {
    if (b.from === b.to) continue
    const most = b.kind === 'fuse' ? b.rating! : Number.POSITIVE_INFINITY
    arc(b.from, b.to, -most, most)
  }
  for (const d of form.devices)
    if (d.positive !== d.negative && able(d)) arc(d.negative, d.positive, 0, amps(d.sustainedFault))
  const objective = bounds.map((_, j) => (j === 0 ? 1 : 0))
  const answer = solveLp({ sense: 'max', objective, rows: [...rows.values()].map(balanced), bounds })
  return answer.status === 'optimal' ? answer.value : Number.POSITIVE_INFINITY
}
