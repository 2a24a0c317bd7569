import type { Volts } from '../units'
import { chains, type Range } from './chains'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

export type MeterRole = 'battery' | 'load'

/** What a device is, by its bounds: a battery has an emf, a load never delivers, a source never draws. */
export type DeviceNature = 'battery' | 'load' | 'source' | 'two-way'

export function natureOf(p: Prepared, device: number): DeviceNature {
  if (isBattery(p, device)) return 'battery'
  if (!(p.max[device]! > 0)) return 'load'
  return p.min[device]! < 0 ? 'two-way' : 'source'
}

/** How one device's current passes the shunt. */
export interface Share {
  readonly device: number
  readonly nature: DeviceNature
  /**
   * Current through the shunt, positive from its `from` to its `to`, for each amp that the device draws (takes in
   * at its positive terminal), something else making up the balance. A range where it depends on what does; none
   * where nothing can. With `from` on the system's side of a shunt in the negative, a measured load has 1, and a
   * charger behind a battery shunt has 1 too: its current counts the other way because it draws less than nothing.
   */
  readonly range: Range | undefined
  /** What the shunt's role asks for; none for devices of other circuits, about which this shunt says nothing. */
  readonly expected: 0 | 1 | undefined
}

export interface MeterAnswer {
  readonly shunt: number
  readonly role: MeterRole
  /** Every device that is no battery. */
  readonly shares: readonly Share[]
  /** Most of what passes it passes it backwards. */
  readonly reversed: boolean
  /** Largest change of the reading for 1 A that one battery gives another beside it: above 0, batteries on both sides. */
  readonly betweenBatteries: number
  /** Highest sum of emfs that feeds a device of the circuit: what turns amps of error into watts. */
  readonly volts: Volts | undefined
  /** A of reading for each amp that a device delivers; means something only in sums that balance. */
  readonly reading: Float64Array
  /** A of what the reading should be for each amp that a device delivers. */
  readonly truth: Float64Array
}

/** Shares closer than this to each other are one. */
const CLOSE = 1e-9

/**
 * The circuit a shunt serves. In a negative that several circuits share, each positive net with what batteries join
 * to it is a circuit; the shunt serves the one whose devices pass the most through it (by what they may draw).
 * Whoever knows better names the devices: `MeterQuestion.members`.
 *
 * Load-side shunt: every load of the circuit must have share 1, and everything else of it 0: sources, and two-way
 * devices such as inverter-chargers, which belong on the other side. A converter is two devices: its input is
 * a load of the circuit that feeds it, its output a source of the circuit that it feeds.
 * Battery shunt: every load, source and two-way device of the circuit must have share 1.
 */
export interface MeterQuestion {
  readonly shunt: number
  /** Told from the sources where not given: a shunt that each of them passes as the loads do is a battery shunt. */
  readonly role?: MeterRole
  /** Devices of the circuit that the shunt serves. */
  readonly members?: ReadonlySet<number>
}

/**
 * Shares of all devices in one shunt. `coefficients`: current of a branch for 1 A that each device delivers, by
 * device, up to what balances (`EnvelopeResult.coefficients`). O(devices) after that.
 */
export function meter(
  p: Prepared,
  coefficients: (branch: number) => Float64Array,
  question: MeterQuestion,
): MeterAnswer {
  const { shunt } = question
  const net = p.net[p.graph.tail[shunt]!]!
  const reading = coefficients(shunt)
  const made = chains(p, reading)
  const found = p.form.devices.flatMap((_, device) => {
    if (isBattery(p, device)) return []
    const chain = made(device)
    const own = reading[device]!
    const range = chain && { from: tidy(chain.from - own), to: tidy(chain.to - own) }
    return [{ device, nature: natureOf(p, device), range }]
  })
  const circuit = circuits(p, net)
  const served = servedBy(p, found, circuit, question)
  const inCircuit = (device: number): boolean =>
    question.members ? question.members.has(device) : circuit(device) === served
  const role = question.role ?? roleOf(found.filter((s) => inCircuit(s.device)))
  const shares = found.map((s) => {
    if (!inCircuit(s.device)) return { ...s, expected: undefined }
    return { ...s, expected: role === 'battery' || s.nature === 'load' ? (1 as const) : (0 as const) }
  })
  return {
    shunt,
    role,
    shares,
    reversed:
      shares.reduce((sum, s) => (s.expected === undefined ? sum : sum + weight(p, s) * middle(s)), 0) < 0,
    betweenBatteries: tidy(exchange(p, reading)),
    volts: voltsOf(p, shares),
    reading,
    truth: truthOf(p, net, role, shares, (d) => circuit(d) === served),
  }
}

type Found = Omit<Share, 'expected'>

const tidy = (x: number): number => {
  const whole = Math.round(x)
  return Math.abs(x - whole) < CLOSE ? whole + 0 : x
}
const middle = (s: Found): number => (s.range ? (s.range.from + s.range.to) / 2 : 0)
/** What a device may draw or deliver; an unlimited one weighs as much as any other's thousandfold. */
const weight = (p: Prepared, s: Found): number =>
  Math.min(1e6, Math.max(-p.min[s.device]!, s.nature === 'load' ? 0 : p.max[s.device]!))

/** Number of the circuit of a device: that of its positive net, the shunt's own net being cut out of the battery graph. */
function circuits(p: Prepared, net: number): (device: number) => number {
  const parent = Int32Array.from({ length: p.netCount }, (_, i) => i)
  const root = (i: number): number => {
    let at = i
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!
      at = parent[at]!
    }
    return at
  }
  p.form.devices.forEach((_, d) => {
    const low = p.net[p.negative[d]!]!
    const high = p.net[p.positive[d]!]!
    if (isBattery(p, d) && low !== net && high !== net) parent[root(high)] = root(low)
  })
  return (d) => root(p.net[p.positive[d]!]!)
}

/** The circuit that passes the most through the shunt; where nothing passes, the one that may draw the most. */
function servedBy(
  p: Prepared,
  found: readonly Found[],
  circuit: (device: number) => number,
  question: MeterQuestion,
): number {
  const fed = new Set<number>()
  p.form.devices.forEach((_, d) => {
    if (isBattery(p, d)) fed.add(circuit(d))
  })
  const total = (size: (s: Found) => number): Map<number, number> => {
    const sums = new Map<number, number>()
    for (const s of found) {
      if (question.role === 'load' && s.nature !== 'load') continue
      const key = circuit(s.device)
      if (fed.has(key)) sums.set(key, (sums.get(key) ?? 0) + size(s) * weight(p, s))
    }
    return sums
  }
  const greatest = (sums: Map<number, number>): number | undefined =>
    [...sums].filter(([, sum]) => sum > 0).sort((x, y) => y[1] - x[1])[0]?.[0]
  return greatest(total((s) => Math.abs(middle(s)))) ?? greatest(total(() => 1)) ?? -1
}

function roleOf(members: readonly Found[]): MeterRole {
  const sources = members.filter((s) => s.nature !== 'load')
  const loads = members.reduce((sum, s) => (s.nature === 'load' ? sum + middle(s) : sum), 0)
  const likeLoads = (s: Found): boolean => (loads === 0 ? middle(s) !== 0 : middle(s) * loads > 0)
  return sources.length > 0 && sources.every(likeLoads) ? 'battery' : 'load'
}

/** Largest difference of the reading between two batteries side by side (same positive and negative nets). */
function exchange(p: Prepared, reading: Float64Array): number {
  const ranges = new Map<number, { least: number; most: number }>()
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    const key = p.net[p.negative[d]!]! * p.netCount + p.net[p.positive[d]!]!
    const k = reading[d]!
    const old = ranges.get(key)
    ranges.set(key, { least: Math.min(old?.least ?? k, k), most: Math.max(old?.most ?? k, k) })
  })
  return [...ranges.values()].reduce((worst, r) => Math.max(worst, r.most - r.least), 0)
}

function voltsOf(p: Prepared, shares: readonly Share[]): Volts | undefined {
  const emf = chains(
    p,
    Float64Array.from(p.form.devices, (d) => d.emf ?? 0),
  )
  const sums = shares.flatMap((s) => (s.expected === undefined ? [] : (emf(s.device)?.to ?? [])))
  return sums.length > 0 ? Math.max(...sums) : undefined
}

/**
 * Load side: the sum of what the circuit's loads draw. Battery: what the circuit's batteries deliver, counted where
 * they meet the shunt's net: those that stand on it, or else those that hang from it.
 */
function truthOf(
  p: Prepared,
  net: number,
  role: MeterRole,
  shares: readonly Share[],
  served: (device: number) => boolean,
): Float64Array {
  const truth = new Float64Array(p.form.devices.length)
  if (role === 'load') {
    for (const s of shares) if (s.expected === 1) truth[s.device] = -1
    return truth
  }
  const batteries = p.form.devices.flatMap((_, d) => (isBattery(p, d) && served(d) ? [d] : []))
  const standing = batteries.filter((d) => p.net[p.negative[d]!] === net && p.net[p.positive[d]!] !== net)
  const hanging = batteries.filter((d) => p.net[p.positive[d]!] === net && p.net[p.negative[d]!] !== net)
  for (const d of standing.length > 0 ? standing : hanging) truth[d] = 1
  return truth
}
