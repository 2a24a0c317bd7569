import type { Design, Part, PartId, TerminalRef } from '../model/design'
import type { Electrical, ElectricalContext, PartDevice, Terminal } from '../model/kind'
import { electricalIn, terminalsIn } from './terminal'

export const keyOf = (t: TerminalRef): string => `${t.part}/${t.terminal}`

export interface PlacedDevice {
  readonly part: Part
  readonly device: PartDevice
}

/**
 * What hangs together in a design whichever way switches stand: conductors, bars, fuses, shunts and make contacts
 * join terminals into nets; a changeover contact does not, as one side of it is always open.
 */
export interface Nets {
  readonly terminal: (t: TerminalRef) => Terminal | undefined
  readonly electrical: (part: PartId) => Electrical | undefined
  readonly netOf: (t: TerminalRef) => number
  /** Devices with their positive, or their negative, terminal in a net. */
  readonly positives: (net: number) => readonly PlacedDevice[]
  readonly negatives: (net: number) => readonly PlacedDevice[]
}

const remembered = new WeakMap<Design, Nets>()

/** Nets of a design, worked out once for each design. O(parts + conductors). */
export function netsOf(design: Design): Nets {
  const known = remembered.get(design)
  if (known) return known
  const nets = findNets(design)
  remembered.set(design, nets)
  return nets
}

function findNets(design: Design): Nets {
  const context = contextOf(design)
  const terminals = new Map<string, Terminal>()
  const models = new Map<PartId, Electrical>()
  const joins = new Joins()
  for (const part of design.parts) {
    for (const t of terminalsIn(part) ?? []) terminals.set(`${part.id}/${t.key}`, t)
    const model = electricalIn(part, context)
    if (!model) continue
    models.set(part.id, model)
    for (const group of model.merges)
      for (const key of group) joins.join(`${part.id}/${group[0]}`, `${part.id}/${key}`)
    for (const b of model.branches)
      if (b.changeover === undefined) joins.join(`${part.id}/${b.from}`, `${part.id}/${b.to}`)
    if (model.frame) joins.join(`${part.id}/${model.frame.terminal}`, 'frame')
  }
  for (const c of design.conductors) joins.join(keyOf(c.from), keyOf(c.to))

  const positives = new Map<number, PlacedDevice[]>()
  const negatives = new Map<number, PlacedDevice[]>()
  for (const part of design.parts)
    for (const device of models.get(part.id)?.devices ?? []) {
      list(positives, joins.netOf(`${part.id}/${device.positive}`)).push({ part, device })
      list(negatives, joins.netOf(`${part.id}/${device.negative}`)).push({ part, device })
    }
  return {
    terminal: (t) => terminals.get(keyOf(t)),
    electrical: (part) => models.get(part),
    netOf: (t) => joins.netOf(keyOf(t)),
    positives: (net) => positives.get(net) ?? [],
    negatives: (net) => negatives.get(net) ?? [],
  }
}

/** Joining looks at the shape of a network alone, so nominal figures do. */
function contextOf({ settings: { systemV } }: Design): ElectricalContext {
  return { systemV, lowestV: systemV, highestV: systemV }
}

function list(map: Map<number, PlacedDevice[]>, net: number): PlacedDevice[] {
  let found = map.get(net)
  if (!found) {
    found = []
    map.set(net, found)
  }
  return found
}

/** Union of terminals by index, with the paths halved. */
class Joins {
  private readonly index = new Map<string, number>()
  private readonly parent: number[] = []

  join(a: string, b: string): void {
    const u = this.netOf(a)
    const v = this.netOf(b)
    if (u !== v) this.parent[v] = u
  }

  netOf(key: string): number {
    let at = this.index.get(key)
    if (at === undefined) {
      at = this.parent.length
      this.index.set(key, at)
      this.parent.push(at)
    }
    while (this.parent[at] !== at) {
      this.parent[at] = this.parent[this.parent[at]!]!
      at = this.parent[at]!
    }
    return at
  }
}
