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
}

/** Scratch of a search, made once for a lattice. A state is 2 × node + axis of travel. */
export interface Finder {
  readonly lattice: Lattice
  readonly cost: Int32Array
  readonly parent: Int32Array
  readonly seen: Int32Array
  round: number
  readonly queue: Queue
}

interface Queue {
  heads: Int32Array
  next: Int32Array
  state: Int32Array
}

export function finderOf(lattice: Lattice): Finder {
  const n = 2 * lattice.cols * lattice.rows
  return {
    lattice,
    cost: new Int32Array(n),
    parent: new Int32Array(n),
    seen: new Int32Array(n),
    round: 0,
    queue: { heads: new Int32Array(1024), next: new Int32Array(8192), state: new Int32Array(8192) },
  }
}

/**
 * Cheapest way from a start to a goal, as nodes at its corners with both ends, and its cost; null: there is none.
 * A* over (node, axis) with a queue of buckets, costs being small whole numbers; the estimate is the distance and
 * the fewest bends. The latest of equals goes first, so the answer is deterministic.
 * Source: P. Hart, N. Nilsson, B. Raphael 1968; R. Dial, "Algorithm 360: shortest-path forest", 1969.
 */
export function search(
  f: Finder,
  start: Target,
  goal: Target,
  stepping: Stepping,
): { corners: number[]; cost: number } | null {
  const { lattice, cost, parent, seen } = f
  const { cols, bits, toll } = lattice
  const { step, over } = stepping
  const round = ++f.round
  const q = f.queue
  const cut = bounds(lattice, goal.nodes)
  const goalAxis = goal.axis
  const open = new Set(goal.nodes)
  const lastGoal = goal.nodes.at(-1)!
  const free = new Set([...start.nodes, ...goal.nodes])

  /** Never more than the rest of the way costs. */
  const rest = (node: number, axis: number): number => {
    const c = node % cols
    const r = (node - c) / cols
    const dx = c < cut.c1 ? cut.c1 - c : c > cut.c2 ? c - cut.c2 : 0
    const dy = r < cut.r1 ? cut.r1 - r : r > cut.r2 ? r - cut.r2 : 0
    const aside = axis === 0 ? dy : dx
    const bends = cut.single ? (axis !== goalAxis ? 1 : aside > 0 ? 2 : 0) : aside > 0 ? 1 : 0
    return (dx + dy) * STEP + bends * BEND
  }

  let base = -1
  let top = -1
  let used = 0
  const push = (state: number, from: number, g: number): void => {
    if (seen[state] === round && cost[state]! <= g) return
    seen[state] = round
    cost[state] = g
    parent[state] = from
    const estimate = g + rest(state >> 1, state & 1)
    if (base < 0) base = estimate
    const bucket = estimate > base ? estimate - base : 0
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

  const starts = start.nodes.map((node, i) => ({ node, g: i * 2 * STEP, last: i === start.nodes.length - 1 }))
  const first = Math.min(
    ...starts.map((s) => s.g + rest(s.node, start.axis)),
    ...starts.map((s) => s.g + rest(s.node, 1 - start.axis)),
  )
  base = first
  for (const { node, g, last } of starts) {
    if (last) push(2 * node + start.axis, -1, g)
    push(2 * node + (1 - start.axis), -1, g + BEND)
  }

  for (let bucket = 0; bucket <= top; bucket++) {
    for (let entry = q.heads[bucket]!; entry >= 0; entry = q.heads[bucket]!) {
      q.heads[bucket] = q.next[entry]!
      const state = q.state[entry]!
      const axis = state & 1
      const node = state >> 1
      const g = cost[state]!
      if (g + rest(node, axis) - base < bucket) continue
      if (open.has(node)) {
        const straight = axis === goalAxis
        if (straight && node === lastGoal) return { corners: trace(f, state), cost: g }
        if (!straight) return { corners: trace(f, state), cost: g + BEND }
      }
      const isStart = parent[state] === -1
      const stride = axis === 0 ? 1 : cols
      const along = axis === 0 ? LEVEL : UPRIGHT
      const across = axis === 0 ? UPRIGHT : LEVEL
      const price = toll[axis]!
      // Both ways along the line; going back is never cheaper than having come.
      for (let sign = -1; sign <= 1; sign += 2) {
        let to = node
        let h = g
        for (let k = 0; k < step; k++) {
          to += sign * stride
          const b = bits[to]!
          h += price[to]!
          if ((b & (WALL | STUB | CORNER | along)) !== 0) {
            if ((b & WALL) !== 0 || ((b & STUB) !== 0 && !free.has(to))) {
              h = -1
              break
            }
            if ((b & (CORNER | along)) !== 0) {
              if (!over) {
                h = -1
                break
              }
              h += over(to)
            }
          }
          if ((b & across) !== 0 && (b & CORNER) === 0) h += CROSS
        }
        if (h >= 0) push(2 * to + axis, state, h)
      }
      const here = bits[node]!
      if (!isStart && (here & (STUB | CORNER | LEVEL | UPRIGHT)) === 0) push(state ^ 1, state, g + BEND)
      else if (!isStart && over && (here & STUB) === 0) push(state ^ 1, state, g + BEND + over(node))
    }
  }
  return null
}

function grown(a: Int32Array, least: number): Int32Array {
  const bigger = new Int32Array(Math.max(least, 2 * a.length))
  bigger.set(a)
  return bigger
}

function bounds(l: Lattice, nodes: readonly number[]) {
  const cs = nodes.map((n) => n % l.cols)
  const rs = nodes.map((n) => Math.floor(n / l.cols))
  return {
    c1: Math.min(...cs),
    c2: Math.max(...cs),
    r1: Math.min(...rs),
    r2: Math.max(...rs),
    single: nodes.length === 1,
  }
}

/** Corner nodes from the start to this state. */
function trace(f: Finder, state: number): number[] {
  const corners = [state >> 1]
  let axis = state & 1
  let at = state
  for (let up = f.parent[at]!; up >= 0; up = f.parent[at]!) {
    if ((up & 1) !== axis) {
      corners.push(up >> 1)
      axis = up & 1
    }
    at = up
  }
  if (corners.at(-1) !== at >> 1 || corners.length === 1) corners.push(at >> 1)
  return corners.reverse()
}
