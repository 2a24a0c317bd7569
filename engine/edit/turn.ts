import { boxOf } from '../kinds/place'
import type { Design, Part, Place, Turn } from '../model/design'
import { inEachView } from '../model/inviews'
import { partById } from '../model/lookup'
import { done, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { FURTHEST, GRID } from './grid'
import { refuse } from './refuse'

/** Turns each part clockwise about its own middle, to the nearest grid line. Four quarter turns are none. */
export function applyTurn(design: Design, edit: EditOf<'turn'>): EditResult {
  const ids = new Set(edit.parts)
  for (const id of ids) if (!partById(design, id)) return refuse('no-part', `There is no part ${id} to turn.`)
  return done(withParts(design, (p) => (ids.has(p.id) ? turned(p, edit.by) : p)))
}

function turned(part: Part, by: 90 | 180 | 270): Part {
  const turn = ((part.turn + by) % 360) as Turn
  if (by === 180) return { ...part, turn }
  const { w, h } = boxOf(part)
  // Cut towards zero, so that turning back undoes the half step as well.
  const shift = Math.trunc((w - h) / 2 / GRID) * GRID
  const about = ({ x, y }: Place): Place => ({ x: bounded(x + shift), y: bounded(y - shift) })
  return { ...part, turn, ...about(part), ...(part.at ? { at: inEachView(part.at, about) } : {}) }
}

const bounded = (at: number): number => Math.min(FURTHEST, Math.max(-FURTHEST, at))
