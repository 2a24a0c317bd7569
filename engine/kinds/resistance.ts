import type { Amps, Ohms } from '../units'

/**
 * Small resistances of parts, from a voltage drop at rated current. Common practice, no source; they share current
 * between parallel paths and take a little off a fault current, and decide nothing else.
 */
const FUSE_V = 0.1
const CONTACT_V = 0.05
/** Where no rating is stated. */
const UNRATED_OHMS: Ohms = 0.001

export const fuseOhms = (ratingA: Amps | null): Ohms => dropOhms(FUSE_V, ratingA)
export const contactOhms = (ratingA: Amps | null): Ohms => dropOhms(CONTACT_V, ratingA)

const dropOhms = (volts: number, ratingA: Amps | null): Ohms =>
  ratingA === null || ratingA <= 0 ? UNRATED_OHMS : volts / ratingA
