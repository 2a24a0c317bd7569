import { coldVoltage } from '../calc/coldvoltage'
import { valuesOf } from '../calc/fusefacts'
import { highestVolts, type Step } from '../calc/highestvolts'
import { contextOf } from '../calc/network'
import type { PartId } from '../model/design'
import { partById } from '../model/lookup'
import type { Volts } from '../units'
import type { Case } from './rule'

const remembered = new WeakMap<Case, ReadonlyMap<PartId, Volts>>()

/** Highest voltage that the branches of each part may have to interrupt, V; worked out once for each case. */
export function highestAt(c: Case): ReadonlyMap<PartId, Volts> {
  const known = remembered.get(c)
  if (known) return known
  const highest = highestVolts(c.p, stepsOf(c))
  const worst = new Map<PartId, Volts>()
  remembered.set(c, worst)
  for (const [id, { part }] of c.border.branches) {
    const e = c.p.branchIndex.get(id)
    if (e === undefined) continue
    worst.set(part, Math.max(highest(c.p.net[c.p.graph.tail[e]!]!), worst.get(part) ?? 0))
  }
  return worst
}

/** Batteries at their highest charge voltage, arrays open and cold, outputs of converters at what they hold. */
function stepsOf(c: Case): Step[] {
  const { highestV, systemV } = contextOf(c.design)
  return [...c.border.devices].flatMap(([id, ref]) => {
    const device = c.p.deviceIndex.get(id)
    const part = partById(c.design, ref.part)
    if (device === undefined || !part) return []
    const of = valuesOf(c.design, ref.part)
    const volts =
      ref.role === 'battery'
        ? (Number(of('volts')) * highestV) / systemV
        : part.kind === 'pv-array'
          ? coldVoltage(part, c.design.settings.coldestC)
          : ref.device.key === 'output'
            ? (of('outputV') ?? null)
            : null
    return typeof volts === 'number' && volts > 0 ? [{ device, volts }] : []
  })
}
