import type { Conductor, Design, Part } from '../model/design'
import { withoutView } from '../model/inviews'
import { partById } from '../model/lookup'
import { done, withConductors, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Lets parts stand again where the single-line view has them; ways laid by hand at them in this view are let go. */
export function applyFollow(design: Design, { parts, view }: EditOf<'follow'>): EditResult {
  const ids = new Set(parts)
  const stray = parts.find((id) => !partById(design, id))
  if (stray !== undefined) return refuse('no-part', `There is no part ${stray}.`)
  const there = withParts(design, (p) => (ids.has(p.id) && p.at?.[view] ? partFollowing(p) : p))
  return done(
    withConductors(there, (c) =>
      c.pathIn?.[view] && (ids.has(c.from.part) || ids.has(c.to.part)) ? runFollowing(c) : c,
    ),
  )

  function partFollowing({ at, ...rest }: Part): Part {
    const left = withoutView(at, view)
    return left ? { ...rest, at: left } : rest
  }
  function runFollowing({ pathIn, ...rest }: Conductor): Conductor {
    const left = withoutView(pathIn, view)
    return left ? { ...rest, pathIn: left } : rest
  }
}
