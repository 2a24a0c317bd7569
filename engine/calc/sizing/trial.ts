import { apply } from '../../edit/apply'
import type { EditOf } from '../../edit/edit'
import type { ConductorId, Design } from '../../model/design'
import type { Amps } from '../../units'
import { type FuseWay, ratingEdits } from './fuseways'

/** Sizes and ratings that are tried together. */
export interface Trial {
  readonly sizes: ReadonlyMap<ConductorId, string>
  readonly ratings: ReadonlyMap<FuseWay, Amps>
}

/** What a trial changes, as one step: one edit a size and a part. */
export function trialEdit(design: Design, { sizes, ratings }: Trial): EditOf<'all'> {
  const bySize = new Map<string, ConductorId[]>()
  for (const { id, size } of design.conductors) {
    const to = sizes.get(id)
    if (to === undefined || to === size) continue
    const ids = bySize.get(to)
    if (ids) ids.push(id)
    else bySize.set(to, [id])
  }
  return {
    do: 'all',
    edits: [
      ...[...bySize].map(([size, conductors]) => ({ do: 'conductor', conductors, set: { size } }) as const),
      ...ratingEdits(design, ratings),
    ],
  }
}

export function tried(design: Design, edit: EditOf<'all'>): Design {
  const result = apply(design, edit)
  if (result.refused) throw new RangeError(`standard sizes and ratings are refused: ${result.why}`)
  return result.design
}
