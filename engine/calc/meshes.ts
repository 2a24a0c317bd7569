import type { Blocks } from '../math/blocks'
import { currentsFrom, type Division, divisionOf } from '../math/division'
import { greatestFlow } from '../math/unlimited'
import type { Amps } from '../units'
import type { Bounds, NoEnvelope } from './bounds'
import { spansApart } from './bridges'
import type { Prepared } from './prepare'
import type { Sides, Span } from './sides'
import type { NetSystem } from './systems'

/** Shares kept at a time in one block: 32 MB. */
const MOST_SHARES = 4_000_000

/** What may flow into a block at its joints, as arcs between nets; −1 where an arc moves no current of the block. */
interface MeshLoad {
  readonly into: number[]
  readonly outOf: number[]
  readonly from: number[]
  readonly to: number[]
  readonly low: Amps[]
  readonly high: Amps[]
}

/** Collects, over all systems, what hangs on the joints of every meshed block. */
export class MeshLoads {
  private readonly byBlock = new Map<number, MeshLoad>()

  constructor(
    private readonly p: Prepared,
    private readonly b: Blocks,
  ) {}

  addLoop(block: number, into: number, outOf: number, low: Amps, high: Amps): void {
    const net = this.p.net[into]!
    this.add(block, into, outOf, net, net, { low, high })
  }

  /** Sums of one system at the joints of every block that it has more than one joint of. */
  addSides(system: NetSystem, net: number, sides: Sides): void {
    const { b } = this
    const joints = new Map<number, number[]>()
    sides.vertices.forEach((v, slot) => {
      const block = b.above[v]!
      if (block === -1 || !sides.hasBeyond(slot)) return
      const list = joints.get(block)
      if (list) list.push(slot)
      else joints.set(block, [slot])
    })
    if (joints.size === 0) return
    const apart = spansApart(this.p, system, net)
    const span: Span = { low: 0, high: 0 }
    for (const [block, slots] of joints) {
      const top = b.top[sides.vertices[slots[0]!]!]!
      sides.others.forEach((other, i) => {
        for (const slot of slots)
          this.add(block, sides.vertices[slot]!, -1, other, net, sides.below(slot, i, span))
        this.add(block, top, -1, other, net, sides.besides(slots, i, span))
      })
      apart.spans.forEach((between, i) => {
        this.add(block, -1, -1, apart.from[i]!, apart.to[i]!, between)
      })
    }
  }

  /**
   * Adds to the branches of all loaded blocks the extremes of their currents. Returns the branches without an
   * answer, and why.
   * Cost in each block: a factorisation, two solves a joint, one balance each way a branch.
   */
  solve(into: Bounds): Map<number, NoEnvelope> {
    const { p, b } = this
    const failed = new Map<number, NoEnvelope>()
    for (const [block, load] of this.byBlock) {
      const edges = b.edge.subarray(b.start[block]!, b.start[block + 1]!)
      const division = divisionOf(edges, p.graph.tail, p.graph.head, p.resistance)
      const reason =
        division.factor.singularAt === -1 ? solveBlock(division, load, into) : 'resistance-out-of-range'
      if (reason) for (const e of edges) failed.set(e, reason)
    }
    return failed
  }

  private add(block: number, into: number, outOf: number, from: number, to: number, span: Span): void {
    if (span.low === 0 && span.high === 0) return
    let load = this.byBlock.get(block)
    if (!load) {
      load = { into: [], outOf: [], from: [], to: [], low: [], high: [] }
      this.byBlock.set(block, load)
    }
    load.into.push(into)
    load.outOf.push(outOf)
    load.from.push(from)
    load.to.push(to)
    load.low.push(span.low)
    load.high.push(span.high)
  }
}

function solveBlock(division: Division, load: MeshLoad, into: Bounds): NoEnvelope | undefined {
  const joints = [...new Set([...load.into, ...load.outOf])].filter((v) => v !== -1)
  const column = new Map(joints.map((v, j) => [v, j]))
  const columnOf = (v: number): number => column.get(v) ?? -1
  const plus = load.into.map(columnOf)
  const minus = load.outOf.map(columnOf)
  const greatest = greatestOf(load)
  const edgeCount = division.edges.length
  const atOnce = Math.min(edgeCount, Math.max(1, Math.floor(MOST_SHARES / joints.length)))
  const currents = new Float64Array(edgeCount)
  const shares = new Float64Array(joints.length * atOnce)
  const objective = new Float64Array(plus.length)
  for (let first = 0; first < edgeCount; first += atOnce) {
    const count = Math.min(atOnce, edgeCount - first)
    joints.forEach((v, j) => {
      currentsFrom(division, division.place.get(v)!, currents)
      shares.set(currents.subarray(first, first + count), j * atOnce)
    })
    for (let k = 0; k < count; k++) {
      const e = division.edges[first + k]!
      const share = (j: number): number => (j === -1 ? 0 : shares[j * atOnce + k]!)
      for (let i = 0; i < objective.length; i++) objective[i] = share(plus[i]!) - share(minus[i]!)
      const most = greatest(objective)
      for (let i = 0; i < objective.length; i++) objective[i] = -objective[i]!
      const least = greatest(objective)
      if (!most || !least) return 'no-convergence'
      into.max[e]! += most.value
      into.min[e]! -= least.value
    }
  }
}

function greatestOf(load: MeshLoad): ReturnType<typeof greatestFlow> {
  const number = new Map<number, number>()
  for (const net of [...load.from, ...load.to]) if (!number.has(net)) number.set(net, number.size)
  const numbered = (nets: readonly number[]): Int32Array => Int32Array.from(nets, (net) => number.get(net)!)
  return greatestFlow(
    number.size,
    numbered(load.from),
    numbered(load.to),
    Float64Array.from(load.low),
    Float64Array.from(load.high),
  )
}
