import type { Celsius, Metres } from '../units'

/** What is taken as meant on a conductor: one set of limits for its card, the edits and the file reader. */
export const RUN_LIMITS: {
  readonly longestM: Metres
  readonly insulationC: readonly [least: Celsius, most: Celsius]
  readonly mostBunched: number
} = { longestM: 1000, insulationC: [40, 300], mostBunched: 1000 }
