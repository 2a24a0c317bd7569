import { components } from '../math/components'
import { graphOf } from '../math/graph'
import type { Prepared } from './prepare'

/**
 * Nodes that conduct to each other through branches and through the devices named as conducting, in groups.
 * Voltages are known within a group only; each is counted from the group's reference node.
 */
export interface Galvanic {
  /** Group of each node. */
  readonly of: Int32Array
  readonly count: number
  /** Node of each group from which its voltages are counted. */
  readonly reference: Int32Array
  /** 1 where a battery lies in the group. */
  readonly hasBattery: Uint8Array
}

export const isBattery = (p: Prepared, device: number): boolean => p.form.devices[device]!.emf !== undefined

/**
 * The reference is the negative terminal of the first battery that stands on the lowest net of its group (a net
 * that is no battery's positive side); in a group without one, that of the first device that holds a voltage, or
 * else its first node. O(nodes + branches + devices).
 */
export function galvanic(
  p: Prepared,
  conducts: (device: number) => boolean,
  holds: (device: number) => boolean = () => false,
): Galvanic {
  const tail = Array.from(p.graph.tail)
  const head = Array.from(p.graph.head)
  const isAbove = new Uint8Array(p.netCount)
  p.form.devices.forEach((_, d) => {
    if (conducts(d)) {
      tail.push(p.positive[d]!)
      head.push(p.negative[d]!)
    }
    if (isBattery(p, d) && p.net[p.positive[d]!] !== p.net[p.negative[d]!])
      isAbove[p.net[p.positive[d]!]!] = 1
  })
  const n = p.graph.vertexCount
  const { of, count } = components(graphOf(n, Int32Array.from(tail), Int32Array.from(head)))
  const reference = new Int32Array(count).fill(-1)
  const hasBattery = new Uint8Array(count)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    const low = p.negative[d]!
    hasBattery[of[low]!] = 1
    hasBattery[of[p.positive[d]!]!] = 1
    if (reference[of[low]!] === -1 && !isAbove[p.net[low]!]) reference[of[low]!] = low
  })
  p.form.devices.forEach((_, d) => {
    const low = p.negative[d]!
    if (holds(d) && reference[of[low]!] === -1) reference[of[low]!] = low
  })
  for (let v = 0; v < n; v++) if (reference[of[v]!] === -1) reference[of[v]!] = v
  return { of, count, reference, hasBattery }
}
