import { Potentials } from '../../math/potentials'
import type { Volts } from '../../units'
import type { Prepared } from '../prepare'
import type { Plan } from './plan'
import type { Uses } from './uses'

/** What feeds what while contacts stand as they do, before any current flows. By device. */
export interface Feeds {
  /** V without load across its terminals; undefined where no battery or held voltage joins the two. */
  readonly restV: (device: number) => Volts | undefined
  /** A battery joins its terminals, and they stand the right way round: a source there has something to charge. */
  readonly charges: (device: number) => boolean
  /** Converters that hold a voltage and are fed. */
  readonly holds: ReadonlySet<number>
  /** Arrays in the sun that feed a controller, with the controllers. */
  readonly suns: readonly Sun[]
}

/** Arrays and controllers on the same two nets. */
export interface Sun {
  readonly arrays: readonly number[]
  readonly controllers: readonly number[]
}

/** `stopped`: outputs that hold nothing any more. O(devices), and once more for each converter that feeds another. */
export function feedsOf(plan: Plan, p: Prepared, uses: Uses, stopped: ReadonlySet<number>): Feeds {
  const potentials = new Potentials(p.netCount)
  const high = (d: number): number => p.net[p.positive[d]!]!
  const low = (d: number): number => p.net[p.negative[d]!]!
  const restV = (d: number): Volts | undefined => potentials.across(high(d), low(d))
  plan.devices.forEach(({ is }, d) => {
    if (is === 'battery') potentials.join(high(d), low(d), uses.emf[d]!)
  })
  const charges = plan.devices.map((_, d) => (restV(d) ?? 0) > 0)

  const holds = new Set<number>()
  for (let before = -1; before < holds.size; ) {
    before = holds.size
    plan.devices.forEach(({ is, input, device }, d) => {
      if (
        is !== 'held' ||
        holds.has(d) ||
        stopped.has(d) ||
        restV(d) !== undefined ||
        !((restV(input) ?? 0) > 0)
      )
        return
      holds.add(d)
      potentials.join(high(d), low(d), device.holdsV!)
    })
  }

  const suns = new Map<string, { arrays: number[]; controllers: number[] }>()
  const sunAt = (d: number) => {
    const nets = `${high(d)} ${low(d)}`
    const sun = suns.get(nets) ?? { arrays: [], controllers: [] }
    suns.set(nets, sun)
    return sun
  }
  plan.devices.forEach(({ is, input, device, limitA }, d) => {
    if (is === 'array' && uses.share[d]! * device.array!.watts! > 0 && high(d) !== low(d) && !charges[d])
      sunAt(d).arrays.push(d)
    if (is === 'controller' && charges[d] && limitA > 0) sunAt(input).controllers.push(d)
  })
  return {
    restV,
    charges: (d) => charges[d]!,
    holds,
    suns: [...suns.values()].filter((s) => s.arrays.length > 0 && s.controllers.length > 0),
  }
}
