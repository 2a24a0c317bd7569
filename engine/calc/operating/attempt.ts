import type { Volts, Watts } from '../../units'
import { type LoadFlow, loadFlow, type NoLoadFlow } from '../loadflow'
import { type Prepared, prepare } from '../prepare'
import { stretchAt } from '../stretches'
import type { Closed } from './contacts'
import { type Feeds, feedsOf } from './feeds'
import { operationsOf } from './operations'
import type { Plan } from './plan'
import { STOPS } from './practice'
import { learnt, type SunGuess, solarOutputs } from './solar'
import type { OperatingState } from './state'
import type { Uses } from './uses'

/** The operating point while contacts stand as they do. */
export interface Attempt {
  readonly p: Prepared
  readonly feeds: Feeds
  readonly flow: LoadFlow
  /** Chargers by the stretch they work in: they give fully, hold their voltage, or rest above it; batteries taken as full. */
  readonly stretch: ReadonlyMap<number, number>
  /** Loads and outputs of converters without enough voltage. */
  readonly stopped: ReadonlySet<number>
  readonly volts: (device: number) => Volts
}

/** Corrections of what the sun gives, after which it is taken as it is: the loss is then known to a part in a million. */
const MOST_CORRECTIONS = 6

/**
 * Solves for contacts that stand still: takes out, one by one, what cannot run on the voltage that is left for it, and
 * finds what the sun gives behind its leads. As a rule one load flow; one more for each of these steps.
 */
export function attempt(plan: Plan, uses: Uses, state: OperatingState, closed: Closed): Attempt | NoLoadFlow {
  const p = prepare(switched(plan, state, closed))
  const stopped = new Set<number>()
  let guesses: readonly SunGuess[] = []
  for (let corrections = 0; ; ) {
    const feeds = feedsOf(plan, p, uses, stopped)
    const solar = solarOutputs(plan, feeds, uses, guesses)
    const operations = operationsOf({ plan, p, uses, feeds, stopped, solar })
    const flow = loadFlow(p, operations)
    if ('reason' in flow) {
      const worst = greediest(plan, p, uses, stopped, flow.devices)
      if (flow.reason !== 'no-steady-state' || worst === undefined) return flow
      stopped.add(worst)
      continue
    }
    const volts = voltsOf(p, flow)
    const starved = mostStarved(plan, feeds, flow, volts)
    if (starved !== undefined) {
      stopped.add(starved)
      continue
    }
    const watts = (d: number): Watts => flow.deviceAmps[d]! * volts(d)
    const stretch = new Map(
      plan.devices.flatMap(({ id }, d) => {
        const o = operations.get(id)
        return o && 'stretches' in o ? [[d, stretchAt(o.stretches, volts(d))] as const] : []
      }),
    )
    const next =
      corrections < MOST_CORRECTIONS ? learnt(plan, feeds, uses, guesses, { flow, watts, stretch }) : null
    if (!next) return { p, feeds, flow, stopped, stretch, volts }
    corrections += 1
    guesses = next
  }
}

/** The network without open contacts and fuses that are out. */
function switched({ border, contacts }: Plan, { blown }: OperatingState, closed: Closed) {
  const open = new Set(contacts.flatMap(({ id }) => (closed.has(id) ? [] : [id])))
  const branches = border.form.branches.filter(
    (b) => !(open.has(b.id) || (b.kind === 'fuse' && blown.has(b.id))),
  )
  return { ...border.form, branches }
}

const voltsOf =
  (p: Prepared, { voltage, group }: LoadFlow) =>
  (d: number): Volts => {
    const high = p.positive[d]!
    const low = p.negative[d]!
    return group[high] === group[low] ? voltage[high]! - voltage[low]! : 0
  }

/** Of the devices named, the load or converter that asks for the most power. */
function greediest(
  plan: Plan,
  p: Prepared,
  uses: Uses,
  stopped: ReadonlySet<number>,
  named: readonly string[],
): number | undefined {
  const asks = (d: number): Watts => {
    const { device, limitA } = plan.devices[d]!
    const full = device.atFullUse
    return full && 'watts' in full ? full.watts * uses.draws[d]! : limitA * plan.systemV
  }
  const candidates = named.flatMap((id) => {
    const d = p.deviceIndex.get(id)!
    const output = plan.devices.findIndex((x) => x.input === d)
    return [output === -1 ? d : output]
  })
  return candidates
    .filter((d) => !stopped.has(d) && plan.devices[d]!.is !== 'battery')
    .reduce<number | undefined>(
      (most, d) => (most === undefined || asks(d) > asks(most) ? d : most),
      undefined,
    )
}

/** The load or converter with the least of its voltage left, if that is too little to run. */
function mostStarved(
  { devices }: Plan,
  feeds: Feeds,
  { deviceAmps }: LoadFlow,
  volts: (d: number) => Volts,
): number | undefined {
  let least = STOPS
  let found: number | undefined
  devices.forEach((x, d) => {
    const at = x.input === -1 ? d : x.input
    const full = x.device.atFullUse
    const needs = x.is === 'load' || x.is === 'two-way' || x.is === 'charger' || x.is === 'held'
    if (!needs || !(deviceAmps[at]! < 0) || (full && 'ohms' in full)) return
    const left = volts(at) / (feeds.restV(at) ?? Number.NaN)
    if (!(left < least)) return
    least = left
    found = d
  })
  return found
}
