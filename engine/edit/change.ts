import type { Conductor, Design, Part } from '../model/design'
import type { EditResult } from './edit'

export const done = (design: Design): EditResult => ({ refused: false, design })

/** The design with some parts replaced; the same design when none changed. */
export function withParts(design: Design, change: (part: Part) => Part): Design {
  const parts = mapped(design.parts, change)
  return parts === design.parts ? design : { ...design, parts }
}

/** The design with some conductors replaced; the same design when none changed. */
export function withConductors(design: Design, change: (conductor: Conductor) => Conductor): Design {
  const conductors = mapped(design.conductors, change)
  return conductors === design.conductors ? design : { ...design, conductors }
}

function mapped<T>(items: readonly T[], change: (item: T) => T): readonly T[] {
  const next = items.map(change)
  return next.every((item, i) => item === items[i]) ? items : next
}

/** A record with some keys set; the same record when every key already holds that value. */
export function set<T extends object>(record: T, values: NoInfer<Partial<T>>): T {
  const keys = Object.keys(values) as (keyof T)[]
  return keys.every((key) => Object.is(record[key], values[key])) ? record : { ...record, ...values }
}

/** A list with a thing in the place of the one with its id, or at the end. O(list). */
export function put<T extends { readonly id: string }>(list: readonly T[] = [], thing: T): readonly T[] {
  const known = list.some((x) => x.id === thing.id)
  return known ? list.map((x) => (x.id === thing.id ? thing : x)) : [...list, thing]
}
