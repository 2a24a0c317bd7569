import { kindOf } from '../kinds/all'
import type { Conductor, ConductorId, Design, Part, PartId } from '../model/design'
import { namingFor } from '../model/naming'
import type { Millimetres } from '../units'
import type { EditOf } from './edit'
import { GRID, snap } from './grid'

/** Parts and conductors of a design, named by id. */
export interface Selection {
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
}

/** What is carried from one place to another, also between designs: plain data that survives JSON. */
export interface Clip {
  readonly parts: readonly Part[]
  /** Only conductors with both ends on these parts. */
  readonly conductors: readonly Conductor[]
}

/** The selected parts with every conductor among them, selected or not: a group is copied as it is wired. */
export function copyOf(design: Design, selection: Selection): Clip {
  const ids = new Set(selection.parts)
  return {
    parts: design.parts.filter((p) => ids.has(p.id)),
    conductors: design.conductors.filter((c) => ids.has(c.from.part) && ids.has(c.to.part)),
  }
}

/** Adds a clip with its top left corner at a place, under new ids, designations and numbers, in one edit. */
export function pasteEdit(
  design: Design,
  clip: Clip,
  at: { readonly x: Millimetres; readonly y: Millimetres },
): EditOf<'add'> {
  const naming = namingFor(design)
  const dx = snap(at.x) - Math.min(...clip.parts.map((p) => p.x))
  const dy = snap(at.y) - Math.min(...clip.parts.map((p) => p.y))
  const partIds = new Map(clip.parts.map((p) => [p.id, naming.partId()]))
  const conductorIds = new Map(clip.conductors.map((c) => [c.id, naming.conductorId()]))
  return {
    do: 'add',
    parts: clip.parts.map((p) => ({
      ...p,
      id: partIds.get(p.id)!,
      designation: naming.designation(letterOf(p)),
      x: snap(p.x + dx),
      y: snap(p.y + dy),
    })),
    conductors: clip.conductors.map((c) => ({
      ...c,
      id: conductorIds.get(c.id)!,
      number: naming.number(),
      from: { ...c.from, part: partIds.get(c.from.part)! },
      to: { ...c.to, part: partIds.get(c.to.part)! },
      returnOf: c.returnOf === null ? null : (conductorIds.get(c.returnOf) ?? null),
      path: c.path.map(({ x, y }) => ({ x: x + dx, y: y + dy })),
    })),
  }
}

/** A copy of the selection, two grid steps down and to the right. */
export function duplicateEdit(design: Design, selection: Selection): EditOf<'add'> {
  const clip = copyOf(design, selection)
  const x = Math.min(...clip.parts.map((p) => p.x))
  const y = Math.min(...clip.parts.map((p) => p.y))
  return pasteEdit(design, clip, { x: x + 4 * GRID, y: y + 4 * GRID })
}

/** Class letter for a new designation; of an unknown kind, the letters of its old one. */
const letterOf = (part: Part): string => kindOf(part.kind)?.letter ?? part.designation.replace(/\d+$/, '')
