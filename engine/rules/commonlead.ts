import type { ConductorId, PartId } from '../model/design'
import type { Case } from './rule'

/** The conductor by which a part of a net returns, and its end that lies nearer the battery. */
export interface Lead {
  readonly conductor: ConductorId
  readonly nearer: 'from' | 'to'
}

/**
 * Of devices that return past a shunt, the one conductor by which each returns together with others of them: the first on the
 * way from the battery side of the shunt, behind which nothing but such devices stands. Without devices that have none.
 * O(net).
 */
export function commonLeads(
  { border, p, states }: Case,
  shunt: PartId,
  devices: ReadonlySet<string>,
): Map<string, Lead> {
  const { graph } = p
  const leads = new Map<string, Lead>()
  const branch = [...border.branches].find(([, b]) => b.part === shunt && b.branch.kind === 'shunt')
  const across = branch && p.branchIndex.get(branch[0])
  if (across === undefined) return leads
  const block = states[0]!.any.envelope.block

  const by = new Int32Array(graph.vertexCount).fill(-1)
  const order = [graph.head[across]!]
  const seen = new Set(order)
  for (const v of order)
    for (let i = graph.start[v]!; i < graph.start[v + 1]!; i++) {
      const [e, far] = [graph.edge[i]!, graph.far[i]!]
      if (e === across || seen.has(far)) continue
      seen.add(far)
      by[far] = e
      order.push(far)
    }
  const above = (v: number): number => (graph.tail[by[v]!] === v ? graph.head[by[v]!]! : graph.tail[by[v]!]!)

  /** Terminals behind each node of devices that do not belong here, and the lead of each node. */
  const foreign = new Int32Array(graph.vertexCount)
  p.form.devices.forEach((d, i) => {
    if (devices.has(d.id)) return
    for (const v of [p.positive[i]!, p.negative[i]!]) foreign[v]!++
  })
  for (const v of [...order].reverse()) if (by[v] !== -1) foreign[above(v)]! += foreign[v]!
  const leadOf = new Map<number, Lead>()
  for (const v of order) {
    if (by[v] === -1) continue
    const upper = leadOf.get(above(v))
    const own = border.conductors.get(p.form.branches[by[v]!]!.id)
    if (upper) leadOf.set(v, upper)
    else if (own && foreign[v] === 0 && block[by[v]!]! < 0)
      leadOf.set(v, { conductor: own.id, nearer: graph.head[by[v]!] === v ? 'from' : 'to' })
  }
  p.form.devices.forEach((d, i) => {
    const lead = devices.has(d.id) ? leadOf.get(p.negative[i]!) : undefined
    if (lead) leads.set(d.id, lead)
  })
  return leads
}
