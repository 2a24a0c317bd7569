import { Unions } from '../../math/unions'
import { type Closed, startOf } from '../operating/contacts'
import type { Plan, PlannedContact } from '../operating/plan'
import type { OperatingState } from '../operating/state'

/** What is joined to what in one state of the switches, by the wiring alone: no currents, no missing figures. */
export interface Standing {
  readonly closed: Closed
  /** Name of the net of a terminal, `${part}/${terminal}`. */
  readonly netOf: (terminal: string) => string
  /** A battery, or a converter that is fed, stands between the two terminals of a device. */
  readonly isFed: (device: number) => boolean
  /** A device works: fed, and where it passes power on, there is power to pass. */
  readonly works: (device: number) => boolean
  /** An array stands at the input of a controller. */
  readonly hasArray: (device: number) => boolean
}

/** More turns than this one after another count as a circle; the relays are then left as they came to stand last. */
const MOST_PASSES = 50

/**
 * Lets relays follow their coils from how they stand in `state` until nothing moves; with `follow` off they stay.
 * Contacts that a voltage works stay as the state has them. O(parts + conductors) a pass.
 */
export function standingIn(plan: Plan, state: OperatingState, follow = true): Standing {
  let closed = startOf(plan, state)
  for (let pass = 0; ; pass++) {
    const now = joined(plan, state, closed)
    const wrong = follow ? plan.contacts.filter((c) => isWrong(plan, c, now)) : []
    if (wrong.length === 0 || pass >= MOST_PASSES) return now
    const next = new Set(closed)
    for (const { id } of wrong) if (!next.delete(id)) next.add(id)
    closed = next
  }
}

function isWrong(plan: Plan, { id, part, workedBy: w }: PlannedContact, now: Standing): boolean {
  if (w?.by !== 'coil') return false
  const coil = plan.all.deviceIndex.get(`${part}/${w.coil}`)
  return coil !== undefined && (now.isFed(coil) === (w.closed === 'fed')) !== now.closed.has(id)
}

function joined({ border, contacts, devices }: Plan, { blown }: OperatingState, closed: Closed): Standing {
  const open = new Set(contacts.flatMap(({ id }) => (closed.has(id) ? [] : [id])))
  const nets = new Unions()
  for (const b of border.form.branches)
    if (!open.has(b.id) && !(b.kind === 'fuse' && blown.has(b.id))) nets.join(b.from, b.to)
  const ends = border.form.devices.map(({ positive, negative }) => ({
    high: nets.nameOf(positive),
    low: nets.nameOf(negative),
  }))

  const groups = new Unions()
  devices.forEach(({ is }, d) => {
    if (is === 'battery') groups.join(ends[d]!.high, ends[d]!.low)
  })
  const isFed = (d: number): boolean => {
    const { high, low } = ends[d]!
    return high !== low && groups.numberOf(high) === groups.numberOf(low)
  }
  for (let more = true; more; ) {
    more = false
    devices.forEach(({ is, input }, d) => {
      if (is !== 'held' || isFed(d) || input === -1 || !isFed(input)) return
      groups.join(ends[d]!.high, ends[d]!.low)
      more = ends[d]!.high !== ends[d]!.low
    })
  }

  const hasArray = (input: number): boolean =>
    devices.some(
      ({ device }, a) =>
        device.array !== undefined &&
        ends[a]!.high === ends[input]!.high &&
        ends[a]!.low === ends[input]!.low,
    )
  return {
    closed,
    netOf: (terminal) => nets.nameOf(border.nodeOf.get(terminal) ?? terminal),
    isFed,
    works: (d) => {
      const { is, input } = devices[d]!
      if (is === 'controller') return isFed(d) && hasArray(input)
      return isFed(d) && (input === -1 || isFed(input))
    },
    hasArray: (d) => devices[d]!.input !== -1 && hasArray(devices[d]!.input),
  }
}
