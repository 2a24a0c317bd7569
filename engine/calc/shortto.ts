import type { Response } from '../math/response'
import type { Amps } from '../units'
import type { FaultSystem } from './faultsystem'

/** Where the short circuit at a node goes: to another node, or to a return as long and as thick as the way out. */
export type ShortTo = number | 'as-way-out'

/** One bolted short circuit: its current, and that of any branch, A, positive from → to. */
export interface Short {
  readonly amps: Amps
  through(branch: number): Amps
}

/**
 * A short circuit between a node and what stands beside it, fed by the batteries alone. 'as-way-out' shorts to the
 * reference of the group through a resistance as great as that of the conductors that carry the current out:
 * Σ (share of the current)² · R over the conductors. No current where the two are not in one battery-fed group.
 * One response: what the node and the mesh reach.
 */
export function shortTo(s: FaultSystem, node: number, to: ShortTo): Short {
  const { groups, p, ohms, open } = s
  const group = groups.of[node]!
  const other = to === 'as-way-out' ? groups.reference[group]! : to
  if (!groups.hasBattery[group] || groups.of[other] !== group || other === node) return NONE
  const rise = s.between(node, other)
  const share = (e: number): number => (rise.at(p.graph.tail[e]!) - rise.at(p.graph.head[e]!)) / ohms[e]!
  let drive = rise.at(node) - rise.at(other)
  if (!(drive > 0)) return NONE
  if (to === 'as-way-out') drive += wayOut(s, rise, share)
  const amps = (open[node]! - open[other]!) / drive
  return {
    amps: Math.abs(amps),
    through: (e) => (open[p.graph.tail[e]!]! - open[p.graph.head[e]!]!) / ohms[e]! - amps * share(e),
  }
}

const NONE: Short = { amps: 0, through: () => 0 }

function wayOut({ p, ohms }: FaultSystem, rise: Response, share: (branch: number) => number): number {
  let sum = 0
  for (const e of rise.edges()) if (p.form.branches[e]?.kind === 'conductor') sum += share(e) ** 2 * ohms[e]!
  return sum
}
