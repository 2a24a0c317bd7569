import type { ConductorId, PartId } from '../../model/design'
import type { Amps } from '../../units'
import type { Attempt } from './attempt'
import { hasTypedVolts } from './charging'
import { pulses } from './contacts'
import { feedsOf } from './feeds'
import type { Plan, PlannedDevice } from './plan'
import { seenOf } from './seen'
import type { OperatingNote, OperatingNoteKind } from './state'
import type { Uses } from './uses'

const SLACK = 1 + 1e-9
const NO_AMPS: Amps = 1e-9

/** What a reader of the operating point must know: what is left out, stands in, is simplified, or goes past a limit. */
export function notesOf(
  plan: Plan,
  uses: Uses,
  at: Attempt,
  branches: ReadonlyMap<string, Amps>,
): OperatingNote[] {
  return [
    ...leftOut(plan, uses, at),
    ...standIns(plan, branches),
    ...pastLimits(plan, at, branches),
    ...sources(plan, uses, at),
    ...works(plan, at),
  ]
}

/** One note on all the parts it is about; none where there are none. */
function noteOn(
  note: OperatingNoteKind,
  parts: readonly PartId[],
  conductors: readonly ConductorId[] = [],
): OperatingNote[] {
  return parts.length + conductors.length === 0 ? [] : [{ note, parts: [...new Set(parts)], conductors }]
}

const partsWhere = (plan: Plan, test: (x: PlannedDevice, d: number) => boolean): PartId[] =>
  plan.devices.flatMap((x, d) => (test(x, d) ? [x.part] : []))

const isLoad = (x: PlannedDevice): boolean => x.is === 'load' || x.is === 'two-way'

const isResistance = ({ device }: PlannedDevice): boolean =>
  device.atFullUse !== undefined && 'ohms' in device.atFullUse

function leftOut(plan: Plan, uses: Uses, { feeds, stopped }: Attempt): OperatingNote[] {
  const dead = (d: number): boolean => !feeds.restV(d)
  const unfed = plan.devices.some((x, d) => isLoad(x) && uses.draws[d]! > 0 && dead(d))
  const ever = unfed ? feedsOf(plan, plan.all, uses, new Set()) : feeds
  return [
    ...noteOn(
      'no-battery-feeds',
      partsWhere(plan, (x, d) => isLoad(x) && uses.draws[d]! > 0 && dead(d) && !ever.restV(d)),
    ),
    ...noteOn(
      'reversed',
      partsWhere(plan, (x, d) => {
        const live = x.is === 'source' ? uses.share[d]! > 0 : isLoad(x) && !isResistance(x)
        return live && (feeds.restV(d) ?? 0) < 0
      }),
    ),
    ...noteOn(
      'missing-figure',
      partsWhere(plan, (x) => x.is === 'unknown'),
    ),
    ...noteOn(
      'starved',
      [...stopped].map((d) => plan.devices[d]!.part),
    ),
  ]
}

function standIns({ border, devices }: Plan, branches: ReadonlyMap<string, Amps>): OperatingNote[] {
  const batteries = devices.filter((x) => x.is === 'battery' && !((x.device.internalOhms ?? 0) > 0))
  const unrated = [...border.unrated].filter((id) => Math.abs(branches.get(id)!) > NO_AMPS)
  return [
    ...noteOn(
      'typical-resistance',
      batteries.map((x) => x.part),
    ),
    ...noteOn('missing-run', [], [...border.assumed]),
    ...noteOn(
      'missing-rating',
      unrated.map((id) => border.branches.get(id)!.part),
    ),
  ]
}

function pastLimits(plan: Plan, { flow }: Attempt, branches: ReadonlyMap<string, Amps>): OperatingNote[] {
  const past = (note: OperatingNoteKind, part: PartId, amps: Amps, limitA: Amps): OperatingNote[] =>
    amps > limitA * SLACK ? [{ note, parts: [part], conductors: [], amps, limitA }] : []
  const devices = plan.devices.flatMap(({ is, part, device: { minA, maxA } }, d) => {
    const amps = flow.deviceAmps[d]!
    if (is === 'held') return past('converter-limit', part, amps, typeof maxA === 'number' ? maxA : amps)
    if (is !== 'battery') return []
    return [
      ...(typeof maxA === 'number' ? past('discharge-limit', part, amps, maxA) : []),
      ...(typeof minA === 'number' ? past('charge-limit', part, -amps, -minA) : []),
    ]
  })
  const ways = [...plan.border.branches].flatMap(([id, { part, branch }]) =>
    branch.ratingA === null ? [] : past('above-rating', part, Math.abs(branches.get(id)!), branch.ratingA),
  )
  return [...devices, ...ways]
}

function sources(plan: Plan, uses: Uses, { feeds, flow, stretch }: Attempt): OperatingNote[] {
  const { all, devices } = plan
  const arraysAt = ({ input }: PlannedDevice): number[] =>
    devices.flatMap(({ device }, d) => {
      const high = all.net[all.positive[d]!] === all.net[all.positive[input]!]
      const low = all.net[all.negative[d]!] === all.net[all.negative[input]!]
      return device.array && high && low ? [d] : []
    })
  const called = ({ waitsFor }: PlannedDevice): boolean => waitsFor.some((s) => uses.share[s]! > 0)
  const fullOn = (x: PlannedDevice, d: number): boolean =>
    x.is === 'charger' ? called(x) : (x.is === 'source' || x.is === 'two-way') && uses.share[d]! > 0
  const on = (x: PlannedDevice, d: number): boolean =>
    x.is === 'controller' ? arraysAt(x).some((a) => uses.share[a]! > 0) : fullOn(x, d)
  const holds = (d: number): boolean => (stretch.get(d) ?? 0) > 0
  return [
    ...noteOn(
      'nothing-to-charge',
      partsWhere(plan, (x, d) => on(x, d) && !feeds.charges(d) && !((feeds.restV(d) ?? 0) < 0)),
    ),
    ...noteOn(
      'full-current',
      partsWhere(plan, (x, d) => fullOn(x, d) && flow.deviceAmps[d]! > 0 && !holds(d)),
    ),
    ...noteOn(
      'holds-voltage',
      partsWhere(plan, (x, d) => x.is !== 'battery' && holds(d)),
    ),
    ...noteOn(
      'taken-as-full',
      partsWhere(plan, (x, d) => x.is === 'battery' && stretch.has(d)),
    ),
    ...noteOn(
      'typical-charge-voltage',
      partsWhere(plan, (x, d) => x.is !== 'battery' && holds(d) && !hasTypedVolts(x.device, uses.stage[d]!)),
    ),
    ...noteOn(
      'no-array',
      partsWhere(plan, (x) => x.is === 'controller' && arraysAt(x).length === 0),
    ),
    ...noteOn(
      'shared-array',
      feeds.suns
        .filter((s) => s.controllers.length > 1)
        .flatMap((s) => s.controllers.map((d) => devices[d]!.part)),
    ),
  ]
}

function works(plan: Plan, at: Attempt): OperatingNote[] {
  const seen = seenOf(plan, at)
  const where = (test: (c: Plan['contacts'][number]) => boolean): PartId[] =>
    plan.contacts.filter(test).map((c) => c.part)
  return [
    ...noteOn(
      'missing-threshold',
      where(({ workedBy: w }) => w?.by === 'voltage' && (w.closesV === null || w.opensV === null)),
    ),
    ...noteOn(
      'both-coils',
      where((c) => c.workedBy?.by === 'pulses' && pulses(c, c.workedBy, seen, plan.systemV).every(Boolean)),
    ),
  ]
}
