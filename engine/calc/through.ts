import type { Amps, MaybeUnlimited } from '../units'
import type { NoEnvelope } from './bounds'
import { type EnvelopeResult, turned } from './envelope'
import type { Prepared } from './prepare'
import type { Figure, GreatestCurrent, Witness } from './witness'

/** Greatest current through a bar: all that comes in by some of its joins and leaves by the others. */
export interface BarThrough {
  readonly max: MaybeUnlimited
  readonly witness: Witness
}

/** Too many joins that may run either way, or why the current of a join has no answer. */
export type NoBarThrough = 'too-many-two-way-joins' | NoEnvelope

/** Signs of two-way joins are tried until so many programs have been solved. */
const MOST_PROGRAMS = 2000
/** Part of the figure within which a bound counts as reached. */
const REACHED = 1e-10

/** Current into the bar by a join that may run either way, and its extremes. */
interface TwoWay {
  readonly inward: Figure
  readonly min: Amps
  readonly max: Amps
}

interface Joins {
  /** Σ|I| over the joins that run one way only. */
  readonly oneWay: Figure
  readonly twoWay: readonly TwoWay[]
  /** The current of a join without limit. */
  readonly endless: Figure | undefined
}

/**
 * The greatest total inflow at a node, ½·Σ|I| over the ends of branches and devices that stand on it, over all
 * device currents: the load on a bar or on a stud. Joins that run one way only count as they are. Those that may run
 * either way make the figure convex: branch and bound over their signs, where an undecided |I| is bounded by its
 * chord between the extremes. Exact. Cost: one search over the device currents for each program, most often one.
 */
export function barThrough(
  p: Prepared,
  r: EnvelopeResult,
  node: number,
): BarThrough | { readonly notChecked: NoBarThrough } {
  const joins = joinsAt(p, r, node)
  if (typeof joins === 'string') return { notChecked: joins }
  if (!joins.endless) return search(r, joins)
  const found = r.greatest(joins.endless)
  return found ? { max: 'unlimited', witness: found.witness } : { notChecked: 'no-convergence' }
}

function joinsAt(p: Prepared, r: EnvelopeResult, node: number): Joins | NoEnvelope {
  const { graph } = p
  const oneWay = new Map<number, number>()
  const twoWay: TwoWay[] = []
  let endless: Figure | undefined
  const join = (inward: Figure, min: Amps, max: Amps): void => {
    if (max === Number.POSITIVE_INFINITY) endless = inward
    else if (min === Number.NEGATIVE_INFINITY) endless = turned(inward)
    else if (min < 0 && max > 0) twoWay.push({ inward, min, max })
    else addTo(oneWay, inward, max > 0 ? 1 : -1)
  }
  for (let i = graph.start[node]!; i < graph.start[node + 1]!; i++) {
    const e = graph.edge[i]!
    if (graph.far[i] === node) continue
    const reason = r.noAnswer.get(e)
    if (reason) return reason
    const shares = r.few(e)
    if (graph.head[e] === node) join(shares, r.min[e]!, r.max[e]!)
    else join(turned(shares), -r.max[e]!, -r.min[e]!)
  }
  for (const d of devicesAt(p, node)) {
    const delivered = new Map([[d, 1]])
    const drawn = turned(delivered)
    const max = r.greatest(delivered)?.value
    const most = r.greatest(drawn)?.value
    if (max === undefined || most === undefined) return 'no-convergence'
    if (p.positive[d] === node) join(delivered, -most, max)
    if (p.negative[d] === node) join(drawn, -max, most)
  }
  return { oneWay: ascending(oneWay), twoWay, endless }
}

function devicesAt(p: Prepared, node: number): number[] {
  const found: number[] = []
  for (let d = 0; d < p.min.length; d++) if (p.positive[d] === node || p.negative[d] === node) found.push(d)
  return found
}

const ascending = (figure: Figure): Figure => new Map([...figure].sort(([a], [b]) => a - b))

function search(
  r: EnvelopeResult,
  { oneWay, twoWay }: Joins,
): BarThrough | { readonly notChecked: NoBarThrough } {
  let best: GreatestCurrent | undefined
  let most = Number.NEGATIVE_INFINITY
  const open: Int8Array[] = [new Int8Array(twoWay.length)]
  for (let programs = 0; open.length > 0; programs++) {
    if (programs === MOST_PROGRAMS) return { notChecked: 'too-many-two-way-joins' }
    const signs = open.pop()!
    const figure = new Map(oneWay)
    let constant = 0
    twoWay.forEach((j, i) => {
      const width = j.max - j.min
      addTo(figure, j.inward, signs[i] === 0 ? (j.max + j.min) / width : signs[i]!)
      if (signs[i] === 0) constant += (-2 * j.max * j.min) / width
    })
    const found = r.greatest(twoWay.length === 0 ? oneWay : ascending(figure))
    if (!found) return { notChecked: 'no-convergence' }
    let reached = dot(oneWay, found.currents)
    for (const j of twoWay) reached += Math.abs(dot(j.inward, found.currents))
    if (reached > most) {
      most = reached
      best = found
    }
    if (found.value + constant <= most + REACHED * Math.max(1, most)) continue
    const next = widest(twoWay, signs, found.currents)
    if (next === -1) continue
    const first = dot(twoWay[next]!.inward, found.currents) < 0 ? 1 : -1
    for (const sign of [first, -first]) {
      const branch = signs.slice()
      branch[next] = sign
      open.push(branch)
    }
  }
  return { max: most / 2, witness: best!.witness }
}

/** The undecided join whose chord lies farthest above what it carries; −1: none left. */
function widest(twoWay: readonly TwoWay[], signs: Int8Array, currents: ReadonlyMap<number, Amps>): number {
  let next = -1
  let gap = Number.NEGATIVE_INFINITY
  twoWay.forEach((j, i) => {
    if (signs[i] !== 0) return
    const current = dot(j.inward, currents)
    const chord = ((j.max + j.min) * current - 2 * j.max * j.min) / (j.max - j.min)
    if (chord - Math.abs(current) <= gap) return
    gap = chord - Math.abs(current)
    next = i
  })
  return next
}

function addTo(sum: Map<number, number>, x: Figure, factor: number): void {
  for (const [d, value] of x) sum.set(d, (sum.get(d) ?? 0) + factor * value)
}

function dot(figure: Figure, x: ReadonlyMap<number, Amps>): number {
  let sum = 0
  for (const [d, value] of figure) sum += value * (x.get(d) ?? 0)
  return sum
}
