import type { Amps } from '../units'

/** Sun stronger than the standard 1000 W/m²: NFPA 70 690.8(A), as restated in public. */
export const PV_IRRADIANCE = 1.25

/** Conductors and devices carry that for hours: another 1.25, together 1.5625, printed as 1.56 (690.8(B)). */
export const PV_CONTINUOUS = 1.25

/** What the other strings can push into one of them, A: (Np − 1)·Isc (IEC 62548). Needs a fuse above what the module bears. */
export const stringBackfeedA = (strings: number, iscA: Amps): Amps => (strings - 1) * iscA

/** A string fuse is rated above 1.5 and below 2.4 times the short-circuit current (IEC 62548). */
export const stringFuseRange = (iscA: Amps): { readonly above: Amps; readonly below: Amps } => ({
  above: 1.5 * iscA,
  below: 2.4 * iscA,
})
