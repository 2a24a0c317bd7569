import type { ConductorId, PartId } from '../../model/design'
import type { Amps, Ohms, Volts } from '../../units'
import {
  APART_KILOHMS,
  DEAD_VOLTS,
  LEAD_OHMS,
  METER_SHARE,
  METER_VOLTS,
  SURFACE_SHARE,
  THRESHOLD_SHARE,
} from './practice'
import type { Expected, NotExpected, StepUnit } from './step'

/** Makers of what is expected. Figures are rounded as a meter shows them, so that the same design expects the same. */

const DIGITS: Readonly<Record<StepUnit, number>> = { V: 2, A: 2, Ω: 2, kΩ: 0 }

export const roundTo = (value: number, unit: StepUnit): number => Number(value.toFixed(DIGITS[unit])) + 0

type Figure = Extract<Expected, { is: 'figure' }>

export const between = (
  unit: StepUnit,
  usual: number | null,
  least: number | null,
  most: number | null,
  more: Pick<Figure, 'against'> = {},
): Figure => ({
  is: 'figure',
  usual: usual === null ? null : roundTo(usual, unit),
  least: least === null ? null : roundTo(least, unit),
  most: most === null ? null : roundTo(most, unit),
  unit,
  ...more,
})

/** A figure and what it may be off by, at the least and the greatest of several states. */
export function around(
  unit: StepUnit,
  values: readonly number[],
  share: number,
  amount: number,
  more: Pick<Figure, 'against'> = {},
): Figure {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  return between(
    unit,
    values[0]!,
    low - share * Math.abs(low) - amount,
    high + share * Math.abs(high) + amount,
    more,
  )
}

/** Live from a battery: from the least of the states to a little above the greatest, as after charging. */
export function volts(...values: readonly Volts[]): Figure {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  return between(
    'V',
    values[0]!,
    low * (1 - METER_SHARE) - METER_VOLTS,
    high * (1 + SURFACE_SHARE) + METER_VOLTS,
  )
}
export const dead = (): Figure => between('V', 0, -DEAD_VOLTS, DEAD_VOLTS)

/** A voltage in a state: dead where it is next to nothing. */
export const voltsOrDead = (...values: readonly Volts[]): Figure =>
  values.every((v) => Math.abs(v) < DEAD_VOLTS) ? dead() : volts(...values)

export const atMostOhms = (ohms: Ohms): Figure => between('Ω', ohms, 0, ohms + LEAD_OHMS)
export const apart = (): Figure => between('kΩ', null, APART_KILOHMS, null)
export const threshold = (at: Volts): Figure => around('V', [at], THRESHOLD_SHARE, 0)
export const ampsWithin = (
  amps: readonly Amps[],
  share: number,
  amount: Amps,
  more?: Pick<Figure, 'against'>,
) => around('A', amps, share, amount, more)

export const seen = (what = ''): Expected => ({ is: 'seen', what })

export const notKnown = (
  because: NotExpected,
  parts: readonly PartId[] = [],
  conductors: readonly ConductorId[] = [],
): Expected => ({ is: 'not-known', because, parts, conductors })
