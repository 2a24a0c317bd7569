import type { Conductor, ConductorId, Design, Part, PartId } from './design'

/**
 * Look-ups over a design, built once for each array of parts and conductors and remembered weakly, so that they
 * cost nothing while a design stands and need no care when it changes. O(1) each after the first, which is O(n).
 */
const partIndex = new WeakMap<readonly Part[], ReadonlyMap<PartId, Part>>()
const conductorIndex = new WeakMap<readonly Conductor[], ReadonlyMap<ConductorId, Conductor>>()
const joinIndex = new WeakMap<readonly Conductor[], ReadonlyMap<PartId, readonly Conductor[]>>()

export function partById(design: Design, id: PartId): Part | undefined {
  let index = partIndex.get(design.parts)
  if (!index) {
    index = new Map(design.parts.map((part) => [part.id, part]))
    partIndex.set(design.parts, index)
  }
  return index.get(id)
}

export function conductorById(design: Design, id: ConductorId): Conductor | undefined {
  let index = conductorIndex.get(design.conductors)
  if (!index) {
    index = new Map(design.conductors.map((c) => [c.id, c]))
    conductorIndex.set(design.conductors, index)
  }
  return index.get(id)
}

/** Conductors that end at a part, or at one terminal of it, in the order of the design. */
export function conductorsAt(design: Design, part: PartId, terminal?: string): readonly Conductor[] {
  const all = joinsOf(design.conductors).get(part) ?? []
  if (terminal === undefined) return all
  return all.filter(
    ({ from, to }) =>
      (from.part === part && from.terminal === terminal) || (to.part === part && to.terminal === terminal),
  )
}

function joinsOf(conductors: readonly Conductor[]): ReadonlyMap<PartId, readonly Conductor[]> {
  const known = joinIndex.get(conductors)
  if (known) return known
  const index = new Map<PartId, Conductor[]>()
  for (const c of conductors)
    for (const part of new Set([c.from.part, c.to.part])) {
      const list = index.get(part)
      if (list) list.push(c)
      else index.set(part, [c])
    }
  joinIndex.set(conductors, index)
  return index
}
