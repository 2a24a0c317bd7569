import type { ConductorId } from '../../model/design'
import type { Amps } from '../../units'
import type { Guard } from '../answers'
import { behindOf } from '../behind'
import { guardsOf } from '../guarded'
import type { Solved } from '../solved'

export interface LetThrough {
  readonly amps: Amps
  readonly guards: readonly Guard[]
}

/**
 * What the protective devices that stand first behind a conductor without one let through together: on the side away
 * from the end that a source reaches. 0 where the source reaches that side as well. O(what lies between).
 */
export function letThroughBehind(
  { border, p }: Solved,
  conductor: ConductorId,
  reached: 'from' | 'to',
): LetThrough {
  const e = p.branchIndex.get(conductor)
  if (e === undefined) return { amps: 0, guards: [] }
  const far = (reached === 'from' ? p.graph.head : p.graph.tail)[e]!
  const { battery, barriers } = behindOf(p).from([far], e, (branch) => p.isFuse[branch] === 1)
  if (battery) return { amps: 0, guards: [] }
  const members = barriers.flatMap((f) =>
    Number.isNaN(p.rating[f]!)
      ? []
      : [{ kind: 'fuse' as const, id: p.form.branches[f]!.id, amps: p.rating[f]! }],
  )
  return { amps: members.reduce((sum, m) => sum + m.amps, 0), guards: guardsOf(border, members) }
}
