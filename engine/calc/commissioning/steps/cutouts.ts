import type { PartId } from '../../../model/design'
import { numberOf } from '../../numberof'
import { operate } from '../../operate'
import { notKnown, threshold, voltsOrDead } from '../expect'
import { negativeFor, polesOf, probe, volts } from '../probes'
import type { Rig } from '../rig'
import type { Reading, StepCaution, StepTells, TestStep } from '../step'
import { thresholds } from './relays'

/** What takes loads off before the battery is empty, each at its own voltage. */
export const cutOutSteps = (rig: Rig): TestStep[] => [...cutOuts(rig), ...stops(rig)]

const step = (
  key: string,
  tells: StepTells,
  part: PartId,
  cautions: readonly StepCaution[],
  readings: readonly Reading[],
): TestStep => ({
  key: `cut-outs/${key}`,
  group: 'cut-outs',
  tells,
  parts: [part],
  conductors: [],
  cautions,
  setting: { loads: 'off' },
  readings,
})

const cutOuts = (rig: Rig): TestStep[] =>
  rig.plan.contacts.flatMap(({ id, part, workedBy: w }) => {
    if (w?.by !== 'voltage' || w.usually !== 'closed') return []
    const readings = [...thresholds(part, w.closesV, w.opensV), openReading(rig, id, part)]
    return [step(part, 'cut-out', part, ['battery-short'], readings)]
  })

/** Behind it, while it is open: the model keeps it where its voltages put it, so it is taken out as if by hand. */
function openReading(rig: Rig, id: string, part: PartId): Reading {
  const { branch } = rig.plan.border.branches.get(id)!
  const far = probe(part, branch.to)
  const low = negativeFor(rig, far)
  const { conductors } = rig.design
  const cut = {
    ...rig.design,
    conductors: conductors.filter(
      (c) => ![c.from, c.to].some((e) => e.part === part && e.terminal === branch.from),
    ),
  }
  const point = low && operate(cut, rig.quiet)
  return {
    key: 'off',
    asks: 'voltage-off',
    instrument: 'voltmeter',
    at: low ? [far, low] : [far],
    conductors: [],
    expected: !point
      ? notKnown('no-supply', [part])
      : point.ok
        ? voltsOrDead(volts(rig, point, far, low))
        : notKnown('no-operating-point', point.parts),
  }
}

/** Converters that stop by themselves. */
const stops = ({ design, plan }: Rig): TestStep[] =>
  design.parts.flatMap((p) => {
    const [field, tells, side] = STOPS[p.kind] ?? []
    if (field === undefined || tells === undefined) return []
    const input = plan.devices.find((x) => x.part === p.id && x.device.key === side)
    const at = numberOf(p, field)
    const reading: Reading = {
      key: 'stops-at',
      asks: 'stops-at',
      instrument: 'voltmeter',
      at: input ? polesOf(input) : [probe(p.id)],
      conductors: [],
      expected: at === null ? notKnown('no-threshold', [p.id]) : threshold(at),
    }
    return [step(p.id, tells, p.id, p.kind === 'alternator-charger' ? ['engine'] : ['mains'], [reading])]
  })

/** `side`: key of the device whose voltage stops it. */
const STOPS: Readonly<Record<string, readonly [field: string, tells: StepTells, side: string]>> = {
  inverter: ['lowestV', 'inverter-stop', 'input'],
  'inverter-charger': ['lowestV', 'inverter-stop', 'battery-side'],
  'alternator-charger': ['inputLowestV', 'charger-stop', 'input'],
}
