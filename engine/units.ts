/** Units used throughout the engine. Aliases document; field names carry the unit where the alias cannot. */

export type Amps = number
export type Volts = number
export type Ohms = number
export type Watts = number
export type Metres = number
/** Paper and canvas lengths: one canvas millimetre is one millimetre on an unscaled sheet. */
export type Millimetres = number
/** Conductor cross-section. */
export type SquareMillimetres = number
export type Celsius = number
export type Seconds = number
export type AmpHours = number
export type Kilograms = number

/** A figure that may have no finite bound. 'unlimited' is a flag and survives JSON; it is never a big number. */
export type Unlimited = 'unlimited'
export type MaybeUnlimited = number | Unlimited

/** 'unlimited' to Infinity, for kernels that work on plain arrays. */
export const toNumber = (x: MaybeUnlimited): number => (x === 'unlimited' ? Number.POSITIVE_INFINITY : x)

/** Infinity (either sign) to 'unlimited', for anything that leaves a kernel. */
export const fromNumber = (x: number): MaybeUnlimited => (Number.isFinite(x) ? x : 'unlimited')

/** Is one figure above another? Nothing is above 'unlimited'. */
export const above = (a: MaybeUnlimited, b: MaybeUnlimited): boolean =>
  b !== 'unlimited' && (a === 'unlimited' || a > b)
