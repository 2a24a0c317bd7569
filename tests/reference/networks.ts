import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../engine/calc/form'
import type { MaybeUnlimited } from '../../engine/units'
import { Random } from './random'

export interface NetworkOptions {
  /** Most nodes in one net as first laid out; fused batteries add to it. Default 7. */
  readonly nodesPerNet?: number
  /** How often a bound is 'unlimited', 0..1. Default: none in half of the networks, 0.15 in the others. */
  readonly unlimited?: number
  /** Should nets that hang in a cycle (series batteries with taps) be allowed? Default true. */
  readonly cycles?: boolean
  /** Should devices with both terminals in one net, and reversed ones, be allowed? Default true. */
  readonly odd?: boolean
}

/** Names that trip maps made of plain objects. */
const AWKWARD = ['__proto__', '10', 'constructor', '2', 'toString', 'hasOwnProperty', '1e3', 'ö–7']
const STANDARD_RATINGS_A = [5, 10, 15, 20, 30, 50, 80, 100, 150, 200, 300]

/**
 * A random network, the same for the same seed. Taken together the seeds hit: parallel batteries each with its
 * own fuse, parallel and identical conductors, rings, several nets, series batteries with and without taps, a
 * shared negative, converters across nets, cycles of nets, nets that hold device negatives, floating parts, nets
 * without devices, 1e-6 to 10 Ω, self-loops, both terminals in one net, reversed and unlimited devices.
 */
export function randomNetwork(seed: number, options: NetworkOptions = {}): NetworkForm {
  return new Builder(new Random(seed), options).build()
}

class Builder {
  private readonly nodes: string[] = []
  private readonly branches: NetworkBranch[] = []
  private readonly devices: NetworkDevice[] = []
  private readonly unlimited: number
  private readonly odd: boolean
  /** 0: 1e-6 to 10 Ω; 1: milliohms; 2: all the same. */
  private readonly copper: number

  constructor(
    private readonly random: Random,
    private readonly options: NetworkOptions,
  ) {
    this.unlimited = options.unlimited ?? (random.chance(0.5) ? 0 : 0.15)
    this.odd = options.odd ?? true
    this.copper = random.pick([0, 0, 1, 2])
  }

  build(): NetworkForm {
    const r = this.random
    const negative = this.net()
    const house = this.net()
    this.batteries(house, negative)
    this.consumers(house, negative)
    if (r.chance(0.4)) this.series(house, negative)
    if (r.chance(0.4)) this.starter(house, negative)
    if (r.chance(0.4)) this.array(house, negative)
    if (r.chance(0.25)) this.floating()
    if (r.chance(0.25)) this.net()
    if (this.odd) this.oddities(house, negative)
    return { nodes: this.nodes, branches: this.branches, devices: this.devices }
  }

  /** A connected net: a random tree, then rings, parallel and identical conductors, self-loops. */
  private net(): string[] {
    const r = this.random
    const count = r.whole(1, this.options.nodesPerNet ?? 7)
    const net = Array.from({ length: count }, () => this.node())
    const chain = r.unit()
    for (let i = 1; i < count; i++) this.branch(net[r.chance(chain) ? i - 1 : r.whole(0, i - 1)]!, net[i]!)
    const meshes = r.chance(0.3) ? 0 : r.whole(0, Math.ceil(count / 2))
    for (let i = 0; i < meshes; i++) this.branch(r.pick(net), r.pick(net))
    if (r.chance(0.2)) this.branch(net[0]!, net[0]!)
    if (r.chance(0.4) && this.branches.length > 0) {
      const twin = r.pick(this.branches)
      const id = this.name('w', this.branches.length)
      this.branches.push(
        r.chance(0.5)
          ? { ...twin, id }
          : { ...twin, id, from: twin.to, to: twin.from, resistance: this.ohms() },
      )
    }
    return net
  }

  /** Batteries side by side, each behind a fuse of its own. */
  private batteries(positive: string[], negative: readonly string[]): void {
    const count = this.random.whole(0, 3)
    for (let i = 0; i < count; i++) this.battery(this.behindFuse(positive), this.random.pick(negative))
  }

  private consumers(positive: string[], negative: readonly string[]): void {
    const r = this.random
    for (let i = r.whole(1, 5); i > 0; i--)
      this.device(
        r.chance(0.4) ? this.behindFuse(positive) : r.pick(positive),
        r.pick(negative),
        this.bound(60),
        0,
      )
    for (let i = r.whole(0, 2); i > 0; i--)
      this.device(r.pick(positive), r.pick(negative), r.chance(0.3) ? this.bound(120) : 0, this.bound(90))
  }

  /** A bank on top of the first; loads across both, and with taps on the middle the nets form a cycle. */
  private series(house: string[], negative: readonly string[]): void {
    const r = this.random
    const upper = this.net()
    for (let i = r.whole(1, 2); i > 0; i--) this.battery(this.behindFuse(upper), r.pick(house))
    if (r.chance(0.5)) this.device(r.pick(upper), r.pick(house), this.bound(40), this.bound(20))
    if (this.options.cycles === false || r.chance(0.2)) return
    for (let i = r.whole(1, 3); i > 0; i--)
      this.device(r.pick(upper), r.pick(negative), this.bound(60), r.chance(0.3) ? this.bound(30) : 0)
    if (r.chance(0.3)) {
      const top = this.net()
      this.battery(r.pick(top), r.pick(upper))
      this.device(r.pick(top), r.pick(negative), this.bound(50), 0)
    }
  }

  /** A second circuit on the same negative, joined by a converter: input here, output there. */
  private starter(house: readonly string[], negative: readonly string[]): void {
    const r = this.random
    const starting = this.net()
    this.battery(this.behindFuse(starting), r.pick(negative))
    this.device(r.pick(starting), r.pick(negative), 0, this.bound(150))
    this.device(r.pick(starting), r.pick(negative), this.bound(40), 0)
    this.device(r.pick(house), r.pick(negative), 0, this.bound(40))
  }

  private array(house: readonly string[], negative: readonly string[]): void {
    const r = this.random
    const panels = this.net()
    const common = r.chance(0.7) ? negative : this.net()
    for (let i = r.whole(1, 3); i > 0; i--) this.device(r.pick(panels), r.pick(common), 0, this.bound(12))
    this.device(r.pick(panels), r.pick(common), this.bound(25), 0)
    this.device(r.pick(house), r.pick(negative), 0, this.bound(35))
  }

  private floating(): void {
    const high = this.net()
    const low = this.net()
    this.device(this.random.pick(high), this.random.pick(low), this.bound(30), this.bound(30))
    this.device(this.random.pick(high), this.random.pick(low), this.bound(30), 0)
  }

  private oddities(house: readonly string[], negative: readonly string[]): void {
    const r = this.random
    if (r.chance(0.25)) this.device(r.pick(house), r.pick(house), this.bound(20), this.bound(20))
    if (r.chance(0.15)) this.device(r.pick(negative), r.pick(negative), this.bound(20), this.bound(20))
    if (r.chance(0.25)) this.device(r.pick(negative), r.pick(house), this.bound(50), this.bound(50))
    if (r.chance(0.1)) this.device(r.pick(negative), r.pick(house), 0, 0)
  }

  private behindFuse(net: string[]): string {
    const inner = this.node()
    const at = this.random.pick(net)
    this.branch(inner, at, 'fuse')
    net.push(inner)
    return inner
  }

  private battery(positive: string, negative: string): void {
    this.device(positive, negative, this.bound(150), this.bound(250), true)
  }

  private device(
    positive: string,
    negative: string,
    low: MaybeUnlimited,
    high: MaybeUnlimited,
    battery = false,
  ): void {
    const r = this.random
    this.devices.push({
      id: this.name('d', this.devices.length),
      positive,
      negative,
      min: low === 'unlimited' ? low : -low || 0,
      max: high,
      sustainedFault: battery && r.chance(0.8) ? 'unlimited' : high,
      ...(battery
        ? { emf: r.pick([12.8, 13.2, 12.6]), internalResistance: r.pick([0.002, 0.004, 0.01]) }
        : {}),
    })
  }

  /** Most amps one way: round, so that ties and exact balances come up; now and then 0 or without limit. */
  private bound(most: number): MaybeUnlimited {
    const r = this.random
    if (r.chance(this.unlimited)) return 'unlimited'
    if (r.chance(0.1)) return 0
    return r.chance(0.5) ? r.whole(1, most) : Number(r.between(0.1, most).toFixed(3))
  }

  private branch(from: string, to: string, kind: 'fuse' | 'any' = 'any'): void {
    const r = this.random
    const is =
      kind === 'fuse' || r.chance(0.15)
        ? 'fuse'
        : r.pick(['conductor', 'conductor', 'conductor', 'contact', 'shunt'] as const)
    this.branches.push({
      id: this.name('w', this.branches.length),
      from,
      to,
      resistance: this.ohms(),
      kind: is,
      ...(is === 'fuse' ? { rating: r.pick(STANDARD_RATINGS_A) } : {}),
      ...(is === 'conductor' && r.chance(0.7) ? { ampacity: r.whole(10, 300) } : {}),
    })
  }

  private ohms(): number {
    if (this.copper === 2) return 0.01
    if (this.copper === 1) return this.random.between(0.0005, 0.02)
    return this.random.chance(0.2) ? 0.01 : 10 ** this.random.between(-6, 1)
  }

  private node(): string {
    const id = this.name('n', this.nodes.length)
    this.nodes.push(id)
    return id
  }

  /** Unique within its list, sometimes awkward. */
  private name(prefix: string, index: number): string {
    const awkward = AWKWARD[index]
    return awkward !== undefined && this.random.chance(0.3) ? awkward : `${prefix}${index}`
  }
}
