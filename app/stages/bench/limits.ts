import { BENCH_BOUNDS } from '../../../engine'

const [least, most] = BENCH_BOUNDS.newtonMetres

/** Figures that are taken as meant. */
export const TORQUE_LIMITS = { min: least, max: most }
export const LENGTH_LIMITS = { min: 0.01, max: BENCH_BOUNDS.lengthM }
