import { kindOf } from '../kinds/all'
import { terminalsOf } from '../kinds/place'
import type { Part } from '../model/design'
import type { Values } from '../model/fields'
import type { Electrical, ElectricalContext, Kind, Terminal } from '../model/kind'
import { complete } from '../model/values'

/** Terminals of a part as it stands on the sheet; null for a kind that this version does not know. */
export const terminalsIn = (part: Part): readonly Terminal[] | null =>
  kindOf(part.kind) ? terminalsOf(part) : null

const plain = new WeakMap<Values, { readonly kind: Kind; readonly terminals: readonly Terminal[] }>()

/**
 * Terminals of a part as its kind has them, without their places on the sheet: nothing is drawn for it. Remembered for
 * each object of values. null for a kind that this version does not know.
 */
export function plainTerminalsIn({ kind: key, values }: Part): readonly Terminal[] | null {
  const kind = kindOf(key)
  if (!kind) return null
  const known = plain.get(values)
  if (known?.kind === kind) return known.terminals
  const terminals = kind.terminals(complete(kind.fields, values))
  plain.set(values, { kind, terminals })
  return terminals
}

/** A part of an unknown kind is taken to have every terminal that something refers to. */
export function hasTerminal(part: Part, key: string): boolean {
  const terminals = plainTerminalsIn(part)
  return terminals === null || terminals.some((t) => t.key === key)
}

/** Parts are never changed in place: the model of each is remembered weakly, for the system voltage it was made at. */
const models = new WeakMap<Part, { readonly context: ElectricalContext; readonly model: Electrical }>()

/** The electrical model of a part; null for an unknown kind. */
export function electricalIn(part: Part, context: ElectricalContext): Electrical | null {
  const kind = kindOf(part.kind)
  if (!kind) return null
  const known = models.get(part)
  if (known && isSame(known.context, context)) return known.model
  const model = kind.electrical(complete(kind.fields, part.values), context)
  models.set(part, { context, model })
  return model
}

const isSame = (a: ElectricalContext, b: ElectricalContext): boolean =>
  a.systemV === b.systemV && a.lowestV === b.lowestV && a.highestV === b.highestV
