import type { PartDevice } from '../../../model/kind'
import { partById } from '../../../model/lookup'
import type { Volts } from '../../../units'
import { coldVoltage } from '../../coldvoltage'
import { numberOf } from '../../numberof'
import { restVolts } from '../../operating/uses'
import { between, notKnown } from '../expect'
import { LOW_CHARGE, METER_SHARE, SURFACE_SHARE } from '../practice'
import { conductorsOn, polesOf } from '../probes'
import type { Rig } from '../rig'
import type { Expected, TestStep } from '../step'

/** A source shows its own polarity before anything hangs on it: batteries at their posts, arrays at their leads. */
export const polaritySteps = (rig: Rig): TestStep[] =>
  rig.plan.devices.flatMap((x): TestStep[] => {
    if (x.is !== 'battery' && x.device.array === undefined) return []
    const isBattery = x.is === 'battery'
    return [
      {
        key: `polarity/${x.id}`,
        group: 'polarity',
        tells: isBattery ? 'battery-polarity' : 'array-polarity',
        parts: [x.part],
        conductors: [],
        cautions: isBattery ? ['battery-short'] : ['array-live', 'arc'],
        setting: { isolated: true },
        readings: [
          {
            key: 'volts',
            asks: 'voltage',
            instrument: 'voltmeter',
            at: polesOf(x),
            conductors: conductorsOn(rig, polesOf(x)[0]),
            expected: isBattery ? atRest(x.device, x.part) : openCircuit(rig, x.part),
          },
        ],
      },
    ]
  })

/** From nearly empty to freshly charged; the other way round it would be below 0. */
export function atRest(device: PartDevice, part: string): Expected {
  const full = restVolts(device, 1)
  if (!(full > 0)) return notKnown('no-voltage', [part])
  return between('V', full, restVolts(device, LOW_CHARGE) * (1 - METER_SHARE), full * (1 + SURFACE_SHARE))
}

/** Least share of its open-circuit voltage that an array shows in daylight, hot and dim. Common practice, no source. */
const DIM = 0.7

export function openCircuit({ design }: Rig, part: string): Expected {
  const array = partById(design, part)!
  const voc = numberOf(array, 'vocV')
  const series = numberOf(array, 'series')
  const cold = coldVoltage(array, design.settings.coldestC)
  if (voc === null || series === null || cold === null) return notKnown('no-voltage', [part])
  const usual: Volts = voc * series
  return between('V', usual, DIM * usual, Math.max(cold, usual) * (1 + METER_SHARE))
}
