import { type Finder, grown } from './finder'
import { BEND, CORNER, CROSS, type Lattice, LEVEL, STEP, STUB, UPRIGHT, WALL } from './lattice'

/** Where a search starts or ends: nodes on one line, and the axis in which they lie one behind the other. */
export interface Target {
  readonly nodes: readonly number[]
  readonly axis: 0 | 1
}

/** One way of stepping over the lattice. */
export interface Stepping {
  /** 2: only every second line, which keeps the usual distance; 1: every line. */
  readonly step: 1 | 2
  /** Extra cost of lying on another conductor; undefined: never. */
  readonly over?: (node: number) => number
  /** Only ways that cost less than this. */
  readonly below?: number
}

/** A way as nodes at its corners with both ends, and what it costs. */
export interface Way {
  readonly corners: number[]
  readonly cost: number
}

/**
 * Cheapest way from a start to a goal; null: there is none. A* over (node, axis) with a queue of buckets, costs
 * being small whole numbers; the estimate is the distance and the fewest bends. The latest of equals goes first, so
 * the answer is deterministic.
 * Source: P. Hart, N. Nilsson, B. Raphael 1968; R. Dial, "Algorithm 360: shortest-path forest", 1969.
 */
export function search(
  f: Finder,
  start: Target,
  goal: Target,
  { step, over, below = 1 << 30 }: Stepping,
): Way | null {
  const { lattice, scratch } = f
  const { states, queue: q } = scratch
  const { cols, bits, toll } = lattice
  const round = ++scratch.round
  const { c1, c2, r1, r2 } = bounds(lattice, goal.nodes)
  const goalAxis = goal.axis
  /** A goal of several nodes is met from the side or at its end; one of a single node is met in its axis. */
  const bendsAside = goal.nodes.length === 1 ? 2 * BEND : BEND
  const bendsAcross = goal.nodes.length === 1 ? BEND : 0
  const lastGoal = goal.nodes.at(-1)!
  const own = new Set([...start.nodes, ...goal.nodes])

  /** Never more than the rest of the way costs. */
  const rest = (c: number, r: number, axis: number): number => {
    const dx = c < c1 ? c1 - c : c > c2 ? c - c2 : 0
    const dy = r < r1 ? r1 - r : r > r2 ? r - r2 : 0
    const bends =
      axis !== goalAxis && bendsAcross > 0 ? bendsAcross : (axis === 0 ? dy : dx) > 0 ? bendsAside : 0
    return (dx + dy) * STEP + bends
  }

  let base = Number.POSITIVE_INFINITY
  let top = -1
  let used = 0
  const push = (state: number, from: number, g: number, estimate: number): void => {
    states[3 * state] = round
    states[3 * state + 1] = g
    states[3 * state + 2] = from
    const bucket = estimate - base
    if (bucket > top) {
      if (bucket >= q.heads.length) q.heads = grown(q.heads, bucket + 1)
      q.heads.fill(-1, top + 1, bucket + 1)
      top = bucket
    }
    if (used === q.next.length) {
      q.next = grown(q.next, used + 1)
      q.state = grown(q.state, used + 1)
    }
    q.next[used] = q.heads[bucket]!
    q.state[used] = state
    q.heads[bucket] = used++
  }

  const starts = start.nodes.flatMap((node, i) => {
    const g = i * 2 * STEP
    const [c, r] = [node % cols, Math.floor(node / cols)]
    const aside = {
      state: 2 * node + 1 - start.axis,
      g: g + BEND,
      estimate: g + BEND + rest(c, r, 1 - start.axis),
    }
    const straight = { state: 2 * node + start.axis, g, estimate: g + rest(c, r, start.axis) }
    return i === start.nodes.length - 1 ? [aside, straight] : [aside]
  })
  for (const s of starts) base = Math.min(base, s.estimate)
  for (const s of starts) push(s.state, -1, s.g, s.estimate)

  for (let bucket = 0; bucket <= top; bucket++) {
    for (let entry = q.heads[bucket]!; entry >= 0; entry = q.heads[bucket]!) {
      q.heads[bucket] = q.next[entry]!
      const state = q.state[entry]!
      const axis = state & 1
      const node = state >> 1
      const g = states[3 * state + 1]!
      const r = (node / cols) | 0
      const c = node - r * cols
      if (g + rest(c, r, axis) - base < bucket) continue
      const here = bits[node]!
      if ((here & STUB) !== 0 || node === lastGoal) {
        const isStraight = axis === goalAxis
        if (isStraight ? node === lastGoal : goal.nodes.includes(node))
          return { corners: trace(f, state), cost: isStraight ? g : g + BEND }
      }
      const stride = axis === 0 ? 1 : cols
      const along = axis === 0 ? LEVEL : UPRIGHT
      const across = axis === 0 ? UPRIGHT : LEVEL
      const price = toll[axis]!
      // Both ways along the line; going back is never cheaper than having come.
      for (let sign = -1; sign <= 1; sign += 2) {
        let to = node
        let h = g
        for (let k = 0; k < step && h >= 0; k++) {
          to += sign * stride
          const b = bits[to]!
          h += price[to]!
          if ((b & (WALL | STUB | CORNER | along)) !== 0) {
            if ((b & WALL) !== 0) h = -1
            else if (!own.has(to)) h = over && (b & STUB) === 0 ? h + over(to) : -1
          } else if ((b & across) !== 0) h += CROSS
        }
        const next = 2 * to + axis
        if (h < 0 || (states[3 * next] === round && states[3 * next + 1]! <= h)) continue
        const by = sign * step
        const estimate = h + (axis === 0 ? rest(c + by, r, 0) : rest(c, r + by, 1))
        if (estimate < below) push(next, state, h, estimate)
      }
      if (states[3 * state + 2] === -1 || (here & STUB) !== 0) continue
      const isTaken = (here & (CORNER | LEVEL | UPRIGHT)) !== 0
      if (isTaken && !over) continue
      const turned = isTaken && over ? g + BEND + over(node) : g + BEND
      const other = state ^ 1
      if (states[3 * other] === round && states[3 * other + 1]! <= turned) continue
      const estimate = turned + rest(c, r, 1 - axis)
      if (estimate < below) push(other, state, turned, estimate)
    }
  }
  return null
}

function bounds(l: Lattice, nodes: readonly number[]) {
  const cs = nodes.map((n) => n % l.cols)
  const rs = nodes.map((n) => Math.floor(n / l.cols))
  return { c1: Math.min(...cs), c2: Math.max(...cs), r1: Math.min(...rs), r2: Math.max(...rs) }
}

/** Corner nodes from the start to this state. */
function trace(f: Finder, state: number): number[] {
  const corners = [state >> 1]
  let axis = state & 1
  let at = state
  for (let up = f.scratch.states[3 * at + 2]!; up >= 0; up = f.scratch.states[3 * at + 2]!) {
    if ((up & 1) !== axis) {
      corners.push(up >> 1)
      axis = up & 1
    }
    at = up
  }
  if (corners.at(-1) !== at >> 1 || corners.length === 1) corners.push(at >> 1)
  return corners.reverse()
}
