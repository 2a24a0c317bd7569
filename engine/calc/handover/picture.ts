import type { Design, Part } from '../../model/design'
import type { FuseFind } from './finder'
import type { FuseSpot } from './fuses'
import type { Readings } from './readings'
import type { Store } from './stores'
import type { Thing } from './things'

/** The whole system in plain blocks: what charges, what stores, how it is divided, what it feeds. */
export interface Picture {
  readonly charging: readonly { readonly part: Part; readonly from: Part | null }[]
  readonly stores: readonly Store[]
  readonly groups: readonly PictureGroup[]
}

export interface PictureGroup {
  /** The block that divides; null: things with a fuse of their own. */
  readonly block: Part | null
  /** The next fuse on the way up to the battery; null: none, or more than one. */
  readonly behind: FuseSpot | null
  readonly things: readonly Thing[]
}

/** Things by the block that holds the first fuse on their way. O(things · fuses). */
export function pictureOf(
  design: Design,
  finds: readonly FuseFind[],
  { charging }: Readings,
  stores: readonly Store[],
): Picture {
  const groups = new Map<Part | null, { behind: FuseSpot | null; things: Thing[] }>()
  for (const { thing, fuses } of finds) {
    if (thing.role === 'charging') continue
    const way = fuses.filter((f) => f.why === 'in the way')
    const first = way[0]?.fuse
    const block = first && first.way !== null ? first.part : null
    const group = groups.get(block)
    if (group) group.things.push(thing)
    else groups.set(block, { behind: block === null ? null : (way[1]?.fuse ?? null), things: [thing] })
  }
  const order = new Map(design.parts.map((p, i) => [p, i]))
  return {
    charging: charging.map(({ part, from }) => ({ part, from })),
    stores,
    groups: [...groups]
      .map(([block, { behind, things }]) => ({ block, behind, things }))
      .sort((a, b) => place(order, a.block) - place(order, b.block)),
  }
}

const place = (order: ReadonlyMap<Part, number>, part: Part | null): number =>
  part === null ? Number.MAX_SAFE_INTEGER : (order.get(part) ?? 0)
