import { kindOf } from '../../../kinds/all'
import { partById } from '../../../model/lookup'
import type { PlannedDevice } from '../../operating/plan'
import type { OperatingPoint } from '../../operating/state'
import { ampsWithin, volts as liveVolts, notKnown } from '../expect'
import { missingRuns, withoutIt } from '../guesses'
import { INVERTER_SHARE, LOAD_AMPS, LOAD_SHARE } from '../practice'
import { conductorsOn, polesOf } from '../probes'
import { fullAndLow, isPoint, onlyThese, type Rig, switchedOn } from '../rig'
import { type ClampOf, shuntReadings } from '../shuntreading'
import type { Expected, Reading, StepCaution, TestStep } from '../step'

/** Every load alone: what it draws, what it is left with, and whether the shunts count it. */
export const loadSteps = (rig: Rig): TestStep[] =>
  rig.plan.devices.flatMap((x) => (isTested(rig, x) ? [loadStep(rig, x)] : []))

/** What draws for its own sake: not coils, and not the inputs of converters, which draw what their output asks. */
function isTested({ design }: Rig, x: PlannedDevice): boolean {
  if (x.is === 'load' || x.is === 'two-way') return true
  return (
    x.is === 'unknown' &&
    x.device.role === 'load' &&
    kindOf(partById(design, x.part)?.kind ?? '')?.group === 'loads'
  )
}

function loadStep(rig: Rig, x: PlannedDevice): TestStep {
  const found = fullAndLow(rig, onlyThese(rig, [x.id]))
  const points = isPoint(found) ? found : []
  const [positive, negative] = polesOf(x)
  const because = isPoint(found) ? whyNone(x, points) : notKnown('no-operating-point', found.parts)
  const amps = points.map((p) => Math.abs(p.devices.get(x.id)?.amps ?? 0))
  const share = x.is === 'two-way' || isInverter(rig, x) ? INVERTER_SHARE : LOAD_SHARE
  const clamp: Reading = {
    key: 'amps',
    asks: 'current',
    instrument: 'clamp',
    at: [positive],
    conductors: conductorsOn(rig, positive),
    expected: because ?? ampsWithin(amps, share, LOAD_AMPS),
  }
  const left: Reading = {
    key: 'volts',
    asks: 'at-load',
    instrument: 'voltmeter',
    at: [positive, negative],
    conductors: [],
    expected:
      because ?? missingRuns(rig, x.id) ?? liveVolts(...points.map((p) => p.devices.get(x.id)!.volts)),
  }
  return {
    key: `loads/${x.id}`,
    group: 'loads',
    tells: tellsOf(rig, x),
    parts: [x.part],
    conductors: [],
    cautions: cautionsOf(rig, x),
    setting: { loads: [x.part], on: switchedOn(rig, [x.id]) },
    readings: [left, clamp, ...shuntReadings(rig, points, clampOf(rig, x, points), because, 'load')],
  }
}

/** The clamp meter on its feed, and the shunts with the same switches on and the load itself off. */
function clampOf(rig: Rig, x: PlannedDevice, points: readonly OperatingPoint[]): ClampOf | null {
  const [full] = points
  if (!full) return null
  const without = rig.at(withoutIt(rig, x.id))
  if (!without.ok) return null
  const amps = Math.abs(full.devices.get(x.id)?.amps ?? 0)
  return { reading: 'amps', amps, without }
}

/** Why nothing can be expected of a load; null where something can. */
function whyNone(x: PlannedDevice, points: readonly OperatingPoint[]): Expected | null {
  if (x.is === 'unknown') return notKnown('no-draw', [x.part])
  const amps = points.map((p) => Math.abs(p.devices.get(x.id)?.amps ?? 0))
  if (amps.some((a) => a > 0)) return null
  return notKnown(points.some((p) => (p.devices.get(x.id)?.volts ?? 0) > 0) ? 'no-draw' : 'no-supply', [
    x.part,
  ])
}

const kindKey = ({ design }: Rig, x: PlannedDevice): string => partById(design, x.part)?.kind ?? ''
const isInverter = (rig: Rig, x: PlannedDevice): boolean => kindKey(rig, x) === 'inverter'

function tellsOf(rig: Rig, x: PlannedDevice): TestStep['tells'] {
  if (x.is === 'two-way' || isInverter(rig, x)) return 'inverter'
  return kindKey(rig, x) === 'socket' ? 'socket' : 'load'
}

function cautionsOf(rig: Rig, x: PlannedDevice): StepCaution[] {
  const kind = kindKey(rig, x)
  const name = partById(rig.design, x.part)?.name ?? ''
  return [
    ...(kind === 'motor' || kind === 'fan' || kind === 'pump' ? (['moves'] as const) : []),
    ...(kind === 'pump' ? (['runs-dry'] as const) : []),
    ...(/heat|warm|boil|cook|oven/i.test(name) ? (['gets-hot'] as const) : []),
    ...(x.is === 'two-way' || kind === 'inverter' ? (['mains', 'heavy-current'] as const) : []),
    ...(/\bgas\b|LPG/i.test(partById(rig.design, x.part)?.location ?? '') ? (['gas'] as const) : []),
  ]
}
