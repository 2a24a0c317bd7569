import type { Amps, Watts } from '../../units'
import type { Operation } from '../operation'
import type { Prepared } from '../prepare'
import { stageVolts, standingAt, upTo } from './charging'
import type { Feeds } from './feeds'
import type { Plan, PlannedDevice } from './plan'
import { heldOhms, nominalOf, typicalOhms } from './practice'
import type { SolarOutputs } from './solar'
import { type Holding, standingBatteries } from './standing'
import type { Uses } from './uses'

/** What holds for one pass of the search: how contacts stand shows in `feeds`. */
export interface Pass {
  readonly plan: Plan
  readonly p: Prepared
  readonly uses: Uses
  readonly feeds: Feeds
  /** Loads and outputs of converters that are taken as stopped. */
  readonly stopped: ReadonlySet<number>
  readonly solar: SolarOutputs
}

const RESTS: Operation = { amps: 0 }

/**
 * What every device does, for the load flow: chargers up to the voltage of their stage, and what they charge in
 * absorption or float as full. O(devices), and once more for each charger in absorption or float.
 */
export function operationsOf(pass: Pass): Map<string, Operation> {
  const operations = withoutStages(pass)
  const { devices } = pass.plan
  const holding: Holding[] = []
  devices.forEach(({ id, device }, d) => {
    const does = operations.get(id)
    const heldV = stageVolts(device, pass.uses.stage[d]!, pass.feeds.restV(d) ?? 0)
    if (!does || heldV === null || !isGiving(does)) return
    const { input, efficiency } = does
    const along = input === undefined ? {} : { input, efficiency: efficiency ?? 1 }
    operations.set(id, { stretches: upTo(heldV, does), ...along })
    if (pass.uses.stage[d] !== 'bulk') holding.push({ device: d, heldV })
  })
  for (const [d, heldV] of standingBatteries(pass.plan, pass.p, pass.feeds, pass.uses, holding)) {
    const { id, device } = devices[d]!
    const emf = pass.uses.emf[d]!
    operations.set(id, { stretches: standingAt(heldV, emf, device.internalOhms ?? typicalOhms(emf)) })
  }
  return operations
}

const isGiving = (o: Operation): o is Operation & ({ amps: Amps } | { watts: Watts }) =>
  ('amps' in o && o.amps > 0) || ('watts' in o && o.watts > 0)

function withoutStages(pass: Pass): Map<string, Operation> {
  const { devices } = pass.plan
  const operations = new Map<string, Operation>()
  const drawn = new Set<number>()
  devices.forEach((x, d) => {
    if (x.is === 'follower') return
    const does = pass.stopped.has(d) ? RESTS : doing(pass, x, d)
    const runs = x.input !== -1 && does !== RESTS
    if (runs) drawn.add(x.input)
    operations.set(x.id, runs ? coupled(does, devices[x.input]!, x) : does)
  })
  devices.forEach((x, d) => {
    if (x.is === 'follower' && !drawn.has(d)) operations.set(x.id, RESTS)
  })
  return operations
}

const coupled = (does: Operation, input: PlannedDevice, { device }: PlannedDevice): Operation => ({
  ...does,
  input: input.id,
  efficiency: device.suppliedBy?.efficiency ?? 1,
})

function doing(pass: Pass, x: PlannedDevice, d: number): Operation {
  const { feeds, uses } = pass
  const { device, limitA } = x
  const share = uses.share[d]!
  switch (x.is) {
    case 'battery':
      return { volts: uses.emf[d]!, ohms: device.internalOhms ?? typicalOhms(uses.emf[d]!) }
    case 'load':
      return drawing(pass, x, d)
    case 'coil':
      return coil(pass, x, d)
    case 'source':
      return feeds.charges(d) ? gives(share * limitA) : RESTS
    case 'two-way':
      if (share > 0) return feeds.charges(d) ? gives(share * limitA) : RESTS
      return drawing(pass, x, d)
    case 'array':
      if (feeds.charges(d)) return gives((share * device.array!.watts!) / device.array!.volts!)
      return pass.solar.arrays.get(d) ?? RESTS
    case 'controller':
      return pass.solar.controllers.get(d) ?? RESTS
    case 'charger':
      return runs(pass, x, d) ? gives(share * limitA) : RESTS
    case 'held':
      if (feeds.holds.has(d)) return { volts: device.holdsV!, ohms: heldOhms(device.holdsV!, limitA || 1) }
      return (feeds.restV(x.input) ?? 0) > 0 && feeds.charges(d) && device.holdsV! > feeds.restV(d)!
        ? gives(limitA)
        : RESTS
    default:
      return RESTS
  }
}

const gives = (amps: Amps): Operation => (amps > 0 ? { amps } : RESTS)

/** A charger between two batteries runs while its input is fed and what it waits for gives. */
function runs({ feeds, uses }: Pass, { input, waitsFor }: PlannedDevice, d: number): boolean {
  const called = waitsFor.length === 0 || waitsFor.some((s) => uses.share[s]! > 0)
  return called && feeds.charges(d) && (feeds.restV(input) ?? 0) > 0
}

/** A resistance stays where it is whatever feeds it; what needs a voltage draws only where one stands the right way. */
function drawing({ feeds, uses }: Pass, { device }: PlannedDevice, d: number): Operation {
  const use = uses.draws[d]!
  const full = device.atFullUse
  if (use === 0) return RESTS
  if (full && 'ohms' in full) return { ohms: full.ohms / use }
  if (!((feeds.restV(d) ?? 0) > 0)) return RESTS
  if (full) return { watts: -full.watts * use }
  return typeof device.minA === 'number' && device.minA < 0 ? { amps: device.minA * use } : RESTS
}

/** A coil is a resistance: its nominal voltage over its current. */
function coil({ feeds, plan }: Pass, { device }: PlannedDevice, d: number): Operation {
  if (typeof device.minA !== 'number' || device.minA === 0) return RESTS
  const restV = feeds.restV(d)
  return { ohms: nominalOf(restV || plan.systemV) / -device.minA }
}
