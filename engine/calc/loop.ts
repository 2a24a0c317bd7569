import type { CutEdge } from '../math/blockflow'
import type { ByNet } from './netgraph'
import { type NetGraph, netGraph } from './netgraph'
import type { Prepared } from './prepare'
import type { CutMember } from './protection'

/** Some nets as the way round a loop: devices deliver up to their fault current, and anything goes backwards. */
export function loopGraph(
  p: Prepared,
  content: ByNet,
  nets: readonly number[],
  devices: Iterable<number>,
): NetGraph {
  const delivers = (d: number): number => p.fault[d]!
  return netGraph(p, content, nets, devices, delivers, () => Number.POSITIVE_INFINITY)
}

/** Edges of a cut by name; a fuse without a rating stands for 0 and is not named. */
export function limitsOf(p: Prepared, loop: NetGraph, edges: readonly CutEdge[]): CutMember[] {
  return edges.flatMap(({ edge }) => {
    const branch = loop.branch[edge]!
    if (branch === -1) return sourceLimit(p, loop.device[edge]!)
    return p.rating[branch]! >= 0
      ? [{ kind: 'fuse', id: p.form.branches[branch]!.id, amps: p.rating[branch]! } as const]
      : []
  })
}

/** A device as a source that limits itself; nothing where it delivers nothing or everything. */
export function sourceLimit(p: Prepared, device: number): CutMember[] {
  const amps = p.fault[device]!
  return amps > 0 && amps < Number.POSITIVE_INFINITY
    ? [{ kind: 'source', id: p.form.devices[device]!.id, amps }]
    : []
}
