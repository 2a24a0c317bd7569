import { peel } from '../math/peel'
import { solve } from '../math/sparse'
import { type FaultCase, type FaultSystem, faultSystem, helping, type NoFault, response } from './faultsystem'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/** The most that a short circuit anywhere can drive through each protective device. */
export interface BreakingCurrents {
  /** A by branch; NaN where the branch is no fuse; Infinity: a source without emf states no limit. */
  readonly amps: Float64Array
  /** The two ends of that short circuit, by branch; −1 where none drives any. */
  readonly at: Int32Array
  readonly to: Int32Array
  /** False where the network is so large that only short circuits at the device's own ends were tried. */
  readonly everyPair: boolean
}

/** Pairs of nodes × sources, about a second's work. */
export const MOST_TRIALS = 3e8
const MOST_COLUMN_FIGURES = 6e6

/**
 * For each fuse or breaker, the greatest current through it over all short circuits between two nodes of its
 * group, batteries by Thévenin's theorem and every other source at its limit where it adds. Nodes on a branch
 * tree that nothing feeds are passed over: a short circuit further out only adds resistance. Beyond `mostTrials` pairs
 * only short circuits from the device's own ends to battery terminals are tried, and `everyPair` says so.
 */
export function breakingCurrents(
  p: Prepared,
  c: FaultCase,
  mostTrials = MOST_TRIALS,
): BreakingCurrents | NoFault {
  const s = faultSystem(p, c)
  if ('reason' in s) return s
  const n = p.graph.vertexCount
  const amps = new Float64Array(p.graph.edgeCount).fill(Number.NaN)
  const at = new Int32Array(p.graph.edgeCount).fill(-1)
  const to = new Int32Array(p.graph.edgeCount).fill(-1)
  const fuses = p.form.branches.flatMap((b, e) => (b.kind === 'fuse' ? [e] : []))

  const kept = new Uint8Array(n)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d) && !(p.fault[d]! > 0)) return
    kept[p.positive[d]!] = 1
    kept[p.negative[d]!] = 1
  })
  const { outer } = peel(p.graph, kept)
  const isOuter = new Uint8Array(n)
  for (const v of outer) if (v !== -1) isOuter[v] = 1
  const core: number[] = []
  for (let v = 0; v < n; v++) if (!isOuter[v]) core.push(v)
  const coreFuses = fuses.filter((e) => outer[e] === -1).length
  const trials = (coreFuses * core.length + fuses.length) * core.length * (1 + s.sources.length)
  const everyPair = trials <= mostTrials && core.length * n <= MOST_COLUMN_FIGURES
  const others = everyPair ? core : terminalsOf(s)
  const columns = others.map((w) => columnOf(s, w))
  const rises = s.sources.map((x) => response(s, p.positive[x.device]!, p.negative[x.device]!))
  const outerShare = new Float64Array(n)

  const groupOf = s.groups.of
  for (const e of fuses) {
    const a = p.graph.tail[e]!
    const b = p.graph.head[e]!
    const end = outer[e]!
    if (end !== -1) outerShare[end] = 1
    const path = pathOf(s, e, end === -1 ? divided(s, e) : outerShare)
    amps[e] = 0
    const take = (current: number, u: number, w: number): void => {
      if (!(current > amps[e]! * (1 + 1e-12))) return
      amps[e] = current
      at[e] = u
      to[e] = w
    }
    const bothWays = end === -1 && everyPair
    const places = bothWays ? core : end === -1 ? [a, b] : [end]
    for (let i = 0; i < places.length; i++) {
      const u = places[i]!
      if (groupOf[u] !== groupOf[a]) continue
      take(pushedThrough(s, path, u), u, -1)
      for (let k = bothWays ? i + 1 : 0; k < others.length; k++) {
        const w = others[k]!
        if (w === u || groupOf[w] !== groupOf[u]) continue
        take(through(s, path, rises, columns[k]!, u, w), u, w)
      }
    }
    if (end !== -1) outerShare[end] = 0
  }
  return { amps, at, to, everyPair }
}

/** What has to be known of a branch to tell its current in any short circuit. */
interface Path {
  /** A before the short circuit, without sources. */
  readonly before: number
  /** A for 1 A put in at each node, up to a constant. */
  readonly share: Float64Array
  /** A for 1 A that each source delivers before the short circuit. */
  readonly first: Float64Array
}

function pathOf(s: FaultSystem, e: number, share: Float64Array): Path {
  const { p, open } = s
  return {
    before: (open[p.graph.tail[e]!]! - open[p.graph.head[e]!]!) / s.ohms[e]!,
    share,
    first: Float64Array.from(s.sources, ({ device: d }) => share[p.positive[d]!]! - share[p.negative[d]!]!),
  }
}

/**
 * In the meshed and fed part: how the network divides a current. One solve. (On a tree that nothing feeds, and for a
 * short circuit at its outer end, the branch takes all of it.)
 */
function divided(s: FaultSystem, e: number): Float64Array {
  const volts = response(s, s.p.graph.tail[e]!, s.p.graph.head[e]!)
  return volts.map((v) => v / s.ohms[e]!)
}

const columnOf = (s: FaultSystem, w: number): Float64Array => {
  const push = new Float64Array(s.held.length)
  push[w] = 1
  return solve(s.factor, push)
}

/** Size of the current through a branch for a short circuit between u and w of one group. */
function through(
  { open, drive, sources }: FaultSystem,
  { before, share, first }: Path,
  rises: readonly Float64Array[],
  column: Float64Array,
  u: number,
  w: number,
): number {
  // The short circuit takes 1 A out at u and puts it in at w.
  const each = (share[w]! - share[u]!) / (drive[u]! + drive[w]! - 2 * column[u]!)
  let forward = before + each * (open[u]! - open[w]!)
  let backward = -forward
  for (let i = 0; i < sources.length; i++) {
    const rise = rises[i]!
    const coefficient = first[i]! + each * (rise[u]! - rise[w]!)
    forward += helping(sources[i]!.amps, coefficient)
    backward += helping(sources[i]!.amps, -coefficient)
  }
  return Math.max(forward, backward)
}

/**
 * Size of the current through a branch when sources with one terminal outside the group push through a short
 * circuit that joins the group at u to the outside.
 */
function pushedThrough({ p, groups, sources }: FaultSystem, { before, share }: Path, u: number): number {
  let forward = before
  let backward = -before
  for (const { device, amps } of sources) {
    const into = groups.of[p.positive[device]!] === groups.of[u]
    const outOf = groups.of[p.negative[device]!] === groups.of[u]
    if (into === outOf) continue
    const coefficient = into
      ? share[p.positive[device]!]! - share[u]!
      : share[u]! - share[p.negative[device]!]!
    forward += helping(amps, coefficient)
    backward += helping(amps, -coefficient)
  }
  return Math.max(forward, backward)
}

/** Terminals of batteries and references: where a short circuit of a very large network is taken back to. */
function terminalsOf(s: FaultSystem): number[] {
  const nodes = new Set<number>(s.groups.reference)
  s.p.form.devices.forEach((_, d) => {
    if (!isBattery(s.p, d) || nodes.size > 60) return
    nodes.add(s.p.negative[d]!).add(s.p.positive[d]!)
  })
  return [...nodes].slice(0, 64)
}
