import type { XY } from '../model/marks'
import { type Drawing, fitInto } from './drawing'
import type { Flag } from './flags'
import { type Area, type Paper, zoneOf } from './paper'
import { tickAt } from './runmarks'

/** Where things stand on the sheets: "2/B4" for parts and conductors, by id. A conductor may be on several. */
export type Places = ReadonlyMap<string, readonly string[]>

/** A drawing on its sheet; several may share one, each in a room of its own. */
export interface Placed {
  readonly drawing: Drawing
  /** From 1. */
  readonly number: number
  readonly paper: Paper
  readonly room: Area
}

export function placesOn(sheets: readonly Placed[]): Places {
  const places = new Map<string, string[]>()
  for (const placed of sheets) {
    const add = (id: string, at: XY): void => {
      const list = places.get(id) ?? []
      places.set(id, [...list, `${placed.number}/${fieldOf(placed, at)}`])
    }
    const { parts, conductors, flags } = placed.drawing.layout
    for (const p of parts) add(p.id, [p.x + p.w / 2, p.y + p.h / 2])
    for (const c of conductors) {
      add(c.id, tickAt(c).at)
      if (c.withReturn !== null) add(c.withReturn, tickAt(c).at)
    }
    for (const f of flags) add(flagKey(f.conductor, f.end), middleOf(f))
  }
  return places
}

/** Drawings by the sheet that they share, in order. */
export const bySheet = (placed: readonly Placed[]): Placed[][] =>
  [...new Set(placed.map((p) => p.number))].map((number) => placed.filter((p) => p.number === number))

/** Name of the flag that stands for one end of a conductor. */
export const flagKey = (conductor: string, end: 'from' | 'to'): string => `${conductor} ${end}`

/** Where the conductor of a flag goes on: the place of its other flag. */
export const partnerOf = ({ conductor, end }: Flag, places: Places): string =>
  places.get(flagKey(conductor, end === 'from' ? 'to' : 'from'))?.[0] ?? ''

const middleOf = ({ box }: Flag): XY => [box.x + box.w / 2, box.y + box.h / 2]

/** Field of a place in the drawing, once it is on the sheet. */
function fieldOf({ drawing, paper, room }: Placed, [x, y]: XY): string {
  const { scale, dx, dy } = fitInto(drawing, room)
  return zoneOf(paper, x * scale + dx, y * scale + dy)
}
