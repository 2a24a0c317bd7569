import type { MeterShare, ShuntAnswer } from '../calc/answers'

const CLOSE = 1e-6

export const isZero = (s: MeterShare): boolean => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE
export const isOne = (s: MeterShare): boolean => Math.abs(s.from - 1) < CLOSE && Math.abs(s.to - 1) < CLOSE
export const isRange = (s: MeterShare): boolean => s.to - s.from > CLOSE
/** Passes only in part: a second way back beside the shunt. */
export const isPart = (s: MeterShare): boolean => !isRange(s) && Math.abs(s.from) > CLOSE && Math.abs(s.from) < 1 - CLOSE

/** More of the load shares are the wrong way round than the right way. */
export function isReversed(shunt: ShuntAnswer): boolean {
  const counted = shunt.shares.filter((s) => s.role !== 'battery' && !isZero(s))
  const backwards = counted.filter((s) => s.to < -CLOSE)
  return backwards.length > counted.length / 2
}
