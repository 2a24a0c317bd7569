import type { ConductorId } from '../../model/design'
import type { Amps } from '../../units'
import type { Guard } from '../answers'
import { devicesBehind } from '../devicesbehind'
import { guardsOf } from '../guarded'
import type { Solved } from '../solved'

export interface LetThrough {
  readonly amps: Amps
  readonly guards: readonly Guard[]
}

/** What the devices that stand first behind a conductor without one let through together; those without a rating count as none. */
export function letThroughBehind(
  { border, p }: Solved,
  conductor: ConductorId,
  reached: 'from' | 'to',
): LetThrough {
  const e = p.branchIndex.get(conductor)
  if (e === undefined) return { amps: 0, guards: [] }
  const members = devicesBehind(p, e, reached).filter((m) => !Number.isNaN(m.amps))
  return { amps: members.reduce((sum, m) => sum + m.amps, 0), guards: guardsOf(border, members) }
}
