import type { NetworkBranch, NetworkDevice } from '../../../engine/calc/form'
import type { Operation } from '../../../engine/calc/operation'
import { Random } from '../random'
import type { Case } from './deck'

/**
 * An invented system, seeded: a bank (parallel or series), a bar, fuse ways with loads of all behaviours, a chassis
 * beside the wired returns, a second battery on the same chassis, a converter between the two, and an
 * array and its controller in a part that no battery reaches. `ways` sets the size.
 */
export function operatingCase(seed: number, ways: number): Case {
  const random = new Random(seed)
  const between = (low: number, high: number): number => random.between(low, high)
  const spread = (low: number, high: number): number => low * (high / low) ** random.unit()
  const nodes = new Set<string>()
  const branches: NetworkBranch[] = []
  const devices: NetworkDevice[] = []
  const operations: [string, Operation][] = []
  const join = (from: string, to: string, kind: NetworkBranch['kind'], low: number, high: number): void => {
    nodes.add(from).add(to)
    branches.push({ id: `w${branches.length}`, from, to, resistance: spread(low, high), kind })
  }
  const device = (id: string, positive: string, negative: string, operation?: Operation): void => {
    nodes.add(positive).add(negative)
    devices.push({ id, positive, negative, min: -1000, max: 1000, sustainedFault: 0 })
    if (operation) operations.push([id, operation])
  }
  const battery = (id: string, positive: string, negative: string, emf: number): void => {
    nodes.add(positive).add(negative)
    const internalResistance = spread(0.002, 0.02)
    devices.push({
      id,
      positive,
      negative,
      min: -100,
      max: 300,
      sustainedFault: 'unlimited',
      emf,
      internalResistance,
    })
  }

  const series = random.chance(0.4)
  const bank = random.whole(1, 3)
  for (let i = 0; i < bank; i++) {
    battery(`bank${i}`, `bank${i}+`, series ? `bank${i}m` : `bank${i}-`, between(12.6, 13.4))
    if (series) battery(`low${i}`, `bank${i}m`, `bank${i}-`, between(12.6, 13.4))
    join(`bank${i}+`, 'bar+', 'fuse', 2e-4, 2e-3)
    join(`bank${i}-`, 'bar-', 'conductor', 1e-4, 2e-3)
  }
  join('returns', 'bar-', 'shunt', 1e-4, 1e-3)
  join('bar-', 'chassis', 'conductor', 1e-4, 1e-2)
  for (let i = 0; i < ways; i++) {
    const block = `block${i % Math.max(1, Math.floor(ways / 12))}`
    if (!nodes.has(block)) join('bar+', block, 'conductor', 5e-4, 3e-3)
    join(block, `way${i}`, 'fuse', 1e-3, 1e-2)
    join(`way${i}`, `load${i}+`, 'conductor', 5e-3, 5e-2)
    join(`load${i}-`, random.chance(0.8) ? 'returns' : 'chassis', 'conductor', 5e-3, 5e-2)
    if (random.chance(0.15)) join(`load${i}-`, 'chassis', 'conductor', 1e-3, 1e-1)
    const kind = random.unit()
    const amps = spread(0.05, 300 / Math.max(12, ways))
    device(
      `load${i}`,
      `load${i}+`,
      `load${i}-`,
      kind < 0.4 ? { amps: -amps } : kind < 0.7 ? { watts: -12 * amps } : { ohms: 12 / amps },
    )
  }
  battery('starter', 'starter+', 'chassis', between(12.4, 12.8))
  join('starter+', 'alternator', 'conductor', 2e-4, 2e-3)
  device('charger/in', 'alternator', 'chassis')
  join('charger+', 'bar+', 'fuse', 1e-3, 5e-3)
  device(
    'charger/out',
    'charger+',
    'bar-',
    random.chance(0.5)
      ? { amps: between(5, 40), input: 'charger/in', efficiency: 0.9 }
      : { watts: between(60, 500), input: 'charger/in', efficiency: 0.93 },
  )
  const sun = between(1, 9)
  device('array', 'array+', 'array-', { amps: sun })
  join('array+', 'controller+', 'conductor', 5e-3, 5e-2)
  join('array-', 'controller-', 'conductor', 5e-3, 5e-2)
  device('controller/in', 'controller+', 'controller-', { amps: -sun })
  device('controller/out', 'bar+', 'bar-', { amps: sun * 1.4 })
  return {
    name: `operating point, seed ${seed}, ${ways} ways`,
    form: { nodes: [...nodes], branches, devices },
    operations,
    grounds: ['bank0-', 'array+', 'array-'],
  }
}

/** Ω: a bolted short circuit as the simulator can draw it. Ours has none, which makes 1e-4 or less of a difference. */
const SHORT_OHMS = 1e-7

/** The batteries of an operating case alone, with a short circuit drawn from a node to the first battery's negative. */
export function shortCase(
  seed: number,
  ways: number,
  node: string,
): { c: Case; ampsOf: (volts: readonly number[]) => number } {
  const { form, name, grounds } = operatingCase(seed, ways)
  const short: NetworkBranch = {
    id: 'short',
    from: node,
    to: 'bank0-',
    resistance: SHORT_OHMS,
    kind: 'conductor',
  }
  const devices = form.devices.filter((d) => d.emf !== undefined)
  return {
    c: {
      name: `${name}, short circuit at ${node}`,
      form: { ...form, devices, branches: [...form.branches, short] },
      operations: [],
      grounds,
    },
    ampsOf: (volts) => volts[form.nodes.indexOf(node)]! / SHORT_OHMS,
  }
}
