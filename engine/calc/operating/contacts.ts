import type { WorkedBy } from '../../model/kind'
import type { Volts } from '../../units'
import type { Plan, PlannedContact } from './plan'
import { CHARGING, LETS_GO, nominalOf, PULLS_IN } from './practice'
import type { OperatingState } from './state'

/** What contacts can see of a pass. */
export interface Seen {
  /** V between two terminals, `${part}/${terminal}`; 0 where nothing joins them. */
  readonly between: (high: string, low: string) => Volts
  /** V across a device, and without load, by id. */
  readonly across: (device: string) => Volts
  readonly restV: (device: string) => Volts | undefined
  /** The batteries at a terminal take current that a source gives. */
  readonly charged: (terminal: string) => boolean
}

/** Contacts that are closed, by id. */
export type Closed = ReadonlySet<string>

/** How contacts stand before anything works them. */
export function startOf(plan: Plan, state: OperatingState): Closed {
  const closed = plan.contacts.filter(({ id, changeover }) => {
    if (!changeover) return !state.open.has(id)
    return (state.throws.get(changeover.id) ?? changeover.rest) === changeover.position
  })
  return new Set(closed.map((c) => c.id))
}

/** Is a contact to be closed, from what a pass shows? What nothing moves stays as it is. */
export function isToClose(c: PlannedContact, closed: boolean, seen: Seen, systemV: Volts): boolean {
  const w = c.workedBy
  if (w?.by === 'coil') {
    const wasFed = closed === (w.closed === 'fed')
    return isFed(`${c.part}/${w.coil}`, wasFed, seen, systemV) === (w.closed === 'fed')
  }
  if (w?.by === 'pulses') {
    const [close, open] = pulses(c, w, seen, systemV)
    return close === open ? closed : close
  }
  if (w?.by !== 'voltage' || w.closesV === null || w.opensV === null) return closed
  const volts = Math.max(...w.at.map((t) => sensed(c.part, t, w, seen)))
  return closed ? volts >= w.opensV : volts >= w.closesV
}

/** Are the closing and the opening coil of a latching relay fed? */
export function pulses(
  c: PlannedContact,
  w: Extract<WorkedBy, { by: 'pulses' }>,
  seen: Seen,
  systemV: Volts,
): readonly [close: boolean, open: boolean] {
  const fed = (coil: string): boolean => isFed(`${c.part}/${coil}`, false, seen, systemV)
  return [fed(w.close), fed(w.open)]
}

/** A coil pulls in above one share of its nominal voltage and lets go under another. */
export function isFed(coil: string, wasFed: boolean, seen: Seen, systemV: Volts): boolean {
  const nominal = nominalOf(seen.restV(coil) || systemV)
  return Math.abs(seen.across(coil)) >= (wasFed ? LETS_GO : PULLS_IN) * nominal
}

/** A battery under charge stands at its charging voltage, which the load flow has lower: rest voltage and drop. */
function sensed(
  part: string,
  terminal: string,
  { negative }: { readonly negative: string },
  seen: Seen,
): Volts {
  const at = `${part}/${terminal}`
  const volts = seen.between(at, `${part}/${negative}`)
  return volts > 0 && seen.charged(at) ? Math.max(volts, CHARGING * nominalOf(volts)) : volts
}

/** The state as the contacts came to stand. */
export function stateAfter(plan: Plan, state: OperatingState, closed: Closed): OperatingState {
  const open = new Set<string>()
  const throws = new Map<string, string>()
  for (const { id, changeover } of plan.contacts) {
    if (!changeover && !closed.has(id)) open.add(id)
    if (changeover && closed.has(id)) throws.set(changeover.id, changeover.position)
  }
  return { ...state, open, throws }
}
