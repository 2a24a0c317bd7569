import { kindOf } from '../../kinds/all'
import type { Design, Part, PartId } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Volts } from '../../units'
import { operate } from '../operate'
import { type Plan, planOf } from '../operating/plan'
import type { NoOperatingPoint, OperatingPoint, OperatingState } from '../operating/state'
import { usualState } from '../operating/usual'
import { LOW_CHARGE } from './practice'
import { switchesFor } from './switches'

/** A design under test: its plan, and the states in which it is measured. */
export interface Rig {
  readonly design: Design
  readonly plan: Plan
  /** Nothing draws but the monitor, no source gives, hand switches on, batteries full. */
  readonly quiet: OperatingState
  readonly neededFor: (device: string) => ReadonlySet<string>
  /** The operating point of a state; worked out once for each. */
  readonly at: (state: OperatingState) => OperatingPoint | NoOperatingPoint
  /** States that were asked for before, by the devices that are on in them. */
  readonly states: Map<string, OperatingState>
  readonly part: (id: PartId) => Part
  /** What shows the readings, and so stays on whatever is tested. */
  readonly monitor: readonly PartId[]
}

export function rigOf(design: Design): Rig {
  const plan = planOf(design)
  const usual = usualState(design)
  const shows = plan.devices.filter((x) => x.is === 'load' && isData(design, x.part))
  const on = new Set(shows.map((x) => x.id))
  const only = (of: ReadonlyMap<string, number>): Map<string, number> =>
    new Map([...of.keys()].map((id) => [id, on.has(id) ? 1 : 0]))
  return {
    design,
    plan,
    quiet: { ...usual, loads: only(usual.loads), sources: only(usual.sources) },
    neededFor: switchesFor(plan),
    at: remembering(design),
    states: new Map(),
    part: (id) => partById(design, id)!,
    monitor: [...new Set(shows.map((x) => x.part))],
  }
}

function remembering(design: Design): Rig['at'] {
  const known = new WeakMap<OperatingState, OperatingPoint | NoOperatingPoint>()
  return (state) => {
    const found = known.get(state) ?? operate(design, state)
    known.set(state, found)
    return found
  }
}

const isData = (design: Design, part: PartId): boolean =>
  kindOf(partById(design, part)?.kind ?? '')?.group === 'data'

/** Hand switches other than isolators: what is on a panel, or follows temperature or level. */
export const isHandSwitch = ({ design }: Rig, part: PartId): boolean => {
  const kind = kindOf(partById(design, part)?.kind ?? '')
  return kind !== undefined && (kind.key === 'panel-switch' || kind.group === 'control')
}

/** The quiet state with these devices at full use besides, and only the hand switches on that they need. */
export function onlyThese(rig: Rig, devices: readonly string[]): OperatingState {
  const key = devices.join('\n')
  const state = rig.states.get(key) ?? switchedFor(rig, devices)
  rig.states.set(key, state)
  return state
}

function switchedFor(rig: Rig, devices: readonly string[]): OperatingState {
  const needed = new Set(devices.flatMap((id) => [...rig.neededFor(id)]))
  const off = rig.plan.contacts.filter(
    (c) => c.workedBy === null && !needed.has(c.id) && isHandSwitch(rig, c.part),
  )
  return {
    ...rig.quiet,
    open: new Set([...rig.quiet.open, ...off.map((c) => c.id)]),
    loads: withFull(rig.quiet.loads, devices),
  }
}

export function withFull(of: ReadonlyMap<string, number>, ids: readonly string[]): Map<string, number> {
  const next = new Map(of)
  for (const id of ids) if (next.has(id)) next.set(id, 1)
  return next
}

/** Hand switches that are on in a state for the sake of some devices. */
export const switchedOn = (rig: Rig, devices: readonly string[]): PartId[] => {
  const needed = new Set(devices.flatMap((id) => [...rig.neededFor(id)]))
  const parts = rig.plan.contacts
    .filter((c) => needed.has(c.id) && isHandSwitch(rig, c.part))
    .map((c) => c.part)
  return [...new Set(parts)]
}

export const atCharge = (state: OperatingState, charge: number): OperatingState => ({
  ...state,
  charge: new Map([...state.charge.keys()].map((id) => [id, charge])),
})

const lows = new WeakMap<OperatingState, OperatingState>()

/** The same state with low batteries; the same object for the same state. */
export function withLow(state: OperatingState): OperatingState {
  const low = lows.get(state) ?? atCharge(state, LOW_CHARGE)
  lows.set(state, low)
  return low
}

/** Operating points of a state with full and with low batteries; or why there is none. */
export function fullAndLow(rig: Rig, state: OperatingState): readonly OperatingPoint[] | NoOperatingPoint {
  const full = rig.at(state)
  if (!full.ok) return full
  const low = rig.at(withLow(state))
  return low.ok ? [full, low] : [full]
}

export const isPoint = (
  found: readonly OperatingPoint[] | NoOperatingPoint,
): found is readonly OperatingPoint[] => Array.isArray(found)

/** V between two terminals, `${part}/${terminal}`. */
export const voltsBetween = (point: OperatingPoint, high: string, low: string): Volts =>
  (point.volts.get(high) ?? 0) - (point.volts.get(low) ?? 0)
