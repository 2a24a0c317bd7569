import type { Design, PartId } from '../model/design'
import type { NoLoadFlow } from './loadflow'
import { pointOf } from './operating/answer'
import { type Attempt, attempt } from './operating/attempt'
import { type Closed, isToClose, startOf } from './operating/contacts'
import { type Plan, type PlannedContact, planOf } from './operating/plan'
import { seenOf } from './operating/seen'
import type { NoOperatingPoint, OperatingPoint, OperatingState } from './operating/state'
import { type Uses, usesOf } from './operating/uses'

/**
 * Operating point of a whole design in a state: currents, voltages and powers, what each shunt shows, and how relays
 * come to stand. Contacts follow their coils and voltages until nothing moves any more, all at once, and one at a time
 * where that goes round in a circle.
 *
 * The model, simplified on purpose: batteries are a rest voltage behind a resistance; chargers, alternators and
 * inverter-chargers on mains give their limit times their use as a constant current, as they do until a battery is
 * nearly full, and rest where no battery is joined; controllers give the power of their array; step-down converters
 * hold their voltage; loads are what their card says.
 *
 * Gives a typed reason where there is no operating point, and never throws on a design that the reader accepts. A few
 * load flows; the first call on a design costs O(parts + conductors) more.
 */
export function operate(design: Design, state: OperatingState): OperatingPoint | NoOperatingPoint {
  const plan = planOf(design)
  if (!plan.devices.some((d) => d.is === 'battery')) return { ok: false, reason: 'no-battery', parts: [] }
  const uses = usesOf(plan, state)
  const found = settled(plan, uses, state)
  if ('chatter' in found)
    return { ok: false, reason: 'relays-chatter', parts: partsOf(found.chatter.map((c) => c.part)) }
  if ('reason' in found.at) return noSteadyState(plan, found.at)
  return pointOf(plan, uses, state, found.closed, found.at)
}

/** More positions than this one after another count as a circle. */
const MOST_PASSES = 200

type Settled =
  | { readonly closed: Closed; readonly at: Attempt | NoLoadFlow }
  | { readonly chatter: readonly PlannedContact[] }

/** Lets contacts follow until none moves. A position that comes back is a circle. */
function settled(plan: Plan, uses: Uses, state: OperatingState): Settled {
  const moving = plan.contacts.filter((c) => c.workedBy)
  const keyOf = (closed: Closed): string => moving.map((c) => (closed.has(c.id) ? 1 : 0)).join('')
  let closed = startOf(plan, state)
  let seenBefore = new Set([keyOf(closed)])
  let oneAtATime = false
  let moved: PlannedContact[] = []
  for (;;) {
    const at = attempt(plan, uses, state, closed)
    if ('reason' in at) return { closed, at }
    const seen = seenOf(plan, at)
    const wrong = moving.filter(
      (c) => isToClose(c, closed.has(c.id), seen, plan.systemV) !== closed.has(c.id),
    )
    if (wrong.length === 0) return { closed, at }
    const turned = oneAtATime ? wrong.filter((c) => c.part === wrong[0]!.part) : wrong
    closed = toggled(closed, turned)
    moved = [...moved, ...turned]
    if (seenBefore.has(keyOf(closed)) || seenBefore.size > MOST_PASSES) {
      if (oneAtATime) return { chatter: moved }
      oneAtATime = true
      seenBefore = new Set()
      moved = []
    }
    seenBefore.add(keyOf(closed))
  }
}

function toggled(closed: Closed, turned: readonly PlannedContact[]): Closed {
  const next = new Set(closed)
  for (const { id } of turned) if (!next.delete(id)) next.add(id)
  return next
}

function noSteadyState(plan: Plan, { devices }: NoLoadFlow): NoOperatingPoint {
  const named = new Set(devices)
  const parts = plan.devices.flatMap((d) => (named.has(d.id) ? [d.part] : []))
  return { ok: false, reason: 'no-steady-state', parts: partsOf(parts) }
}

const partsOf = (parts: readonly PartId[]): PartId[] => [...new Set(parts)]
