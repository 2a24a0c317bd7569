import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../engine/calc/form'
import { Random } from './random'

/** A network form put together in one expression. A branch whose name starts with `shunt` is one. */
export class Sketch {
  readonly nodes = new Set<string>()
  readonly branches: NetworkBranch[] = []
  readonly devices: NetworkDevice[] = []

  wire(from: string, to: string, resistance = 0.01, id = `${from} ${to}`): this {
    this.nodes.add(from).add(to)
    this.branches.push({ id, from, to, resistance, kind: id.startsWith('shunt') ? 'shunt' : 'conductor' })
    return this
  }

  device(id: string, positive: string, negative: string, min: number, max: number, emf?: number): this {
    this.nodes.add(positive).add(negative)
    this.devices.push({
      id,
      positive,
      negative,
      min,
      max,
      sustainedFault: 0,
      ...(emf ? { emf, internalResistance: 0.01 } : {}),
    })
    return this
  }

  form(): NetworkForm {
    return { nodes: [...this.nodes], branches: this.branches, devices: this.devices }
  }
}

/** Two to four nets of random shape, devices of all natures between and inside them; one branch is the shunt. */
export function scrambled(seed: number): NetworkForm {
  const random = new Random(seed)
  const upTo = (n: number): number => random.whole(0, n - 1)
  const sketch = new Sketch()
  const nets: string[][] = []
  for (let k = random.whole(2, 4); k > 0; k--) {
    const net = Array.from({ length: random.whole(2, 7) }, (_, i) => `${nets.length}.${i}`)
    const wire = (u: number, v: number): void => {
      const id = `w${sketch.branches.length}`
      sketch.wire(net[u]!, net[v]!, 10 ** random.between(-3, 0), id)
    }
    for (let i = 1; i < net.length; i++) wire(i, upTo(i))
    for (let i = random.whole(0, 2); i > 0; i--) wire(upTo(net.length), upTo(net.length))
    nets.push(net)
  }
  const first = sketch.branches.findIndex((b) => b.from !== b.to)
  sketch.branches[first] = { ...sketch.branches[first]!, id: 'shunt', kind: 'shunt' }
  const node = (net: string[]): string => random.pick(net)
  const bound = (): number => (random.chance(0.3) ? 0 : random.whole(0, 90))
  for (let i = random.whole(4, 11); i > 0; i--) {
    const low = upTo(nets.length)
    const high = random.chance(0.1) ? low : (low + 1 + upTo(nets.length - 1)) % nets.length
    const battery = random.chance(0.3)
    sketch.device(`d${i}`, node(nets[high]!), node(nets[low]!), -bound(), bound(), battery ? 12 : undefined)
  }
  const { nodes, branches, devices } = sketch.form()
  return {
    nodes,
    branches,
    devices: devices.map((d) =>
      d.emf && random.chance(0.4) ? { ...d, max: 'unlimited', min: 'unlimited' } : d,
    ),
  }
}
