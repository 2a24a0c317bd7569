import { type Lattice, nodeAt, PITCH, STUB, WALL } from './lattice'
import type { RoutePort, RouteRequest } from './request'

/** A terminal on the lattice: the node on the edge of its box and the stub that leads away from it. */
export interface Terminal {
  readonly key: string
  readonly port: RoutePort
  readonly node: number
  /** Step away from the box, in nodes. */
  readonly out: number
  /** 0: leaves level, 1: upright. */
  readonly axis: 0 | 1
  /** More than one conductor ends here. */
  readonly isShared: boolean
  /** Nodes where a conductor may leave the stub, nearest first; empty: walled in. */
  readonly exits: readonly number[]
}

/** Length of a stub in nodes, and of each piece it is lengthened by where many conductors share it. */
const STUB_NODES = 2
/** One exit serves three ways: straight on and to both sides; each further one two more. */
const exitsFor = (conductors: number): number => Math.max(1, Math.ceil((conductors - 1) / 2))

export const terminalKey = (p: RoutePort): string => `${p.x} ${p.y} ${p.side}`

/**
 * Terminals of all requests by key, their stubs reserved. First every terminal gets its own stub, then those with
 * many conductors are lengthened, so that no terminal is shut in by its neighbour's long stub.
 */
export function reserveTerminals(l: Lattice, requests: readonly RouteRequest[]): Map<string, Terminal> {
  const counts = new Map<string, { port: RoutePort; conductors: number }>()
  for (const { from, to } of requests)
    for (const port of [from, to]) {
      const key = terminalKey(port)
      const seen = counts.get(key)
      if (seen) seen.conductors++
      else counts.set(key, { port, conductors: 1 })
    }
  const terminals = new Map<string, Terminal & { exits: number[] }>()
  for (const [key, { port, conductors }] of counts) {
    const node = nodeOf(l, port)
    const axis = port.side === 'left' || port.side === 'right' ? 0 : 1
    const out = (port.side === 'left' || port.side === 'up' ? -1 : 1) * (axis === 0 ? 1 : l.cols)
    terminals.set(key, { key, port, node, out, axis, isShared: conductors > 1, exits: [] })
  }
  for (const t of terminals.values()) {
    let reach = 0
    while (reach < STUB_NODES && isFree(l, t.node + (reach + 1) * t.out)) reach++
    if (reach === 0) continue
    for (let i = 1; i <= reach; i++) l.bits[t.node + i * t.out]! |= STUB
    t.exits.push(t.node + reach * t.out)
  }
  for (const t of terminals.values()) {
    const wanted = exitsFor(counts.get(t.key)!.conductors)
    while (t.exits.length > 0 && t.exits.length < wanted) {
      const last = t.exits.at(-1)!
      if (!isFree(l, last + t.out) || !isFree(l, last + 2 * t.out)) break
      l.bits[last + t.out]! |= STUB
      l.bits[last + 2 * t.out]! |= STUB
      t.exits.push(last + 2 * t.out)
    }
  }
  return terminals
}

/** The node of a port; of one that stands beside the lattice the next one outwards, where the stub begins. */
function nodeOf(l: Lattice, { x, y, side }: RoutePort): number {
  const outwards = (mm: number, from: number, isOut: boolean, isBack: boolean): number => {
    const steps = (mm - from) / PITCH
    return from + PITCH * (isOut ? Math.ceil(steps - 1e-6) : isBack ? Math.floor(steps + 1e-6) : steps)
  }
  return nodeAt(
    l,
    outwards(x, l.left, side === 'right', side === 'left'),
    outwards(y, l.top, side === 'down', side === 'up'),
  )
}

const isFree = (l: Lattice, node: number): boolean => (l.bits[node]! & (WALL | STUB)) === 0
