import type { Millimetres } from '../../units'
import type { Block } from './block'
import type { Plan } from './graph'
import { snapUp } from './stack'
import { below, beside, inColumns, inRows } from './together'

/** The blocks of a drawing before they have their places. */
export interface Blocks {
  readonly trunk: Block
  readonly cells: readonly Block[]
  readonly chains: readonly Block[]
  readonly data: Block
}

const GAP: Millimetres = 15

/** Where what stands apart from the flow goes: on the left with the trunk, among the cells, or across everything. */
type Apart = 'left' | 'cells' | 'across'

/** Puts the blocks together in each way that there is and takes the one that fills a sheet of this shape best. */
export function bestOf(plan: Plan, blocks: Blocks, aspect: number): Block {
  const cells = [...blocks.cells, blocks.data]
  const tallest = Math.max(0, ...cells.map((c) => c.h))
  const total = cells.reduce((sum, c) => sum + c.h + GAP, 0)
  // The height of the sheet that it needs, and for those that need about the same the mean length of a link.
  const size = (b: Block): number => Math.max(b.h, b.w / aspect) + meanLength(plan, b) / 2
  let best: Block | null = null
  for (let height = tallest; height <= total; height += 20)
    for (const sources of ['left', 'across'] as const)
      for (const data of ['left', 'cells', 'across'] as const) {
        const whole = compose(plan, blocks, height, sources, data)
        if (!best || size(whole) < size(best) - 1) best = whole
      }
  return best ?? stacked([])
}

/** Level and upright distance of the ends of a link, on average. */
function meanLength(plan: Plan, { places }: Block): Millimetres {
  const sum = plan.links.reduce((so, l) => {
    const [a, b] = [places.get(l.from)!, places.get(l.to)!]
    return so + Math.abs(a.x - b.x) + Math.abs(a.y + l.fromY - b.y - l.toY)
  }, 0)
  return sum / Math.max(1, plan.links.length)
}

/** Sources above, data below or at the end of the cells. */
function compose(plan: Plan, b: Blocks, height: Millimetres, sources: Apart, data: Apart): Block {
  const right = data === 'cells' ? [...b.cells, b.data] : b.cells
  const cells = inColumns(right.filter(isThere), height, GAP)
  const width = b.trunk.w + (sources === 'across' ? GAP + cells.w : 0)
  const above = inRows(b.chains, Math.max(width, ...b.chains.map((c) => c.w)), GAP)
  const left = stacked([
    ...(sources === 'left' ? [above] : []),
    b.trunk,
    ...(data === 'left' ? [b.data] : []),
  ])
  const main = beside([levelled(plan, left, cells), cells].filter(isThere), GAP)
  return stacked([...(sources === 'across' ? [above] : []), main, ...(data === 'across' ? [b.data] : [])])
}

const isThere = (b: Block): boolean => b.places.size > 0

const stacked = (blocks: readonly Block[]): Block => below(blocks.filter(isThere), GAP)

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
