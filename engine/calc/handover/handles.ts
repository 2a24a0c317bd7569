import { kindOf } from '../../kinds/all'
import type { Design, Part } from '../../model/design'
import { partById } from '../../model/lookup'
import { controlsOf } from '../operating/control'
import type { Plan } from '../operating/plan'

/**
 * Something that takes a part of the system off: a hand switch, a breaker, a plug that can be drawn, or a contact that
 * works by itself (a temperature, a level, a voltage).
 */
export interface Handle {
  readonly part: Part
  readonly is: 'hand' | 'breaker' | 'plug' | 'itself'
  /** Branches that open together, `${part}/${branch}`. */
  readonly branches: readonly string[]
}

/** Every handle of a design, in its order. Relays are none: what works them is. O(parts). */
export function handlesOf(design: Design, plan: Plan): Handle[] {
  const found: Handle[] = []
  const add = (id: string, is: Handle['is'], branches: readonly string[]) => {
    const part = partById(design, id)
    if (part) found.push({ part, is, branches })
  }
  const opened = new Map<string, string[]>()
  for (const c of controlsOf(design)) {
    if (c.is === 'contact') opened.set(c.part, [...(opened.get(c.part) ?? []), c.id])
    if (c.is === 'fuse' && partById(design, c.part)?.kind === 'breaker') add(c.part, 'breaker', [c.id])
  }
  const byVoltage = plan.contacts.filter((c) => c.workedBy?.by === 'voltage')
  for (const { id, part } of byVoltage) add(part, 'itself', [id])
  for (const [part, branches] of opened)
    if (!byVoltage.some((c) => c.part === part)) add(part, natureOf(design, part), branches)
  const order = new Map(design.parts.map((p, i) => [p.id, i]))
  return found.sort((a, b) => order.get(a.part.id)! - order.get(b.part.id)!)
}

function natureOf(design: Design, id: string): Handle['is'] {
  const part = partById(design, id)
  if (part?.kind === 'connector') return 'plug'
  return kindOf(part?.kind ?? '')?.group === 'control' ? 'itself' : 'hand'
}
