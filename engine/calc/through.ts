import type { Amps, MaybeUnlimited } from '../units'
import type { EnvelopeResult } from './envelope'
import type { Prepared } from './prepare'
import type { GreatestCurrent, Witness } from './witness'

/** Greatest current through a bar: all that comes in by some of its joins and leaves by the others. */
export interface BarThrough {
  readonly max: MaybeUnlimited
  readonly witness: Witness
}

/** Too many joins that may run either way, or a join whose current has no answer. */
export type NoBarThrough = 'too-many-two-way-joins' | 'resistance-out-of-range'

/** Signs of two-way joins are tried until so many programs have been solved. */
const MOST_PROGRAMS = 2000
/** Part of the figure within which a bound counts as reached. */
const REACHED = 1e-10

/** Current into the bar by one join: value per amp of each device, and its extremes. */
interface Join {
  readonly inward: Float64Array
  readonly min: Amps
  readonly max: Amps
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
  const joins = joinsOf(p, r, node)
  if (joins === undefined) return { notChecked: 'resistance-out-of-range' }
  for (const j of joins) {
    if (j.max === Number.POSITIVE_INFINITY) return { max: 'unlimited', witness: r.greatest(j.inward).witness }
    if (j.min === Number.NEGATIVE_INFINITY)
      return { max: 'unlimited', witness: r.greatest(j.inward.map((c) => -c)).witness }
  }
  return search(p, r, joins)
}

function joinsOf(p: Prepared, r: EnvelopeResult, node: number): Join[] | undefined {
  const { graph } = p
  const joins: Join[] = []
  for (let i = graph.start[node]!; i < graph.start[node + 1]!; i++) {
    const e = graph.edge[i]!
    if (graph.far[i] === node) continue
    if (r.noAnswer.has(e)) return undefined
    const shares = r.coefficients(e)
    const into = graph.head[e] === node
    joins.push({
      inward: into ? shares : shares.map((c) => -c),
      min: (into ? r.min[e]! : -r.max[e]!) + 0,
      max: (into ? r.max[e]! : -r.min[e]!) + 0,
    })
  }
  for (let d = 0; d < p.min.length; d++) {
    const sign = Number(p.positive[d] === node) - Number(p.negative[d] === node)
    if (p.positive[d] !== node && p.negative[d] !== node) continue
    const inward = new Float64Array(p.min.length)
    inward[d] = sign === 0 ? 1 : sign
    const max = r.greatest(inward).value
    const min = -r.greatest(inward.map((c) => -c)).value + 0
    joins.push({ inward, min, max })
    // Both terminals on this bar: what comes in at one goes out at the other.
    if (sign === 0) joins.push({ inward: inward.map((c) => -c), min: -max, max: -min })
  }
  return joins
}

function search(
  p: Prepared,
  r: EnvelopeResult,
  joins: readonly Join[],
): BarThrough | { notChecked: NoBarThrough } {
  const twoWay = joins.filter((j) => j.min < 0 && j.max > 0)
  const oneWay = new Float64Array(p.min.length)
  for (const j of joins) if (!(j.min < 0 && j.max > 0)) addTo(oneWay, j.inward, j.max > 0 ? 1 : -1)

  let best: GreatestCurrent | undefined
  let most = Number.NEGATIVE_INFINITY
  const open: Int8Array[] = [new Int8Array(twoWay.length)]
  for (let programs = 0; open.length > 0; programs++) {
    if (programs === MOST_PROGRAMS) return { notChecked: 'too-many-two-way-joins' }
    const signs = open.pop()!
    const objective = oneWay.slice()
    let constant = 0
    twoWay.forEach((j, i) => {
      const slope = signs[i] === 0 ? (j.max + j.min) / (j.max - j.min) : signs[i]!
      if (signs[i] === 0) constant += (-2 * j.max * j.min) / (j.max - j.min)
      addTo(objective, j.inward, slope)
    })
    const found = r.greatest(objective)
    const reached = joins.reduce((sum, j) => sum + Math.abs(dot(j.inward, found.currents)), 0)
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
function widest(twoWay: readonly Join[], signs: Int8Array, currents: Float64Array): number {
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

function addTo(sum: Float64Array, x: Float64Array, factor: number): void {
  for (let i = 0; i < sum.length; i++) sum[i]! += factor * x[i]!
}

function dot(a: Float64Array, x: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * x[i]!
  return sum
}
