import { fromNumber } from '../units'
import { withAtLeast } from './answer'
import type { NotChecked } from './answers'
import type { NoFault } from './faultsystem'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'
import type { State } from './solved'

/**
 * One position of the contacts as the networks that bracket what is missing: conductors without size or length and
 * parts without a rating at next to nothing and at next to no conduction, batteries of unknown resistance likewise, those
 * with a "not more than" figure at it and at next to nothing, unknown devices let go and left out. A figure that comes out alike in all of them hangs on nothing that is missing.
 */
export interface FaultNetworks {
  readonly state: State
  /** With unknown sources both ways. */
  readonly feeding: readonly Prepared[]
  /** Where sources do not count. */
  readonly batteriesOnly: readonly Prepared[]
  /** Why a figure is none, from what it comes to in each of them. */
  readonly gap: (figures: readonly number[]) => NotChecked
}

const NEXT_TO_NOTHING = 1e-8
const NEXT_TO_OPEN = 1e3

export function faultNetworks(state: State): FaultNetworks {
  const { border, p } = state.any
  const matters = onTheWay(p)
  const lacking = (ids: Iterable<string>): string[] =>
    [...ids].filter((id) => {
      const e = p.branchIndex.get(id)
      return e !== undefined && matters(e)
    })
  const [assumed, unrated] = [lacking(border.assumed), lacking(border.unrated)]
  const missing = [...assumed, ...unrated].map((id) => p.branchIndex.get(id)!)
  const ways =
    missing.length === 0 ? [p] : [NEXT_TO_NOTHING, NEXT_TO_OPEN].map((ohms) => withOhms(p, missing, ohms))
  const unknown = [...border.unknownDevices].flatMap((id) => border.devices.get(id)?.part ?? [])
  const standIns: NotChecked = {
    notChecked: assumed.length > 0 ? 'missing-run' : 'missing-rating',
    parts: [...new Set(unrated.flatMap((id) => border.branches.get(id)?.part ?? []))],
    conductors: assumed,
  }
  const unknownSources = { notChecked: 'missing-figure', parts: [...new Set(unknown)], conductors: [] }
  const unstated = batteriesOf(p, (d) => !(p.form.devices[d]!.internalResistance! > 0))
  const limited = batteriesOf(p, (d) => border.devices.get(p.form.devices[d]!.id)?.device.internalIsLimit)
  const none = state.any === state.none ? [] : [state.none.p]
  const stated = (ohms: number) => (of: Prepared) => withInternal(of, unstated, ohms)
  const at = ways.map(stated(NEXT_TO_NOTHING))
  const batteriesOnly = unstated.size === 0 ? ways : [...at, ...ways.map(stated(NEXT_TO_OPEN))]
  const feeding = [
    ...batteriesOnly,
    ...(limited.size === 0 ? [] : at.map((of) => withInternal(of, limited, NEXT_TO_NOTHING))),
    ...none.map(stated(NEXT_TO_NOTHING)),
  ]
  const differ = (figures: readonly number[]) => agreed(figures) === undefined
  return {
    state,
    feeding: feeding.map(withoutDevices),
    batteriesOnly,
    gap: (figures) => {
      if (differ(figures.slice(0, ways.length))) return standIns
      if (differ(figures.slice(0, batteriesOnly.length)))
        return atLeast(batteryGap(state, 'internal-resistance-missing', unstated), figures)
      if (differ(figures.slice(0, feeding.length - none.length)))
        return atLeast(batteryGap(state, 'resistance-is-limit', limited), figures)
      return atLeast(unknownSources, figures)
    },
  }
}

/** Each case may be the true one: a battery or source may be off, a limit may be the figure itself. */
const atLeast = (gap: NotChecked, figures: readonly number[]): NotChecked =>
  figures.some(Number.isNaN) ? gap : withAtLeast(gap, fromNumber(Math.min(...figures)))

/** Ids of the batteries that something holds of. */
const batteriesOf = (p: Prepared, holds: (device: number) => boolean | undefined): ReadonlySet<string> =>
  new Set(p.form.devices.flatMap(({ id }, d) => (isBattery(p, d) && holds(d) ? [id] : [])))

function withInternal(p: Prepared, batteries: ReadonlySet<string>, ohms: number): Prepared {
  if (batteries.size === 0) return p
  const devices = p.form.devices.map((d) => (batteries.has(d.id) ? { ...d, internalResistance: ohms } : d))
  return { ...p, form: { ...p.form, devices } }
}

function batteryGap(
  { any }: State,
  notChecked: NotChecked['notChecked'],
  of: ReadonlySet<string>,
): NotChecked {
  const parts = [...of].flatMap((id) => any.border.devices.get(id)?.part ?? [])
  return { notChecked, parts: [...new Set(parts)], conductors: [] }
}

/** Does a branch lead anywhere? One with an end at which nothing else is joined carries nothing. */
function onTheWay(p: Prepared): (branch: number) => boolean {
  const joined = new Uint8Array(p.graph.vertexCount)
  for (const v of [...p.positive, ...p.negative]) joined[v] = 1
  const leads = (v: number): boolean => joined[v] === 1 || p.graph.start[v + 1]! - p.graph.start[v]! > 1
  return (e) => leads(p.graph.tail[e]!) && leads(p.graph.head[e]!)
}

function withOhms(p: Prepared, branches: readonly number[], ohms: number): Prepared {
  const resistance = p.resistance.slice()
  for (const e of branches) resistance[e] = ohms
  return { ...p, resistance }
}

/**
 * A prospective current is what would flow with a link of no resistance in the place of the device (IEC 60050-441,
 * from memory); and the resistances of fuses and contacts further up are stand-ins that must not lower a maximum.
 */
function withoutDevices(p: Prepared): Prepared {
  const devices = p.form.branches.flatMap((b, e) => (b.kind === 'fuse' || b.kind === 'contact' ? [e] : []))
  return withOhms(p, devices, NEXT_TO_NOTHING)
}

/** What a kernel gives where every battery has a resistance, as all have here. */
export function known<T extends object>(given: T | NoFault): T {
  if ('reason' in given) throw new Error(`no resistance: ${(given as NoFault).devices.join(', ')}`)
  return given
}

/** The figure that all cases agree on, to a billionth; undefined where they differ. */
export function agreed(figures: readonly number[]): number | undefined {
  const [first, ...others] = figures
  if (first === undefined) return undefined
  const close = (x: number): boolean =>
    x === first || (Number.isFinite(first) && Math.abs(x - first) <= 1e-9 * Math.max(1, Math.abs(first)))
  return others.every((x) => close(x) || (Number.isNaN(x) && Number.isNaN(first))) ? first : undefined
}

/** Nodes of the two ends of a conductor; −1 where it is no branch of the network. */
export function runEnds(p: Prepared, conductor: string): readonly [from: number, to: number] {
  const e = p.branchIndex.get(conductor)
  return e === undefined ? [-1, -1] : [p.graph.tail[e]!, p.graph.head[e]!]
}
