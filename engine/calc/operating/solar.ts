import type { Watts } from '../../units'
import type { LoadFlow } from '../loadflow'
import type { Operation } from '../operation'
import type { Feeds, Sun } from './feeds'
import type { Plan } from './plan'
import { heldOhms } from './practice'
import type { Uses } from './uses'

/** What arrays and their controllers do, by device; devices not named rest. */
export interface SolarOutputs {
  readonly arrays: ReadonlyMap<number, Operation>
  readonly controllers: ReadonlyMap<number, Operation>
}

/** What a pass taught on one sun: W lost on the way from the arrays, and controllers that are at their limit. */
export interface SunGuess {
  readonly lostW: Watts
  readonly atLimit: ReadonlySet<number>
}

/** One load flow, with W that each device gives and the stretch in which a charger works. */
interface Pass {
  readonly flow: LoadFlow
  readonly watts: (device: number) => Watts
  readonly stretch: ReadonlyMap<number, number>
}

const CLOSE = 1e-7

/**
 * An array is held at its point of most power, and its controllers pass that power on times their efficiency, up to
 * their current limit; a controller that only joins the array to the battery passes the current. Controllers on one
 * array share it by their limits.
 */
export function solarOutputs(
  plan: Plan,
  feeds: Feeds,
  uses: Uses,
  guesses: readonly SunGuess[],
): SolarOutputs {
  const arrays = new Map<number, Operation>()
  const controllers = new Map<number, Operation>()
  feeds.suns.forEach((sun, i) => {
    const { lostW, atLimit } = guesses[i] ?? firstGuess(plan, feeds, uses, sun)
    const mostV = Math.min(...sun.arrays.map((d) => plan.devices[d]!.device.array!.volts!))
    const joined = sun.controllers.every((d) => passesCurrent(plan, d))
    const volts = joined ? Math.min(mostV, feeds.restV(sun.controllers[0]!) ?? mostV) : mostV
    for (const d of sun.arrays)
      arrays.set(d, { volts, ohms: heldOhms(volts, wattsOf(plan, uses, d) / volts) })
    for (const d of sun.controllers) {
      const limit = plan.devices[d]!.limitA
      const watts = inputWatts(plan, uses, sun, d, lostW)
      if (passesCurrent(plan, d)) controllers.set(d, { amps: Math.min(limit, watts / mostV) })
      else if (atLimit.has(d)) controllers.set(d, { amps: limit })
      else controllers.set(d, { watts: watts * efficiencyOf(plan, d) })
    }
  })
  return { arrays, controllers }
}

/** The next guess on every sun after a pass; null where the pass agrees with the guess it was made with. */
export function learnt(
  plan: Plan,
  feeds: Feeds,
  uses: Uses,
  guesses: readonly SunGuess[],
  { flow, watts, stretch }: Pass,
): readonly SunGuess[] | null {
  let changed = false
  // It holds the voltage of its stage, or rests, and takes less than the sun would give.
  const isHeldBack = (d: number): boolean => (stretch.get(d) ?? 0) > 0
  const next = feeds.suns.map((sun, i): SunGuess => {
    const guess = guesses[i] ?? firstGuess(plan, feeds, uses, sun)
    if (sun.controllers.some((d) => passesCurrent(plan, d))) return guess
    const given = sum(sun.arrays, watts)
    const taken = -sum(sun.controllers, (d) => watts(plan.devices[d]!.input))
    const most = sum(sun.arrays, (d) => wattsOf(plan, uses, d))
    // The loss goes with the square of the current.
    const lostW = given > 0 ? Math.min(most, (given - taken) * (most / given) ** 2) : 0
    const atLimit = sun.controllers.filter((d) =>
      guess.atLimit.has(d)
        ? -watts(plan.devices[d]!.input) <= inputWatts(plan, uses, sun, d, lostW) * (1 + CLOSE)
        : flow.deviceAmps[d]! > plan.devices[d]!.limitA * (1 + CLOSE),
    )
    const sameLimits = atLimit.length === guess.atLimit.size && atLimit.every((d) => guess.atLimit.has(d))
    const free = sun.controllers.some((d) => !atLimit.includes(d) && !isHeldBack(d))
    if (!sameLimits || (free && Math.abs(given - most) > CLOSE * most)) changed = true
    return { lostW, atLimit: new Set(atLimit) }
  })
  return changed ? next : null
}

function firstGuess(plan: Plan, feeds: Feeds, uses: Uses, sun: Sun): SunGuess {
  const atLimit = sun.controllers.filter((d) => {
    const amps = (inputWatts(plan, uses, sun, d, 0) * efficiencyOf(plan, d)) / (feeds.restV(d) ?? 1)
    return amps > plan.devices[d]!.limitA
  })
  return { lostW: 0, atLimit: new Set(atLimit) }
}

/** W at the input of one controller. */
function inputWatts(plan: Plan, uses: Uses, sun: Sun, d: number, lostW: Watts): Watts {
  const most = sum(sun.arrays, (a) => wattsOf(plan, uses, a)) - lostW
  return (most * plan.devices[d]!.limitA) / sum(sun.controllers, (c) => plan.devices[c]!.limitA)
}

const wattsOf = (plan: Plan, uses: Uses, d: number): Watts =>
  plan.devices[d]!.device.array!.watts! * uses.share[d]!

const efficiencyOf = (plan: Plan, d: number): number => plan.devices[d]!.device.suppliedBy?.efficiency ?? 1

const passesCurrent = (plan: Plan, d: number): boolean =>
  plan.devices[d]!.device.suppliedBy?.array === 'current'

const sum = (list: readonly number[], of: (d: number) => number): number =>
  list.reduce((total, d) => total + of(d), 0)
