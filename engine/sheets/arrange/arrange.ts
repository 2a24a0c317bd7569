import type { Millimetres } from '../../units'
import { type Block, below, beside, inColumns, inRows, layBlock } from './block'
import { otherEnd, type Plan, planOf } from './graph'
import { type Groups, groupsOf } from './groups'
import { layersFrom } from './layers'
import type { ArrangeLink, ArrangeOptions, ArrangePart, Place } from './part'

/** Width by height of an A3 sheet, landscape, inside its frame. */
const A3_ASPECT = 390 / 257
const GAP: Millimetres = 15

/**
 * Places parts for reading from left to right: stores, main protection and bars, then each block with its
 * loads in the order of its ways; sources above, data below. Places are top left corners on the 2.5 mm grid, from
 * 0, 0. Deterministic.
 */
export function arrange(
  parts: readonly ArrangePart[],
  links: readonly ArrangeLink[],
  options: ArrangeOptions = {},
): Map<string, Place> {
  const plan = planOf(parts, links)
  const groups = groupsOf(plan)
  const blocks = {
    trunk: layBlock(
      plan,
      layersFrom(plan, groups.trunk, (i) => plan.parts[i]!.column === 'store', true),
    ),
    cells: cellsInOrder(plan, groups).map((c) =>
      layBlock(plan, [c.heads, c.between, c.loads], (k) => k === 2),
    ),
    chains: groups.chains.map((c) => chainBlock(plan, c)),
    data: layBlock(plan, dataColumns(plan, groups.data)),
  }
  const aspect = options.aspect ?? A3_ASPECT
  const tallest = Math.max(0, ...blocks.cells.map((c) => c.h))
  const total = blocks.cells.reduce((sum, c) => sum + c.h + GAP, 0)
  let best: Block | null = null
  for (let height = tallest; height <= Math.max(tallest, total); height += 20) {
    const whole = compose(blocks, height)
    if (!best || size(whole, aspect) < size(best, aspect)) best = whole
  }
  return new Map(
    [...best!.places].sort((a, b) => a[0] - b[0]).map(([i, place]) => [plan.parts[i]!.id, place]),
  )
}

interface Blocks {
  readonly trunk: Block
  readonly cells: readonly Block[]
  readonly chains: readonly Block[]
  readonly data: Block
}

function compose({ trunk, cells, chains, data }: Blocks, cellHeight: Millimetres): Block {
  const main = beside(
    [trunk, inColumns(cells, cellHeight, GAP)].filter((b) => b.places.size > 0),
    GAP,
  )
  const above = inRows(chains, Math.max(main.w, ...chains.map((c) => c.w)), GAP)
  return below(
    [above, main, data].filter((b) => b.places.size > 0),
    GAP,
  )
}

/** Height that a sheet of this shape must have to hold the block. */
const size = (b: Block, aspect: number): number => Math.max(b.h, b.w / aspect)

/** Cells in the order of the terminals that feed them. */
function cellsInOrder(plan: Plan, groups: Groups): Groups['cells'] {
  const feedY = (head: number): number =>
    Math.min(Infinity, ...plan.at[head]!.filter((l) => l.to === head).map((l) => l.fromY))
  const order = (c: Groups['cells'][number]): number => plan.parts[c.heads[0]!]!.order ?? feedY(c.heads[0]!)
  const keys = new Map(groups.cells.map((c) => [c, order(c)]))
  return [...groups.cells].sort((a, b) => {
    const [p, q] = [keys.get(a)!, keys.get(b)!]
    return (p === q ? 0 : p - q) || a.heads[0]! - b.heads[0]!
  })
}

/** A chain of sources from the farthest to the one that is joined to the rest. */
function chainBlock(plan: Plan, chain: readonly number[]): Block {
  const inside = new Set(chain)
  const isLast = (i: number): boolean => plan.at[i]!.some((l) => !inside.has(otherEnd(l, i)))
  return layBlock(plan, layersFrom(plan, chain, isLast, false).reverse())
}

/** Hubs, then what is joined to them. */
function dataColumns(plan: Plan, data: readonly number[]): number[][] {
  const most = Math.max(0, ...data.map((i) => plan.at[i]!.length))
  return layersFrom(plan, data, (i) => plan.at[i]!.length === most, false)
}
