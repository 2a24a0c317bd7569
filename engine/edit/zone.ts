import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { done, put } from './change'
import type { EditOf, EditResult } from './edit'
import { GRID, snap } from './grid'
import { refuse } from './refuse'

/** Draws an outline, or replaces the one with the same id: renamed, moved, resized, round other parts. */
export function applyZone(design: Design, { zone }: EditOf<'zone'>): EditResult {
  const name = zone.name.trim()
  if (name === '') return refuse('zone-name', 'An outline needs a name, such as "under bench".')
  if (name.length > 200) return refuse('zone-name', 'The name of an outline has at most 200 letters.')
  if (![zone.x, zone.y, zone.w, zone.h].every(Number.isFinite))
    return refuse('not-a-place', `${name} cannot be drawn at a place that is not a number.`)
  const stray = zone.parts.find((id) => !partById(design, id))
  if (stray !== undefined) return refuse('no-part', `There is no part ${stray} to draw ${name} round.`)
  const parts = [...new Set(zone.parts)]
  const [x, y] = [snap(zone.x), snap(zone.y)]
  const [w, h] = [Math.max(GRID, snap(zone.w)), Math.max(GRID, snap(zone.h))]
  const next = { ...zone, name, parts, x, y, w, h }
  return done({ ...design, zones: put(design.zones, next) })
}

/** Takes an outline off; its parts stay. */
export function applyUnzone(design: Design, { id }: EditOf<'unzone'>): EditResult {
  const left = design.zones?.filter((z) => z.id !== id) ?? []
  if (left.length === (design.zones?.length ?? 0)) return refuse('no-zone', `There is no outline ${id}.`)
  const { zones: _all, ...rest } = design
  return done(left.length === 0 ? rest : { ...rest, zones: left })
}
