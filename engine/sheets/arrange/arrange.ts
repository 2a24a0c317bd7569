import { type Block, layBlock } from './block'
import { bestOf } from './compose'
import { otherEnd, type Plan, planOf } from './graph'
import { type Groups, groupsOf } from './groups'
import { forwardLayers, layersFrom, longestLayers } from './layers'
import type { ArrangeLink, ArrangeOptions, ArrangePart, Place } from './part'

/** Width by height of an A3 sheet, landscape, inside its frame. */
const A3_ASPECT = 390 / 257

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
    cells: [
      ...cellsInOrder(plan, groups).map((c) =>
        layBlock(plan, [c.heads, c.controls, c.between, c.loads], (k) => k === 3),
      ),
      ...groups.asides.map((set) => layBlock(plan, layersFrom(plan, set, leadsOut(plan, set), false))),
    ],
    chains: groups.chains.map((c) => chainBlock(plan, c)),
    data: layBlock(plan, dataColumns(plan, groups.data)),
  }
  return new Map(
    [...bestOf(plan, blocks, options.aspect ?? A3_ASPECT).places]
      .sort((a, b) => a[0] - b[0])
      .map(([i, place]) => [plan.parts[i]!.id, place]),
  )
}

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

/** A chain of sources from the farthest part to the one that is joined to the rest. */
function chainBlock(plan: Plan, chain: readonly number[]): Block {
  const layers = layersFrom(plan, chain, leadsOut(plan, chain), false)
  const first = layers.at(-1)![0]!
  return layBlock(plan, layers.length > 1 ? longestLayers(plan, chain, first) : forwardLayers(plan, chain))
}

/** Is a part of the set joined to one outside? */
function leadsOut(plan: Plan, set: readonly number[]): (part: number) => boolean {
  const inside = new Set(set)
  return (i) => plan.at[i]!.some((l) => !inside.has(otherEnd(l, i)))
}

/** Hubs, then what is joined to them. */
function dataColumns(plan: Plan, data: readonly number[]): number[][] {
  const most = Math.max(0, ...data.map((i) => plan.at[i]!.length))
  return layersFrom(plan, data, (i) => plan.at[i]!.length === most, false)
}
