import type { Lattice } from './lattice'

/** What a search works in. A state is 2 × node + axis of travel. */
export interface Finder {
  readonly lattice: Lattice
  readonly scratch: Scratch
}

export interface Scratch {
  /** Three numbers a state, side by side: the round that saw it last, its cost, the state it was reached from. */
  readonly states: Int32Array
  round: number
  readonly queue: Queue
}

/** Buckets of states by estimate, each a chain of entries. */
export interface Queue {
  heads: Int32Array
  next: Int32Array
  state: Int32Array
}

const LAST_ROUND = 1 << 30
/** Kept from one lattice to the next of the same size, since making it is dear; what is in it never matters. */
let spare: Scratch | null = null

export function finderOf(lattice: Lattice): Finder {
  const size = 6 * lattice.cols * lattice.rows
  if (spare?.states.length !== size || spare.round > LAST_ROUND)
    spare = {
      states: new Int32Array(size),
      round: 0,
      queue: { heads: new Int32Array(1024), next: new Int32Array(8192), state: new Int32Array(8192) },
    }
  return { lattice, scratch: spare }
}

/** A copy with at least this length, its end still 0. */
export function grown(a: Int32Array, least: number): Int32Array {
  const bigger = new Int32Array(Math.max(least, 2 * a.length))
  bigger.set(a)
  return bigger
}
