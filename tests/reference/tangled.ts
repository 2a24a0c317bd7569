import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../engine/calc/form'
import type { MaybeUnlimited } from '../../engine/units'
import { Random } from './random'

/**
 * A network that no workshop would build: two to eight meshed nets, and devices between any two nodes at all, so
 * that nets form rings of every kind. 1e-6, 10 and anything between in ohms. Half of the seeds have bounds of
 * 0.001 to 10,000 A, all stated; the others 1 to 100 A, one in seven unlimited.
 */
export function tangledNetwork(seed: number): NetworkForm {
  const r = new Random(seed)
  const nodes: string[] = []
  const branches: NetworkBranch[] = []
  const branch = (from: string, to: string): void => {
    const resistance = r.chance(0.3) ? 1e-6 : r.chance(0.3) ? 10 : 10 ** r.between(-6, 1)
    branches.push({ id: `w${branches.length}`, from, to, resistance, kind: 'conductor' })
  }
  const nets = Array.from({ length: r.whole(2, 8) }, (_, k) => {
    const net = Array.from({ length: r.whole(1, 8) }, (_, i) => `${k}.${i}`)
    nodes.push(...net)
    for (let i = 1; i < net.length; i++) branch(net[r.whole(0, i - 1)]!, net[i]!)
    for (let i = r.whole(0, net.length); i > 0; i--) branch(r.pick(net), r.pick(net))
    return net
  })
  const wide = r.chance(0.5)
  const bound = (): MaybeUnlimited => {
    if (!wide && r.chance(0.15)) return 'unlimited'
    if (r.chance(0.3)) return 0
    return wide ? 10 ** r.between(-3, 4) : r.whole(1, 100)
  }
  const devices: NetworkDevice[] = []
  for (let k = r.whole(3, 18); k > 0; k--) {
    const low = bound()
    devices.push({
      id: `d${devices.length}`,
      positive: r.pick(r.pick(nets)),
      negative: r.pick(r.pick(nets)),
      min: low === 'unlimited' ? low : 0 - low,
      max: bound(),
      sustainedFault: 0,
    })
  }
  return { nodes, branches, devices }
}
