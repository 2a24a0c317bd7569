import { canReconnect } from '../edit/canjoin'
import { plainTerminalsIn } from '../edit/terminal'
import type { ConductorId, PartId, TerminalRef } from '../model/design'
import { conductorById, conductorsAt, partById } from '../model/lookup'
import type { Finding } from './finding'
import type { Case } from './rule'

/**
 * The edit that lands a load's return behind the load-side shunt: certain where the load has one return of its own
 * and a bar on the load side has room for it. Undefined otherwise.
 */
export function reroutedReturn(c: Case, shunt: PartId, load: PartId, device: string): Finding['fix'] {
  const ref = c.border.devices.get(`${load}/${device}`)
  if (!ref) return undefined
  const [only, ...more] = conductorsAt(c.design, load, ref.device.negative)
  if (!only || more.length > 0) return undefined
  return landedBehind(c, shunt, only.id, only.from.part === load ? 'to' : 'from')
}

/** The edit that takes one end of a conductor to a bar behind the shunt; undefined where none has room for it. */
export function landedBehind(c: Case, shunt: PartId, id: ConductorId, end: 'from' | 'to'): Finding['fix'] {
  for (const to of studsBehind(c, shunt))
    if (canReconnect(c.design, id, end, to) === null)
      return {
        title: `Move ${conductorById(c.design, id)?.number ?? id} to ${partById(c.design, to.part)?.designation ?? to.part}`,
        edit: { do: 'reconnect', conductor: id, end, to },
      }
  return undefined
}

/** Terminals with room on the bars that are joined straight to the load side of a shunt, emptiest first. */
function studsBehind(c: Case, shunt: PartId): TerminalRef[] {
  const branch = [...c.border.branches.values()].find((b) => b.part === shunt && b.branch.kind === 'shunt')
  if (!branch) return []
  const bars = conductorsAt(c.design, shunt, branch.branch.from).map((w) =>
    w.from.part === shunt ? w.to.part : w.from.part,
  )
  return bars.flatMap((bar) => {
    const part = partById(c.design, bar)
    if (!part || !c.border.bars.has(bar)) return []
    const used = (key: string): number => conductorsAt(c.design, bar, key).length
    return (plainTerminalsIn(part) ?? [])
      .filter((t) => t.takes === undefined || used(t.key) < t.takes)
      .sort((a, b) => used(a.key) - used(b.key))
      .map((t) => ({ part: bar, terminal: t.key }))
  })
}

/** Ids of the conductors at the negative terminal of a device. */
export function returnsOf(c: Case, part: PartId, device: string): ConductorId[] {
  const ref = c.border.devices.get(`${part}/${device}`)
  return ref ? conductorsAt(c.design, part, ref.device.negative).map((w) => w.id) : []
}
