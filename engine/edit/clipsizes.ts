import type { Conductor, Design } from '../model/design'
import { OWN_SIZE_KEY, type OwnConductor } from '../tables/ownsizes'
import { newOwnKey } from './ownconductors'

/** Rows of the designer's own conductors that some conductors are of. */
export const ownRowsOf = (design: Design, conductors: readonly Conductor[]): OwnConductor[] => {
  const used = new Set(conductors.map((c) => c.size))
  return (design.ownConductors ?? []).filter((row) => used.has(row.key))
}

export interface BroughtSizes {
  /** Rows to be added to the design, under keys and names that are free in it. */
  readonly rows: readonly OwnConductor[]
  /** Size of a brought conductor in the design. */
  readonly sizeOf: (size: string | null) => string | null
}

/**
 * Own conductors that come from another design: a row that the design has already, figure by figure, is that one; another one
 * is added. A size whose row did not come and whose key means another conductor here is left open rather than taken for it.
 */
export function broughtSizes(design: Design, brought: readonly OwnConductor[]): BroughtSizes {
  const there = design.ownConductors ?? []
  const rows: OwnConductor[] = []
  const keys = new Map<string, string>()
  for (const row of brought) {
    const same = there.find((other) => isSame(row, other))
    if (same) {
      keys.set(row.key, same.key)
      continue
    }
    const all = [...there, ...rows]
    const added = { ...row, key: newOwnKey(design, rows), name: freeName(row.name, all) }
    rows.push(added)
    keys.set(row.key, added.key)
  }
  const taken = new Set([...there, ...rows].map((row) => row.key))
  return {
    rows,
    sizeOf: (size) => {
      if (size === null || !OWN_SIZE_KEY.test(size)) return size
      return keys.get(size) ?? (taken.has(size) ? null : size)
    },
  }
}

const isSame = (a: OwnConductor, b: OwnConductor): boolean =>
  a.name === b.name &&
  a.sectionMm2 === b.sectionMm2 &&
  a.ohmsPerKm === b.ohmsPerKm &&
  a.amps === b.amps &&
  a.insulationC === b.insulationC

function freeName(name: string, rows: readonly OwnConductor[]): string {
  const names = new Set(rows.map((row) => row.name))
  let free = name
  for (let n = 2; names.has(free); n++) free = `${name.slice(0, 54)} (${n})`
  return free
}
