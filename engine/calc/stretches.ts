import type { Amps, Ohms, Volts, Watts } from '../units'

/** What a device delivers over one stretch of the voltage across it, upwards from `fromV` to where the next begins. */
export type Stretch = { readonly fromV: Volts } & (
  | { readonly amps: Amps }
  | { readonly watts: Watts }
  | { readonly volts: Volts; readonly ohms: Ohms }
)

/**
 * Rising; the first begins wherever its voltage says and holds below that too. Where one goes over into the next both
 * give the same current, which only falls as the voltage rises but over a stretch of constant power taken.
 */
export type Stretches = readonly Stretch[]

/** Index of the stretch that a voltage lies in. */
export function stretchAt(stretches: Stretches, volts: Volts): number {
  let at = 0
  while (at + 1 < stretches.length && stretches[at + 1]!.fromV <= volts) at++
  return at
}

/** A delivered at a voltage. `unloaded`: a power is not given yet. */
export function stretchAmps(stretches: Stretches, volts: Volts, unloaded: boolean): Amps {
  const s = stretches[stretchAt(stretches, volts)]!
  if ('amps' in s) return s.amps
  if ('watts' in s) return unloaded ? 0 : s.watts / volts
  return (s.volts - volts) / s.ohms
}

/** −d(current)/d(voltage), 1/Ω. */
export function stretchSlope(stretches: Stretches, volts: Volts, unloaded: boolean): number {
  const s = stretches[stretchAt(stretches, volts)]!
  if ('amps' in s) return 0
  if ('watts' in s) return unloaded ? 0 : s.watts / volts ** 2
  return 1 / s.ohms
}
