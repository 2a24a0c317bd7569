import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../engine/calc/form'
import { Random } from './random'

/**
 * A large design of everyday shape with about as many branches as asked for: two batteries behind fuses on a pair
 * of bars, tiers of fuse blocks, each load fed through its fuse and returned to a bar, a few arrays on nets of
 * their own. Mostly radial; one feed in twenty is a pair of parallel conductors, one return bar in four has a
 * chassis path beside its conductor, and neighbouring bars are joined into rings now and then.
 */
export function vehicle(seed: number, branchCount: number): NetworkForm {
  const r = new Random(seed)
  const nodes: string[] = []
  const branches: NetworkBranch[] = []
  const devices: NetworkDevice[] = []
  const node = (): string => {
    nodes.push(`n${nodes.length}`)
    return nodes[nodes.length - 1]!
  }
  const join = (from: string, to: string, ohms: number, rating?: number): void => {
    branches.push({
      id: `w${branches.length}`,
      from,
      to,
      resistance: ohms,
      ...(rating === undefined
        ? { kind: 'conductor', ampacity: 2 * r.whole(10, 100) }
        : { kind: 'fuse', rating }),
    })
  }
  const device = (positive: string, negative: string, min: number, max: number, battery = false): void => {
    devices.push({
      id: `d${devices.length}`,
      positive,
      negative,
      min,
      max,
      sustainedFault: battery ? 'unlimited' : max,
      ...(battery ? { emf: 12.8, internalResistance: 0.003 } : {}),
    })
  }
  const copper = (): number => r.between(0.0005, 0.05)

  const positiveBar = node()
  const negativeBar = node()
  const chassis = node()
  join(negativeBar, chassis, 0.0002)
  for (let i = 0; i < 2; i++) {
    const post = node()
    const fused = node()
    const minus = node()
    join(post, fused, 0.0003)
    join(fused, positiveBar, 0.0001, 300)
    join(minus, negativeBar, 0.0003)
    device(post, minus, -100, 200, true)
  }
  let feed = positiveBar
  let back = negativeBar
  while (branches.length < branchCount) {
    const block = node()
    const bar = node()
    const nearby = r.chance(0.3) ? positiveBar : feed
    join(nearby, block, copper(), 80)
    join(bar, nearby === positiveBar ? negativeBar : back, copper())
    if (r.chance(0.25)) join(bar, chassis, r.between(0.001, 0.02))
    if (r.chance(0.1)) join(block, positiveBar, copper(), 80)
    for (let ways = r.whole(4, 12); ways > 0 && branches.length < branchCount; ways--) {
      const way = node()
      const plus = node()
      const minus = node()
      join(block, way, 0.001, r.pick([5, 10, 15, 20]))
      join(way, plus, copper())
      if (r.chance(0.05)) join(way, plus, copper())
      join(minus, bar, copper())
      device(plus, minus, -r.whole(1, 15), 0)
    }
    if (r.chance(0.15)) {
      const panel = node()
      const controller = node()
      const output = node()
      join(panel, controller, copper())
      join(output, block, copper(), 30)
      device(panel, bar, 0, r.whole(5, 12))
      device(controller, bar, -20, 0)
      device(output, bar, 0, r.whole(10, 30))
    }
    feed = block
    back = bar
    if (r.chance(0.5)) {
      feed = positiveBar
      back = negativeBar
    }
  }
  return { nodes, branches, devices }
}
