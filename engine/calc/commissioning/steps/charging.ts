import type { PlannedDevice } from '../../operating/plan'
import type { OperatingPoint, OperatingState } from '../../operating/state'
import { between, notKnown, roundTo } from '../expect'
import { CHARGES_AT, HALF, LOAD_AMPS, LOAD_SHARE } from '../practice'
import { conductorsOn, polesOf } from '../probes'
import { atCharge, onlyThese, type Rig, withFull } from '../rig'
import { shuntReadings } from '../shuntreading'
import type { Expected, Reading, StepCaution, TestStep } from '../step'

/** Every source charges: what it gives by the clamp meter, and what the shunts make of it. */
export const chargingSteps = (rig: Rig): TestStep[] =>
  rig.plan.devices.flatMap((x, d) => {
    const feeds = feedsOf(rig, x, d)
    return feeds === null ? [] : [step(rig, x, feeds)]
  })

/** What has to run for a source to give: itself, the arrays before it, or the alternator before it. null: no source. */
function feedsOf({ plan: { all, devices } }: Rig, x: PlannedDevice, d: number): PlannedDevice[] | null {
  if (x.is === 'source' && x.device.role === 'source') return [x]
  if (x.is === 'two-way') return [x]
  if (x.is === 'charger') return [x, ...x.waitsFor.map((i) => devices[i]!)]
  if (x.is !== 'controller') return null
  const input = all.net[all.positive[x.input]!]
  return devices.filter((a, i) => a.is === 'array' && i !== d && all.net[all.positive[i]!] === input)
}

function step(rig: Rig, x: PlannedDevice, feeds: readonly PlannedDevice[]): TestStep {
  const point = rig.at(stateOf(rig, feeds))
  const amps = point.ok ? (point.devices.get(x.id)?.amps ?? 0) : 0
  const because = whyNone(x, feeds, point.ok ? amps : null)
  const points: readonly OperatingPoint[] = point.ok && because === null ? [point] : []
  const [positive] = polesOf(x)
  const clamp: Reading = {
    key: 'amps',
    asks: 'current',
    instrument: 'clamp',
    at: [positive],
    conductors: conductorsOn(rig, positive),
    expected: because ?? between('A', amps, CHARGES_AT, amps * (1 + LOAD_SHARE) + LOAD_AMPS),
  }
  const without = rig.at(stateOf(rig, []))
  const clampOf = without.ok ? { reading: 'amps', amps, without } : null
  const shunts = shuntReadings(rig, points, clampOf, because)
  return {
    key: `charging/${x.id}`,
    group: 'charging',
    tells: 'charge',
    parts: [x.part],
    conductors: [],
    cautions: cautionsOf(rig, x),
    setting: { loads: 'off', sources: [...new Set(feeds.map((f) => f.part))] },
    readings: [clamp, ...shunts.map((r) => ({ ...r, expected: upTo(r.expected) }))],
  }
}

/** Half full, so that each gives what it can. */
const stateOf = (rig: Rig, feeds: readonly PlannedDevice[]): OperatingState => {
  const quiet = onlyThese(rig, [])
  return atCharge(
    {
      ...quiet,
      sources: withFull(
        quiet.sources,
        feeds.map((f) => f.id),
      ),
    },
    HALF,
  )
}

function whyNone(x: PlannedDevice, feeds: readonly PlannedDevice[], amps: number | null): Expected | null {
  if (feeds.length === 0) return notKnown('no-array', [x.part])
  if (amps === null) return notKnown('no-operating-point', [x.part])
  return amps > 0 ? null : notKnown('no-supply', [x.part])
}

/** As sun and battery let it give less than it could, a shunt that it passes shows anything from none of it to all. */
function upTo(expected: Expected): Expected {
  if (expected.is !== 'figure' || !expected.against || expected.least === null || expected.most === null)
    return expected
  const { plus, amount } = expected.against
  const [low, high] = [roundTo(plus - amount, 'A'), roundTo(plus + amount, 'A')]
  return { ...expected, least: Math.min(expected.least, low), most: Math.max(expected.most, high) }
}

function cautionsOf(rig: Rig, x: PlannedDevice): StepCaution[] {
  const kind = rig.part(x.part).kind
  if (kind === 'solar-controller') return ['array-live', 'arc']
  if (kind === 'alternator' || kind === 'alternator-charger') return ['engine']
  return kind === 'mains-charger' || kind === 'inverter-charger' ? ['mains'] : []
}
