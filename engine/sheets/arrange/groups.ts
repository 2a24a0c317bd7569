import { byWay, controlsOf, feedersOf, servesMostly } from './cells'
import { chainsOf, linkedSets } from './chains'
import type { Plan } from './graph'

/** Parts that stand together. */
export interface Groups {
  /** Chains of sources with what protects and switches them, each a list of part numbers. */
  readonly chains: readonly (readonly number[])[]
  /** Stores, main protection, bars: what everything else hangs on. */
  readonly trunk: readonly number[]
  /** Parts of the rest that hang together and hold no store, such as a mains group. */
  readonly asides: readonly (readonly number[])[]
  readonly cells: readonly Cell[]
  readonly data: readonly number[]
}

/** A block with everything that it alone feeds, in the columns in which it stands. */
export interface Cell {
  /** The feeding block, and the bars that mostly take returns of this cell. */
  readonly heads: readonly number[]
  /** Switches that work what stands between. */
  readonly controls: readonly number[]
  readonly between: readonly number[]
  readonly loads: readonly number[]
}

export function groupsOf(plan: Plan): Groups {
  const { parts } = plan
  const all = parts.map((_, i) => i)
  const data = all.filter((i) => parts[i]!.column === 'data')
  const chains = chainsOf(plan)
  const inChain = new Set(chains.flat())
  const feeder = feedersOf(plan, inChain)
  const heads = all.filter((i) => feeder.includes(i) && parts[i]!.column !== 'load')
  const cells = heads.map((head) => {
    const fed = all.filter((i) => feeder[i] === head && i !== head)
    return {
      heads: [head, ...all.filter((i) => i !== head && !heads.includes(i) && servesMostly(plan, i, fed))],
      controls: [],
      between: fed.filter((i) => parts[i]!.column !== 'load'),
      loads: byWay(
        plan,
        head,
        fed.filter((i) => parts[i]!.column === 'load'),
        feeder,
      ),
    }
  })
  const inCell = new Map(
    cells.flatMap((c, k) => [...c.heads, ...c.between, ...c.loads].map((i) => [i, k] as const)),
  )
  const rest = all.filter((i) => parts[i]!.column !== 'data' && !inChain.has(i) && !inCell.has(i))
  const controls = controlsOf(plan, rest, inCell)
  const sets = linkedSets(
    plan,
    rest.filter((i) => !controls.has(i)),
  )
  const isStore = (i: number): boolean => parts[i]!.column === 'store'
  const trunk = sets.some((set) => set.some(isStore))
    ? sets.filter((set) => set.some(isStore))
    : sets.slice(0, 1)
  return {
    chains,
    trunk: trunk.flat(),
    asides: sets.filter((set) => !trunk.includes(set)),
    cells: cells.map((c, k) => ({ ...c, controls: rest.filter((i) => controls.get(i) === k) })),
    data,
  }
}
