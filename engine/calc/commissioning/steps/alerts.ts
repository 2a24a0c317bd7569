import type { PartId } from '../../../model/design'
import { between, notKnown, seen } from '../expect'
import { probe } from '../probes'
import type { Rig } from '../rig'
import type { Expected, Reading, StepCaution, StepTells, TestStep } from '../step'

/** Warnings come before something switches off, and somebody hears them. */
export function alertSteps(rig: Rig): TestStep[] {
  const { parts } = rig.design
  const hubs = parts.filter((p) => p.kind === 'monitor-hub')
  return [
    ...hubs.map((p) => batteryAlert(rig, p.id)),
    ...parts.flatMap((p) => {
      const found = SENDERS[p.kind]
      return found ? [step(p.id, found.tells, found.cautions, [heard(p.id)])] : []
    }),
  ]
}

const SENDERS: Readonly<Record<string, { tells: StepTells; cautions: readonly StepCaution[] }>> = {
  'gas-sender': { tells: 'gas-alert', cautions: ['gas'] },
  'tank-sender': { tells: 'tank-alert', cautions: [] },
  'temperature-sender': { tells: 'temperature-alert', cautions: [] },
}

const step = (
  part: PartId,
  tells: StepTells,
  cautions: readonly StepCaution[],
  readings: readonly Reading[],
): TestStep => ({
  key: `alerts/${part}`,
  group: 'alerts',
  tells,
  parts: [part],
  conductors: [],
  cautions,
  setting: {},
  readings,
})

const heard = (part: PartId): Reading => ({
  key: 'so',
  asks: 'so',
  instrument: 'eyes',
  at: [probe(part)],
  conductors: [],
  expected: seen(),
})

/** The low-battery warning lies above the voltage at which something takes the loads off. */
function batteryAlert(rig: Rig, hub: PartId): TestStep {
  const opens = rig.plan.contacts.flatMap(({ workedBy: w }) =>
    w?.by === 'voltage' && w.usually === 'closed' && w.opensV !== null ? [w.opensV] : [],
  )
  const expected: Expected =
    opens.length === 0 ? notKnown('no-alert', [hub]) : between('V', null, Math.max(...opens), null)
  const set: Reading = {
    key: 'set-at',
    asks: 'set-at',
    instrument: 'display',
    at: [probe(hub)],
    conductors: [],
    expected,
  }
  return step(hub, 'battery-alert', [], [set, heard(hub)])
}
