import type { ConductorId, PartId } from '../../model/design'
import type { Amps, Volts } from '../../units'
import type { Attempt } from './attempt'
import { type Closed, isFed, stateAfter } from './contacts'
import { notesOf } from './notes'
import type { Plan } from './plan'
import { seenOf } from './seen'
import type { DevicePoint, OperatingPoint, OperatingState, PowerBalance, ShuntPoint } from './state'
import type { Uses } from './uses'

/** The operating point by ids of the design. O(parts + conductors). */
export function pointOf(
  plan: Plan,
  uses: Uses,
  state: OperatingState,
  closed: Closed,
  at: Attempt,
): OperatingPoint {
  const { border } = plan
  const ampsOf = (branch: string): Amps => {
    const e = at.p.branchIndex.get(branch)
    return e === undefined ? 0 : at.flow.branchAmps[e]!
  }
  const conductors = new Map<ConductorId, Amps>()
  const branches = new Map<string, Amps>()
  for (const { id } of border.form.branches)
    (border.conductors.has(id) ? conductors : branches).set(id, ampsOf(id))
  return {
    ok: true,
    state: stateAfter(plan, state, closed),
    conductors,
    branches,
    volts: voltsOf(plan, at),
    devices: new Map(plan.devices.map(({ id }, d) => [id, devicePoint(at, d)])),
    shunts: shuntsOf(plan, at, branches),
    relays: relaysOf(plan, at, closed),
    power: powerOf(plan, at),
    notes: notesOf(plan, uses, at, branches),
  }
}

function devicePoint({ flow, volts }: Attempt, d: number): DevicePoint {
  const amps = flow.deviceAmps[d]! + 0
  return { amps, volts: volts(d), watts: amps * volts(d) }
}

function voltsOf({ border }: Plan, { p, flow }: Attempt): Map<string, Volts> {
  const volts = new Map(p.form.nodes.map((id, v) => [id, flow.voltage[v]!]))
  for (const [terminal, node] of border.nodeOf) {
    const v = volts.get(node)
    if (v !== undefined) volts.set(terminal, v)
  }
  return volts
}

function shuntsOf(
  { shunts }: Plan,
  { flow }: Attempt,
  branches: ReadonlyMap<string, Amps>,
): Map<PartId, ShuntPoint> {
  return new Map(
    shunts.map(({ part, branch, truth: shares }) => {
      const shows = branches.get(branch)!
      const truth = shares.reduce((sum, share, d) => sum + share * flow.deviceAmps[d]!, 0)
      return [part, { shows, truth, off: shows - truth }]
    }),
  )
}

function relaysOf(plan: Plan, at: Attempt, closed: Closed): Map<string, boolean> {
  const seen = seenOf(plan, at)
  const relays = new Map<string, boolean>()
  for (const { id, part, workedBy: w } of plan.contacts) {
    if (w?.by === 'coil') relays.set(`${part}/${w.coil}`, closed.has(id) === (w.closed === 'fed'))
    if (w?.by !== 'pulses') continue
    for (const coil of [w.close, w.open])
      relays.set(`${part}/${coil}`, isFed(`${part}/${coil}`, false, seen, plan.systemV))
  }
  return relays
}

function powerOf({ devices }: Plan, { p, flow, volts }: Attempt): PowerBalance {
  const power = { batteries: 0, sources: 0, loads: 0, converters: 0, ways: 0 }
  devices.forEach((x, d) => {
    const watts = flow.deviceAmps[d]! * volts(d)
    if (x.is === 'battery') power.batteries += watts
    else if (x.is === 'follower' || x.input !== -1) power.converters -= watts
    else if (watts > 0) power.sources += watts
    else power.loads -= watts
  })
  flow.branchAmps.forEach((amps, e) => {
    power.ways += amps ** 2 * p.resistance[e]!
  })
  return power
}
