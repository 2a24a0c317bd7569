import { remembering } from '../math/remember'
import { Unions } from '../math/unions'
import type { Design, Part, PartId, TerminalRef } from '../model/design'
import type { Electrical, ElectricalContext, PartDevice, Terminal } from '../model/kind'
import { electricalIn, terminalsIn } from './terminal'

export const keyOf = (t: TerminalRef): string => `${t.part}/${t.terminal}`

/** What makes a net positive or negative: a device with that terminal in it, or a bar declared for that pole. */
export interface Hold {
  readonly part: Part
  /** null: a declared bar. */
  readonly device: PartDevice | null
}

/**
 * What hangs together in a design whichever way switches stand: conductors, bars, fuses, shunts and make contacts
 * join terminals into nets; a changeover contact does not, as one side of it is always open.
 */
export interface Nets {
  readonly terminal: (t: TerminalRef) => Terminal | undefined
  readonly electrical: (part: PartId) => Electrical | undefined
  readonly netOf: (t: TerminalRef) => number
  readonly positives: (net: number) => readonly Hold[]
  readonly negatives: (net: number) => readonly Hold[]
}

/** Nets of a design, worked out once for each design. O(parts + conductors). */
export const netsOf: (design: Design) => Nets = remembering(findNets)

function findNets(design: Design): Nets {
  const context = contextOf(design)
  const terminals = new Map<string, Terminal>()
  const models = new Map<PartId, Electrical>()
  const joins = new Unions()
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

  const positives = new Map<number, Hold[]>()
  const negatives = new Map<number, Hold[]>()
  for (const part of design.parts) {
    const ofDevices = new Set<string>()
    for (const device of models.get(part.id)?.devices ?? []) {
      list(positives, joins.numberOf(`${part.id}/${device.positive}`)).push({ part, device })
      list(negatives, joins.numberOf(`${part.id}/${device.negative}`)).push({ part, device })
      ofDevices.add(device.positive).add(device.negative)
    }
    for (const t of terminalsIn(part) ?? []) {
      if (ofDevices.has(t.key)) continue
      const map = t.pole === 'positive' ? positives : t.pole === 'negative' ? negatives : null
      if (map) list(map, joins.numberOf(`${part.id}/${t.key}`)).push({ part, device: null })
    }
  }
  return {
    terminal: (t) => terminals.get(keyOf(t)),
    electrical: (part) => models.get(part),
    netOf: (t) => joins.numberOf(keyOf(t)),
    positives: (net) => positives.get(net) ?? [],
    negatives: (net) => negatives.get(net) ?? [],
  }
}

/** Joining looks at the shape of a network alone, so nominal figures do. */
function contextOf({ settings: { systemV } }: Design): ElectricalContext {
  return { systemV, lowestV: systemV, highestV: systemV }
}

function list(map: Map<number, Hold[]>, net: number): Hold[] {
  let found = map.get(net)
  if (!found) {
    found = []
    map.set(net, found)
  }
  return found
}
