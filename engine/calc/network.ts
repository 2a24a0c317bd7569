import { keyOf } from '../edit/nets'
import { electricalIn, plainTerminalsIn } from '../edit/terminal'
import { kindOf } from '../kinds/all'
import { Unions } from '../math/unions'
import type { Conductor, ConductorId, Design, Part, PartId } from '../model/design'
import type { DeviceRole, Electrical, ElectricalContext, PartBranch, PartDevice, Pole } from '../model/kind'
import { sizeIn } from '../model/sizes'
import { resistancePerMetre } from '../tables/resistance'
import type { Ohms } from '../units'
import type { NetworkBranch, NetworkDevice, NetworkForm } from './form'

/** Stands in where a conductor's size or length is missing; every figure that leans on it is not checked. */
const ASSUMED_OHMS = 0.005
/** A crimped lug on a clean stud is some tens of micro-ohms; common practice, no source. */
export const TERMINATION_OHMS = 0.00002

export interface PartBranchRef {
  readonly part: PartId
  readonly branch: PartBranch
}

export interface PartDeviceRef {
  readonly part: PartId
  readonly device: PartDevice
  readonly role: DeviceRole
}

/**
 * The border between ids and the network form. Branch ids: a conductor's own id, or `${part}/${branch}`;
 * device ids: `${part}/${device}`; node ids: the first of the joined terminals, `${part}/${terminal}`.
 */
export interface Border {
  readonly form: NetworkForm
  /** Node of each terminal, by `${part}/${terminal}`. */
  readonly nodeOf: ReadonlyMap<string, string>
  readonly branches: ReadonlyMap<string, PartBranchRef>
  readonly devices: ReadonlyMap<string, PartDeviceRef>
  /** Bars: parts that are one node, or a fused block whose ways leave one node; with a terminal of that node. */
  readonly bars: ReadonlyMap<PartId, string>
  /** Conductors that are branches of the network, by id. */
  readonly conductors: ReadonlyMap<ConductorId, Conductor>
  /** Conductors whose resistance stands in for a missing size or length. */
  readonly assumed: ReadonlySet<ConductorId>
  /** Branches of parts whose resistance stands in, because no rating is stated, by id. */
  readonly unrated: ReadonlySet<string>
  /** Devices with a bound that is not known, by id. */
  readonly unknownDevices: ReadonlySet<string>
  /** Nodes that are joined to the vehicle's frame: chassis points, and cases that are a negative. */
  readonly frames: readonly { readonly part: PartId; readonly node: string }[]
}

/** How far an unknown device is let go: 'none' draws and feeds nothing, 'any' is bounded by the rest alone. */
export type UnknownAs = 'none' | 'any'

/** Which branches of parts are taken as open: ids of contacts. */
export type OpenContacts = ReadonlySet<string>

export function contextOf(design: Design): ElectricalContext {
  const systemV = design.settings.systemV
  // 10.0 V: lowest output of a 12 V LiFePO4 pack in print; 14.6 V: its highest charge voltage (published data sheets).
  return { systemV, lowestV: (10 / 12) * systemV, highestV: (14.6 / 12) * systemV }
}

const polesKnown = new WeakMap<Design['parts'], ReadonlyMap<string, Pole>>()

/**
 * Poles of the terminals of a design, by `${part}/${terminal}`; terminals of unknown kinds are 'any'. Remembered weakly
 * for each array of parts.
 */
export function polesOf({ parts }: Design): ReadonlyMap<string, Pole> {
  const known = polesKnown.get(parts)
  if (known) return known
  const poles = new Map<string, Pole>()
  polesKnown.set(parts, poles)
  for (const part of parts) {
    for (const t of plainTerminalsIn(part) ?? []) poles.set(`${part.id}/${t.key}`, t.pole)
  }
  return poles
}

/** Data links, sense leads between sense terminals and mains conductors are drawn but are no part of the network. */
export function carriesPower(c: Conductor, poles: ReadonlyMap<string, Pole>): boolean {
  const a = poles.get(keyOf(c.from)) ?? 'any'
  const b = poles.get(keyOf(c.to)) ?? 'any'
  if (a === 'data' || b === 'data' || a === 'mains' || b === 'mains') return false
  return !(a === 'sense' && b === 'sense')
}

/** Lays a design out as a network form. O(parts + conductors). */
export function networkOf(design: Design, unknown: UnknownAs, open: OpenContacts): Border {
  const context = contextOf(design)
  const poles = polesOf(design)
  const joinedTo = strangers(design)
  const groups = new Unions()
  const models: { part: Part; model: Electrical }[] = []
  const bars = new Map<PartId, string>()
  const frames: { node: string; part: PartId; ohms: Ohms }[] = []
  for (const part of design.parts) {
    const model = electricalIn(part, context) ?? unknownModel(joinedTo.get(part.id) ?? [])
    models.push({ part, model })
    for (const group of model.merges)
      for (const terminal of group) groups.join(`${part.id}/${group[0]}`, `${part.id}/${terminal}`)
    const bar = barTerminal(model)
    if (bar !== undefined) bars.set(part.id, `${part.id}/${bar}`)
    if (model.frame)
      frames.push({ node: `${part.id}/${model.frame.terminal}`, part: part.id, ohms: model.frame.ohms })
  }

  const branches: NetworkBranch[] = []
  const devices: NetworkDevice[] = []
  const partBranches = new Map<string, PartBranchRef>()
  const partDevices = new Map<string, PartDeviceRef>()
  const unknownDevices = new Set<string>()
  const unrated = new Set<string>()
  for (const { part, model } of models) {
    for (const branch of model.branches) {
      const id = `${part.id}/${branch.key}`
      partBranches.set(id, { part: part.id, branch })
      if (branch.ratingA === null) unrated.add(id)
      if (open.has(id)) continue
      branches.push({
        id,
        from: groups.nameOf(`${part.id}/${branch.from}`),
        to: groups.nameOf(`${part.id}/${branch.to}`),
        resistance: branch.ohms,
        kind: branch.kind,
        ...(branch.ratingA === null ? {} : { rating: branch.ratingA }),
      })
    }
    for (const device of model.devices) {
      const id = `${part.id}/${device.key}`
      partDevices.set(id, { part: part.id, device, role: device.role })
      if (device.minA === null || device.maxA === null || device.sustainedFaultA === null)
        unknownDevices.add(id)
      const free = unknown === 'any' ? 'unlimited' : 0
      devices.push({
        id,
        positive: groups.nameOf(`${part.id}/${device.positive}`),
        negative: groups.nameOf(`${part.id}/${device.negative}`),
        min: device.minA ?? free,
        max: device.maxA ?? free,
        sustainedFault: device.sustainedFaultA ?? free,
        ...(device.emfV === undefined ? {} : { emf: device.emfV }),
        ...(device.internalOhms === undefined ? {} : { internalResistance: device.internalOhms }),
      })
    }
  }
  for (const f of frames)
    branches.push({
      id: `${f.part}/frame`,
      from: groups.nameOf(f.node),
      to: 'frame',
      resistance: f.ohms,
      kind: 'contact',
    })

  const conductors = new Map<ConductorId, Conductor>()
  const assumed = new Set<ConductorId>()
  for (const c of design.conductors) {
    if (!carriesPower(c, poles)) continue
    conductors.set(c.id, c)
    const ohms = conductorOhms(design, c)
    if (ohms === null) assumed.add(c.id)
    branches.push({
      id: c.id,
      from: groups.nameOf(keyOf(c.from)),
      to: groups.nameOf(keyOf(c.to)),
      resistance: ohms ?? ASSUMED_OHMS,
      kind: 'conductor',
    })
  }

  const nodes = new Set<string>()
  for (const b of branches) nodes.add(b.from).add(b.to)
  for (const d of devices) nodes.add(d.positive).add(d.negative)
  return {
    form: { nodes: [...nodes], branches, devices },
    nodeOf: groups.names(),
    branches: partBranches,
    devices: partDevices,
    bars,
    conductors,
    assumed,
    unrated,
    unknownDevices,
    frames: frames.map((f) => ({ part: f.part, node: groups.nameOf(f.node) })),
  }
}

/** Terminals of parts of unknown kinds that conductors end at, by part. */
function strangers(design: Design): Map<PartId, string[]> {
  const unknown = new Map<PartId, string[]>()
  for (const part of design.parts) if (!kindOf(part.kind)) unknown.set(part.id, [])
  if (unknown.size === 0) return unknown
  for (const c of design.conductors)
    for (const end of [c.from, c.to]) {
      const terminals = unknown.get(end.part)
      if (terminals && !terminals.includes(end.terminal)) terminals.push(end.terminal)
    }
  return unknown
}

/**
 * A part of an unknown kind may be anything: it is let give and take between its terminals without a limit, and
 * not at all, and what differs between the two is not checked.
 */
function unknownModel([first, ...others]: readonly string[]): Electrical {
  return {
    merges: [],
    branches: [],
    devices: others.map((terminal) => ({
      key: `${first} ${terminal}`,
      positive: first!,
      negative: terminal,
      minA: null,
      maxA: null,
      sustainedFaultA: null,
      role: 'two-way',
    })),
  }
}

/** A terminal of the node that is the part (a busbar), or that all its ways leave (a fuse block). */
function barTerminal(model: Electrical): string | undefined {
  if (model.devices.length > 0) return undefined
  const [first, ...ways] = model.branches
  if (!first) return model.merges.length === 1 ? model.merges[0]?.[0] : undefined
  return ways.length > 0 && ways.every((b) => b.from === first.from) ? first.from : undefined
}

/** Resistance of one conductor at 20 °C with its two terminations; null where size or length is missing. */
export function conductorOhms(design: Design, c: Conductor): Ohms | null {
  if (c.size === null || c.lengthM === null) return null
  const perMetre = resistancePerMetre(c.size, 20, (key) => sizeIn(design, key))
  return perMetre === undefined ? null : perMetre * c.lengthM + 2 * TERMINATION_OHMS
}
