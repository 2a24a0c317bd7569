import type { Millimetres } from '../../units'
import { type Block, below, beside, inColumns, inRows } from './block'
import { snapUp } from './columns'
import type { Plan } from './graph'

/** The blocks of a drawing before they have their places. */
export interface Blocks {
  readonly trunk: Block
  readonly cells: readonly Block[]
  readonly chains: readonly Block[]
  readonly data: Block
}

const GAP: Millimetres = 15

/** Puts the blocks together in each way that there is and takes the one that fills a sheet of this shape best. */
export function bestOf(plan: Plan, blocks: Blocks, aspect: number): Block {
  const tallest = Math.max(0, ...blocks.cells.map((c) => c.h))
  const total = Math.max(
    tallest,
    blocks.cells.reduce((sum, c) => sum + c.h + GAP, 0),
  )
  const size = (b: Block): number => Math.max(b.h, b.w / aspect)
  let best: Block | null = null
  for (let height = tallest; height <= total; height += 20) {
    const cells = inColumns(blocks.cells, height, GAP)
    for (const isAboveAll of [false, true])
      for (const isBelowAll of [false, true]) {
        const whole = compose(plan, blocks, cells, isAboveAll, isBelowAll)
        if (!best || size(whole) < size(best) - 1) best = whole
      }
  }
  return best!
}

/** Sources above the trunk or above everything, data below the trunk or below everything. */
function compose(
  plan: Plan,
  { trunk, chains, data }: Blocks,
  cells: Block,
  isAboveAll: boolean,
  isBelowAll: boolean,
): Block {
  const width = trunk.w + (isAboveAll ? GAP + cells.w : 0)
  const above = inRows(chains, Math.max(width, ...chains.map((c) => c.w)), GAP)
  const left = stacked([...(isAboveAll ? [] : [above]), trunk, ...(isBelowAll ? [] : [data])])
  const main = beside(
    [levelled(plan, left, cells), cells].filter((b) => b.places.size > 0),
    GAP,
  )
  return stacked([...(isAboveAll ? [above] : []), main, ...(isBelowAll ? [data] : [])])
}

const stacked = (blocks: readonly Block[]): Block =>
  below(
    blocks.filter((b) => b.places.size > 0),
    GAP,
  )

/** The left block lowered, where it is not as tall as the right one, so that their links run as straight as can be. */
function levelled(plan: Plan, left: Block, right: Block): Block {
  const rise = plan.links.flatMap((l) => {
    const [from, to] = [
      left.places.get(l.from) ?? right.places.get(l.from),
      left.places.get(l.to) ?? right.places.get(l.to),
    ]
    if (!from || !to || left.places.has(l.from) === left.places.has(l.to)) return []
    const sign = left.places.has(l.from) ? 1 : -1
    return [sign * (to.y + l.toY - from.y - l.fromY)]
  })
  rise.sort((a, b) => a - b)
  const by = Math.min(Math.max(0, rise[rise.length >> 1] ?? 0), Math.max(0, right.h - left.h))
  const down = snapUp(by)
  return {
    w: left.w,
    h: left.h + down,
    places: new Map([...left.places].map(([i, p]) => [i, { x: p.x, y: p.y + down }])),
  }
}
