import { kindOf } from '../kinds/all'
import type { Conductor, ConductorId, Design, Part, PartId, Place, SheetText, Zone } from '../model/design'
import { namingFor } from '../model/naming'
import type { OwnConductor } from '../tables/ownsizes'
import { broughtSizes, ownRowsOf } from './clipsizes'
import type { EditOf } from './edit'
import { GRID, snap } from './grid'

/** Parts and conductors of a design, named by id. */
export interface Selection {
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  /** Texts on the sheet. */
  readonly texts?: readonly string[]
}

/** What is carried from one place to another, also between designs: plain data that survives JSON. */
export interface Clip {
  readonly parts: readonly Part[]
  /** Only conductors with both ends on these parts. */
  readonly conductors: readonly Conductor[]
  readonly texts?: readonly SheetText[]
  /** Outlines, all of whose parts come along. */
  readonly zones?: readonly Zone[]
  /** Own conductors that the conductors are of. */
  readonly ownConductors?: readonly OwnConductor[]
}

/** The selected parts with every conductor among them, selected or not, and the outlines round none but them. */
export function copyOf(design: Design, selection: Selection): Clip {
  const ids = new Set(selection.parts)
  const texts = design.texts?.filter((t) => selection.texts?.includes(t.id)) ?? []
  const zones = design.zones?.filter((z) => z.parts.length > 0 && z.parts.every((id) => ids.has(id))) ?? []
  const conductors = design.conductors.filter((c) => ids.has(c.from.part) && ids.has(c.to.part))
  const ownConductors = ownRowsOf(design, conductors)
  return {
    ...(texts.length > 0 ? { texts } : {}),
    ...(zones.length > 0 ? { zones } : {}),
    ...(ownConductors.length > 0 ? { ownConductors } : {}),
    parts: design.parts.filter((p) => ids.has(p.id)),
    conductors,
  }
}

/**
 * Adds a clip with its top left corner at a place, under new ids, designations and numbers, in one edit. References to
 * drawing notes are left behind: another design has other notes.
 */
export function pasteEdit(design: Design, clip: Clip, at: Place): EditOf<'add'> {
  const parts = clip.parts.map(({ notes: _refers, ...part }) => part)
  return placedAt(design, { ...clip, parts }, at)
}

function placedAt(design: Design, clip: Clip, at: Place): EditOf<'add'> {
  const naming = namingFor(design)
  const { x, y } = cornerOf(clip)
  const [dx, dy] = [snap(at.x) - x, snap(at.y) - y]
  const partIds = new Map(clip.parts.map((p) => [p.id, naming.partId()]))
  const sizes = broughtSizes(design, clip.ownConductors ?? [])
  const conductorIds = new Map(clip.conductors.map((c) => [c.id, naming.conductorId()]))
  return {
    do: 'add',
    // A copy stands where it was put, in every view.
    parts: clip.parts.map(({ at: _at, ...p }) => ({
      ...p,
      id: partIds.get(p.id)!,
      designation: naming.designation(letterOf(p)),
      x: snap(p.x + dx),
      y: snap(p.y + dy),
    })),
    conductors: clip.conductors.map(({ pathIn: _pathIn, ...c }) => ({
      ...c,
      id: conductorIds.get(c.id)!,
      number: naming.number(),
      size: sizes.sizeOf(c.size),
      from: { ...c.from, part: partIds.get(c.from.part)! },
      to: { ...c.to, part: partIds.get(c.to.part)! },
      returnOf: c.returnOf === null ? null : (conductorIds.get(c.returnOf) ?? null),
      path: c.path.map(({ x, y }) => ({ x: x + dx, y: y + dy })),
    })),
    ...(sizes.rows.length > 0 ? { ownConductors: sizes.rows } : {}),
    ...(clip.texts
      ? {
          texts: clip.texts.map((t) => ({ ...t, id: naming.textId(), x: snap(t.x + dx), y: snap(t.y + dy) })),
        }
      : {}),
    ...(clip.zones
      ? {
          zones: clip.zones.map((z) => ({
            ...z,
            id: naming.zoneId(),
            parts: z.parts.map((id) => partIds.get(id)!),
            x: snap(z.x + dx),
            y: snap(z.y + dy),
          })),
        }
      : {}),
  }
}

const cornerOf = ({ parts, texts = [] }: Clip): Place => ({
  x: Math.min(...[...parts, ...texts].map((item) => item.x)),
  y: Math.min(...[...parts, ...texts].map((item) => item.y)),
})

/** A copy of the selection with its top left corner at a place; default: a little down and to the right. */
export function duplicateEdit(design: Design, selection: Selection, at?: Place): EditOf<'add'> {
  const clip = copyOf(design, selection)
  const { x, y } = cornerOf(clip)
  return placedAt(design, clip, at ?? { x: x + 4 * GRID, y: y + 4 * GRID })
}

/** Class letter for a new designation; of an unknown kind, the letters of its old one. */
const letterOf = (part: Part): string => kindOf(part.kind)?.letter ?? part.designation.replace(/\d+$/, '')
