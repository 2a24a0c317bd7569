import type { MeterShare } from '../calc/answers'

const CLOSE = 1e-6

export const isZero = (s: MeterShare): boolean => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE
export const isRange = (s: MeterShare): boolean => s.to - s.from > CLOSE
/** Passes only in part: a second way back beside the shunt. */
export const isPart = (s: MeterShare): boolean =>
  !isRange(s) && Math.abs(s.from) > CLOSE && Math.abs(s.from) < 1 - CLOSE
