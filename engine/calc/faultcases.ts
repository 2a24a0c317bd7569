import type { PartId } from '../model/design'
import type { NotChecked } from './answers'
import type { NoFault } from './faultsystem'
import type { Prepared } from './prepare'
import type { State } from './solved'

/**
 * One position of the contacts as the networks that bracket what is missing: conductors without size or length and
 * parts without a rating at next to nothing and at next to no conduction, unknown devices let go and left out. A
 * figure that comes out alike in all of them hangs on nothing that is missing.
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
  const both = state.any === state.none ? ways : [...ways, state.none.p]
  return {
    state,
    feeding: both.map(withoutDevices),
    batteriesOnly: ways,
    gap: (figures) => (agreed(figures.slice(0, ways.length)) === undefined ? standIns : unknownSources),
  }
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

/** Batteries whose internal resistance is not stated: there is no fault current at all. */
export function noFault({ any }: State, gap: NoFault): NotChecked {
  const parts = gap.devices.flatMap((id) => any.border.devices.get(id)?.part ?? [])
  return { notChecked: gap.reason, parts: [...new Set(parts)], conductors: [] }
}

/** Batteries whose resistance is only a "not more than": the greatest current has no bound. Null where there are none. */
export function onlyALimit({ any }: State): NotChecked | null {
  const parts = [...any.border.devices.values()].flatMap(({ part, device }): PartId[] =>
    device.internalIsLimit ? [part] : [],
  )
  return parts.length === 0 ? null : { notChecked: 'resistance-is-limit', parts, conductors: [] }
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
