import type { Blocks } from '../math/blocks'
import { addLeaving, type Bounds } from './bounds'
import type { MeshLoads } from './meshes'
import type { Prepared } from './prepare'

/**
 * A device with both terminals in one net needs no balance: its current goes from one terminal to the other
 * through every bridge and block between them, whatever else goes on. Cost: the distance to where the two meet.
 */
export function addLoop(p: Prepared, b: Blocks, device: number, into: Bounds, loads: MeshLoads): void {
  const positive = p.positive[device]!
  const negative = p.negative[device]!
  const low = p.min[device]!
  const high = p.max[device]!
  let meet = positive
  for (let w = negative; meet !== w; ) {
    if (b.rank[meet]! > b.rank[w]!) meet = b.top[meet]!
    else w = b.top[w]!
  }
  const lastIn = climb(positive, (v) => addLeaving(p, into, b.bridge[v]!, v, low, high))
  const lastOut = climb(negative, (v) => addLeaving(p, into, b.bridge[v]!, v, -high, -low))
  if (lastIn !== -1 && lastOut !== -1 && b.above[lastIn] === b.above[lastOut])
    loads.addLoop(b.above[lastIn]!, lastIn, lastOut, low, high)
  else {
    if (lastIn !== -1) loads.addLoop(b.above[lastIn]!, lastIn, meet, low, high)
    if (lastOut !== -1) loads.addLoop(b.above[lastOut]!, meet, lastOut, low, high)
  }

  /** Up to where the two meet; the joint below it in a block is left for the caller and returned, −1 if none. */
  function climb(from: number, bridge: (v: number) => void): number {
    for (let v = from; v !== meet; v = b.top[v]!) {
      const block = b.above[v]!
      if (block === -1) bridge(v)
      else if (b.top[v] === meet) return v
      else if (from === positive) loads.addLoop(block, v, b.top[v]!, low, high)
      else loads.addLoop(block, b.top[v]!, v, low, high)
    }
    return -1
  }
}
