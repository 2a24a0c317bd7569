import { bodyColour } from '../../kinds/fuseforms'
import type { Design, Part } from '../../model/design'
import { partById } from '../../model/lookup'
import { isRows } from '../../model/values'
import type { Amps } from '../../units'
import type { Plan } from '../operating/plan'

/** One fuse or breaker as a person finds it. */
export interface FuseSpot {
  /** `${part}/${branch}` */
  readonly id: string
  readonly part: Part
  /** Number of the way in a block; null: it stands alone. */
  readonly way: string | null
  /** What is written beside the way. */
  readonly label: string
  /** null: no rating is stated, as at a way without a fuse. */
  readonly ratingA: Amps | null
  /** Standard colour of its body, in English; empty where the standards name none. */
  readonly colour: string
  readonly isBreaker: boolean
}

/** Every fuse and breaker, by id, in the order of the design. O(parts). */
export function fuseSpots(design: Design, { border }: Plan): ReadonlyMap<string, FuseSpot> {
  const spots = new Map<string, FuseSpot>()
  for (const [id, { part: partId, branch }] of border.branches) {
    const part = partById(design, partId)
    if (branch.kind !== 'fuse' || !part) continue
    const ways = part.values.ways ?? null
    const row = isRows(ways) ? ways[Number(branch.key) - 1] : undefined
    spots.set(id, {
      id,
      part,
      way: isRows(ways) ? branch.key : null,
      label: typeof row?.label === 'string' ? row.label.trim() : '',
      ratingA: branch.ratingA,
      colour: branch.ratingA === null ? '' : bodyColour(part, branch.ratingA),
      isBreaker: part.kind === 'breaker',
    })
  }
  return spots
}
