import type { Amps, Ohms, Volts, Watts } from '../units'
import { type Galvanic, galvanic, isBattery } from './galvanic'
import type { Prepared } from './prepare'
import type { Stretches } from './stretches'

/**
 * What a device does at the operating point; what it delivers into its positive node counts as positive, so a
 * lamp drawing 5 A is `{ amps: -5 }` and an inverter drawing 800 W is `{ watts: -800 }`. A converter's output
 * names its input device: that one then draws the output's power divided by the efficiency. `volts` behind `ohms`
 * is a device that holds a voltage; a battery's own emf and internal resistance give way to it. `stretches` is one that
 * does different things at different voltages.
 */
export type Operation = (
  | { readonly amps: Amps }
  | { readonly watts: Watts }
  | { readonly ohms: Ohms }
  | { readonly volts: Volts; readonly ohms: Ohms }
  | { readonly stretches: Stretches }
) & {
  readonly input?: string
  /** 0 to 1; 1 where not given. */
  readonly efficiency?: number
}

export type Operations = ReadonlyMap<string, Operation>

export type NoOperation = 'internal-resistance-missing' | 'operating-current-missing' | 'voltage-undetermined'

/** What each device does, as arrays by device. */
export interface Behaviour {
  readonly is: ('amps' | 'watts' | 'ohms' | 'battery' | 'stretches' | 'follows')[]
  /** A, W, Ω, Ω (battery, or what else holds a voltage: internal resistance), or efficiency (follows). */
  readonly value: Float64Array
  /** Battery, or what else holds a voltage: V. */
  readonly emf: Float64Array
  readonly stretches: ReadonlyMap<number, Stretches>
  /** Follows: the output device whose power this one draws. */
  readonly follows: Int32Array
  readonly groups: Galvanic
}

/**
 * Behaviour of every device. Where nothing is stated: a battery is its emf behind its internal resistance; any
 * other device whose two terminals lie in one group with a battery draws its full `min`, sources resting; a device
 * that no battery reaches rests.
 */
export function behaviour(
  p: Prepared,
  operations: Operations,
): Behaviour | { reason: NoOperation; devices: string[] } {
  const k = p.form.devices.length
  const is = new Array<Behaviour['is'][number]>(k).fill('amps')
  const value = new Float64Array(k)
  const emf = new Float64Array(k)
  const follows = new Int32Array(k).fill(-1)
  const stated = new Uint8Array(k)
  const stretches = new Map<number, Stretches>()
  for (const [id, operation] of operations) {
    const d = deviceAt(p, id)
    if ('amps' in operation) value[d] = operation.amps
    if ('stretches' in operation) {
      is[d] = 'stretches'
      stretches.set(d, operation.stretches)
    } else if ('watts' in operation) {
      is[d] = 'watts'
      value[d] = operation.watts
    } else if ('ohms' in operation) {
      if (!(operation.ohms > 0)) throw new RangeError(`device "${id}" has ${operation.ohms} Ω`)
      is[d] = 'volts' in operation ? 'battery' : 'ohms'
      value[d] = operation.ohms
      if ('volts' in operation) emf[d] = operation.volts
    }
    stated[d] = 1
    if (operation.input === undefined) continue
    const efficiency = operation.efficiency ?? 1
    if (is[d] === 'ohms')
      throw new RangeError(`"${id}" is a resistance and cannot be fed by "${operation.input}"`)
    if (!(efficiency > 0 && efficiency <= 1))
      throw new RangeError(`"${id}" has an efficiency of ${efficiency}`)
    const input = deviceAt(p, operation.input)
    if (operations.has(operation.input))
      throw new RangeError(`"${operation.input}" follows and is stated too`)
    if (stated[input]) throw new RangeError(`"${operation.input}" feeds two outputs`)
    is[input] = 'follows'
    value[input] = efficiency
    follows[input] = d
    stated[input] = 1
  }
  const missing: number[] = []
  for (let d = 0; d < k; d++) {
    const device = p.form.devices[d]!
    if (stated[d] || device.emf === undefined) continue
    is[d] = 'battery'
    emf[d] = device.emf
    value[d] = device.internalResistance ?? 0
    if (!(value[d]! > 0)) missing.push(d)
  }
  const name = (list: readonly number[]): string[] => list.map((d) => p.form.devices[d]!.id)
  if (missing.length > 0) return { reason: 'internal-resistance-missing', devices: name(missing) }

  const holds = (d: number): boolean => is[d] === 'battery' || is[d] === 'stretches'
  const groups = galvanic(p, (d) => holds(d) || is[d] === 'ohms', holds)
  const oneGroup = (d: number): boolean => groups.of[p.positive[d]!] === groups.of[p.negative[d]!]
  const boundless: number[] = []
  const undetermined: number[] = []
  for (let d = 0; d < k; d++) {
    if (!stated[d] && !isBattery(p, d) && oneGroup(d) && groups.hasBattery[groups.of[p.positive[d]!]!]) {
      value[d] = p.min[d]!
      if (!Number.isFinite(value[d]!)) boundless.push(d)
    }
    if (is[d] === 'watts' && !oneGroup(d)) undetermined.push(d)
    if (is[d] === 'follows') for (const end of [d, follows[d]!]) if (!oneGroup(end)) undetermined.push(end)
  }
  if (boundless.length > 0) return { reason: 'operating-current-missing', devices: name(boundless) }
  if (undetermined.length > 0) return { reason: 'voltage-undetermined', devices: name(undetermined) }
  return { is, value, emf, stretches, follows, groups }
}

function deviceAt(p: Prepared, id: string): number {
  const d = p.deviceIndex.get(id)
  if (d === undefined) throw new RangeError(`an operation names "${id}", which is no device`)
  return d
}
