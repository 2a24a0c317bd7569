import { valuesOf } from '../calc/fusefacts'
import { highestVolts, type Step } from '../calc/highestvolts'
import { contextOf } from '../calc/network'
import type { PartId } from '../model/design'
import { partById } from '../model/lookup'
import type { Volts } from '../units'
import { type Case, found, type Rule } from './rule'
import { coldVoltage } from './stringvoltage'

/** U1: a fuse, breaker or isolator rated for less voltage than it may have to interrupt: its arc may not go out. */
export const voltageRating: Rule = {
  id: 'U1',
  looksFor: 'fuses, breakers and isolators rated for less than the highest voltage there',
  check: (c) => {
    const highest = highestVolts(c.p, stepsOf(c))
    const worst = new Map<PartId, Volts>()
    for (const [id, { part }] of c.border.branches) {
      const e = c.p.branchIndex.get(id)
      if (e === undefined) continue
      const volts = highest(c.p.net[c.p.graph.tail[e]!]!)
      worst.set(part, Math.max(volts, worst.get(part) ?? 0))
    }
    return [...worst].flatMap(([part, volts]) => {
      const rated = valuesOf(c.design, part)('voltageV')
      if (typeof rated !== 'number' || volts <= rated * (1 + 1e-9)) return []
      return [
        found(
          'U1',
          'danger',
          'rating',
          { parts: [part] },
          { part },
          { actual: { value: volts, unit: 'V' }, limit: { value: rated, unit: 'V' } },
        ),
      ]
    })
  },
}

/** Batteries at their highest charge voltage, arrays open and cold, step-down outputs at what they hold. */
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
