import { kindOf } from '../../../kinds/all'
import type { Design } from '../../../model/design'
import { contextOf } from '../../network'
import { numberOf } from '../../numberof'
import type { PlannedDevice } from '../../operating/plan'
import { ampsWithin, around, between, volts as liveVolts, notKnown } from '../expect'
import { HELD_SHARE, LOAD_AMPS, LOAD_SHARE, METER_SHARE } from '../practice'
import { conductorsOn, polesOf } from '../probes'
import { fullAndLow, isPoint, onlyThese, type Rig, rigOf, switchedOn, withLow } from '../rig'
import type { Expected, Reading, StepCaution, TestStep } from '../step'
import { heaviestOf } from '../together'
import { atRest, openCircuit } from './polarity'

/** Every source by itself: each battery carries a load alone, every other shows the voltage that it should. */
export const sourceSteps = (rig: Rig): TestStep[] =>
  rig.plan.devices.flatMap((x): TestStep[] => {
    if (x.is === 'battery') return [batteryAlone(rig, x)]
    const tells = tellsOf(rig, x)
    if (tells === null) return []
    const expected = expectedOf(rig, x, tells)
    const at = tells === 'array-alone' ? inputOf(rig, x) : x
    const setting = { sources: [x.part], loads: 'off' } as const
    return [step(x, tells, setting, cautionsOf(rig, x), [voltage(rig, at, expected)])]
  })

/** An array is measured once more where it arrives: at the input of its controller. */
function inputOf({ plan: { all, devices } }: Rig, x: PlannedDevice): PlannedDevice {
  const net = all.net[all.positive[devices.indexOf(x)]!]
  return devices.find((d, i) => d.is === 'follower' && all.net[all.positive[i]!] === net) ?? x
}

function step(
  x: PlannedDevice,
  tells: TestStep['tells'],
  setting: TestStep['setting'],
  cautions: readonly StepCaution[],
  readings: readonly Reading[],
): TestStep {
  const key = `source-alone/${x.id}`
  return { key, group: 'source-alone', tells, parts: [x.part], conductors: [], cautions, setting, readings }
}

const voltage = (rig: Rig, x: PlannedDevice, expected: Expected): Reading => ({
  key: 'volts',
  asks: 'voltage',
  instrument: 'voltmeter',
  at: polesOf(x),
  conductors: conductorsOn(rig, polesOf(x)[0]),
  expected,
})

function tellsOf({ design }: Rig, x: PlannedDevice): TestStep['tells'] | null {
  if (x.is === 'array' || x.device.array) return 'array-alone'
  if (x.is === 'held' || x.device.holdsV !== undefined) return 'converter-alone'
  if (kindOf(design.parts.find((p) => p.id === x.part)?.kind ?? '')?.key === 'alternator')
    return 'alternator-alone'
  return x.device.role === 'source' || x.device.role === 'two-way' ? 'charger-alone' : null
}

function expectedOf(rig: Rig, x: PlannedDevice, tells: TestStep['tells']): Expected {
  if (tells === 'array-alone') return openCircuit(rig, x.part)
  if (tells === 'converter-alone')
    return x.device.holdsV == null
      ? notKnown('no-voltage', [x.part])
      : around('V', [x.device.holdsV], HELD_SHARE, 0)
  if (tells === 'alternator-alone') {
    const regulated = numberOf(rig.part(x.part), 'regulatedV')
    return regulated === null ? notKnown('no-voltage', [x.part]) : around('V', [regulated], HELD_SHARE, 0)
  }
  return charging(rig, x)
}

/** A charger stands between the voltage of low batteries at its terminals and the highest charging voltage. */
function charging(rig: Rig, x: PlannedDevice): Expected {
  const point = rig.at(withLow(rig.quiet))
  if (!point.ok) return notKnown('no-operating-point', point.parts)
  const low = point.devices.get(x.id)?.volts ?? 0
  if (!(low > 0)) return notKnown('no-supply', [x.part])
  const typed = x.device.charging?.absorptionV ?? null
  const most = Math.max(low, typed ?? contextOf(rig.design).highestV)
  return between('V', typed, low * (1 - METER_SHARE), most * (1 + METER_SHARE))
}

function cautionsOf(rig: Rig, x: PlannedDevice): StepCaution[] {
  const kind = rig.part(x.part).kind
  if (x.device.array || kind === 'solar-controller') return ['array-live', 'arc']
  if (kind === 'alternator' || kind === 'alternator-charger') return ['engine']
  return kind === 'mains-charger' || kind === 'inverter-charger' ? ['mains'] : []
}

/** The others taken off, it carries the heaviest load alone: its own joints carry current. */
function batteryAlone(rig: Rig, x: PlannedDevice): TestStep {
  const others = beside(rig, x)
  const alone = others.length === 0 ? rig : rigOf(without(rig.design, others))
  const load = heaviestOf(alone, x.id)
  const setting = {
    ...(load ? { loads: [load.part], on: switchedOn(rig, [load.id]) } : { loads: 'off' as const }),
    ...(others.length > 0 ? { off: others.map((o) => o.part) } : {}),
  }
  const readings = load ? underLoad(alone, x, load) : [voltage(rig, x, atRest(x.device, x.part))]
  return step(x, 'battery-alone', setting, ['battery-short', 'arc'], readings)
}

function underLoad(rig: Rig, x: PlannedDevice, load: PlannedDevice): Reading[] {
  const found = fullAndLow(rig, onlyThese(rig, [load.id]))
  const points = isPoint(found) ? found : []
  const because = isPoint(found) ? null : notKnown('no-operating-point', found.parts)
  const [positive] = polesOf(x)
  const at = points.map((p) => p.devices.get(x.id)!)
  return [
    voltage(rig, x, because ?? liveVolts(...at.map((d) => d.volts))),
    {
      key: 'amps',
      asks: 'current',
      instrument: 'clamp',
      at: [positive],
      conductors: conductorsOn(rig, positive),
      expected:
        because ??
        ampsWithin(
          at.map((d) => d.amps),
          LOAD_SHARE,
          LOAD_AMPS,
        ),
    },
  ]
}

/** Batteries in parallel with one, by the nets of their poles. */
function beside({ plan: { all, devices } }: Rig, x: PlannedDevice): PlannedDevice[] {
  const d = devices.indexOf(x)
  return devices.filter(
    (b, i) =>
      i !== d &&
      b.is === 'battery' &&
      all.net[all.positive[i]!] === all.net[all.positive[d]!] &&
      all.net[all.negative[i]!] === all.net[all.negative[d]!],
  )
}

/** The design with the positive leads of some batteries lifted. */
function without(design: Design, batteries: readonly PlannedDevice[]): Design {
  const lifted = new Set(batteries.map((b) => `${b.part}/${b.device.positive}`))
  const isLifted = (end: { part: string; terminal: string }): boolean =>
    lifted.has(`${end.part}/${end.terminal}`)
  return { ...design, conductors: design.conductors.filter((c) => !isLifted(c.from) && !isLifted(c.to)) }
}
