import { type Figured, figured, unconfirmed } from './figure'

/** What lies round a conductor and keeps its heat in. */
export type Surround = 'free' | 'conduit' | 'insulation'

/** In a few words, for factors and forms. */
export const SURROUNDS: Readonly<Record<Surround, string>> = {
  free: 'free in air',
  conduit: 'in a conduit or sheath',
  insulation: 'in thermal insulation',
}

/** What of a conductor tells what lies round it; a `Conductor` fits. */
export interface Surrounded {
  readonly surround?: Surround
  /** In a sheath, conduit or enclosure throughout. */
  readonly sheathed?: boolean
}

/** What lies round a conductor: as it is stated; else a conduit where it is sheathed throughout, the careful reading. */
export const surroundOf = ({ surround, sheathed }: Surrounded): Surround =>
  surround ?? (sheathed ? 'conduit' : 'free')

/** How a rule set lowers an ampacity for what lies round a conductor. */
export type SurroundFactor = (surround: Surround) => Figured

/**
 * Conduit: 70 °C PVC of 25 mm² carries 101 A in a conduit (method B of IEC 60364-5-52) where it carries 126 A in free
 * air (method F); that ratio, 0.80, is taken for every size, which nobody prints. Wholly in thermal insulation: half,
 * from memory of the same standard.
 */
export const usualSurround: SurroundFactor = (surround) =>
  surround === 'free'
    ? figured(1, 'laying-methods')
    : surround === 'conduit'
      ? unconfirmed(0.8, 'laying-methods')
      : unconfirmed(0.5, 'thermal-insulation')
