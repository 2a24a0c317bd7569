import { type Blocks, blocksOf } from '../math/blocks'
import { fromNumber, type MaybeUnlimited } from '../units'
import type { Bounds, NoEnvelope } from './bounds'
import { pairBridges, ringBridges } from './bridges'
import { deviceShares } from './deviceshares'
import { addLoop } from './loops'
import { MeshLoads } from './meshes'
import type { Prepared } from './prepare'
import { sidesOf } from './sides'
import { type NetSystem, netSystems } from './systems'
import { type Figure, type GreatestCurrent, greatestOf, type Witness } from './witness'

/** Worst-case current of one branch in both directions, positive from → to. */
export interface Envelope {
  readonly branch: string
  /** At most 0; 'unlimited': as far below 0 as one likes. */
  readonly min: MaybeUnlimited
  /** At least 0. */
  readonly max: MaybeUnlimited
  readonly witnessMin: Witness
  readonly witnessMax: Witness
  /** Meshed block that the branch lies in: how its current divides depends on resistances. −1 where it does not. */
  readonly block: number
}

/** All branches of one network. Arrays are by branch index; A. */
export interface EnvelopeResult {
  readonly prepared: Prepared
  readonly blocks: Blocks
  /** ≤ 0; −Infinity: unlimited; NaN: no answer. */
  readonly min: Float64Array
  /** ≥ 0; Infinity: unlimited; NaN: no answer. */
  readonly max: Float64Array
  /** Meshed block, or −1 (a bridge or a self-loop). */
  readonly block: Int32Array
  readonly noAnswer: ReadonlyMap<number, NoEnvelope>
  /** Current of a branch for 1 A that each device delivers, by device; balances of nets come on top. */
  coefficients(branch: number): Float64Array
  /** The same, only the devices that count, in their order. */
  few(branch: number): Map<number, number>
  /** Greatest value of a figure linear in the device currents; undefined: no convergence. */
  greatest(figure: Figure): GreatestCurrent | undefined
  /** Device currents that give the figure, none where there is no answer; computed on request, O(devices) and more in a meshed block. */
  witness(branch: number, side: 'min' | 'max'): Witness
  /** Both directions of one branch, or why there is no answer. */
  envelope(branch: number): Envelope | { readonly branch: string; readonly noAnswer: NoEnvelope }
}

const NONE: Witness = { devices: [], ray: [] }

/** The opposite of a figure. */
export const turned = (figure: Figure): Map<number, number> =>
  new Map(Array.from(figure, ([d, value]) => [d, -value]))

/**
 * The least and the greatest current of every branch over all device currents within their bounds, every net in
 * balance. Exact: bridges from sums over the part that hangs on them, branches of meshed blocks from how the block
 * divides what comes in at its joints. Topology decides what is unlimited on a bridge; in a block, where every
 * branch takes a share of every exchange between joints unless resistances balance, a share below 1e-9 counts as none.
 * Cost: near-linear where nets are trees; each block adds a sparse factorisation and its joints times its branches.
 */
export function envelopes(p: Prepared): EnvelopeResult {
  const b = blocksOf(p.graph)
  const m = p.graph.edgeCount
  const bounds: Bounds = { min: new Float64Array(m), max: new Float64Array(m) }
  const loads = new MeshLoads(p, b)
  const all = netSystems(p)
  const scratch = new Int32Array(p.graph.vertexCount).fill(-1)
  for (const system of all.systems)
    for (const net of system.nets) addSystem(p, b, system, net, bounds, loads, scratch)
  for (const device of all.inOneNet) addLoop(p, b, device, bounds, loads)

  const noAnswer = loads.solve(bounds)
  for (let e = 0; e < m; e++) {
    if (bounds.min[e]! >= 0) bounds.min[e] = 0
    if (bounds.max[e]! <= 0) bounds.max[e] = 0
  }
  for (const e of noAnswer.keys()) {
    bounds.min[e] = Number.NaN
    bounds.max[e] = Number.NaN
  }
  const greatest = greatestOf(p, all)
  const { of: coefficients, few, alike } = deviceShares(p, b)
  const told = new Map<number, Witness>()
  const search = (branch: number, side: 'min' | 'max'): Witness => {
    const shares = few(branch)
    return greatest(side === 'max' ? shares : turned(shares))?.witness ?? NONE
  }
  const witness = (branch: number, side: 'min' | 'max'): Witness => {
    if (noAnswer.has(branch)) return NONE
    const figure = side === 'max' ? alike(branch) : -alike(branch) - 1
    if (Number.isNaN(figure)) return search(branch, side)
    const found = told.get(figure) ?? search(branch, side)
    told.set(figure, found)
    return found
  }
  return {
    prepared: p,
    blocks: b,
    min: bounds.min,
    max: bounds.max,
    block: b.of.map((block) => (block < 0 ? -1 : block)),
    noAnswer,
    coefficients,
    few,
    greatest,
    witness,
    envelope(e) {
      const branch = p.form.branches[e]!.id
      const reason = noAnswer.get(e)
      if (reason) return { branch, noAnswer: reason }
      return {
        branch,
        min: fromNumber(bounds.min[e]!),
        max: fromNumber(bounds.max[e]!),
        witnessMin: witness(e, 'min'),
        witnessMax: witness(e, 'max'),
        block: Math.max(-1, b.of[e]!),
      }
    },
  }
}

function addSystem(
  p: Prepared,
  b: Blocks,
  system: NetSystem,
  net: number,
  bounds: Bounds,
  loads: MeshLoads,
  scratch: Int32Array,
): void {
  const sides = sidesOf(p, b, system, net, scratch)
  if (system.nets.length === 2) pairBridges(p, b, sides, bounds)
  else ringBridges(p, b, system, net, sides, bounds)
  loads.addSides(system, net, sides)
}
