import type { Volts } from '../units'
import { chains } from './chains'
import { circuits, middle, servedBy, weight } from './circuits'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'
import { type Found, natureOf, type Share } from './share'

export type MeterRole = 'battery' | 'load'

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
  const served = servedBy(p, found, circuit, question.role === 'load')
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

/** A whole number where rounding alone keeps it from being one. */
const tidy = (x: number): number => {
  const whole = Math.round(x)
  return Math.abs(x - whole) < CLOSE ? whole + 0 : x
}

/** A battery shunt is passed by every source as by the loads. */
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
