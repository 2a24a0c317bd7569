import type { MeterShare, ShuntAnswer } from '../calc/answers'

const CLOSE = 1e-6

export const isZero = (s: MeterShare): boolean => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE
export const isRange = (s: MeterShare): boolean => s.to - s.from > CLOSE
/** Passes only in part: a second way back beside the shunt. */
export const isPart = (s: MeterShare): boolean =>
  !isRange(s) && Math.abs(s.from) > CLOSE && Math.abs(s.from) < 1 - CLOSE

/** Nothing that it should measure passes it. */
export const isDeaf = (shunt: ShuntAnswer): boolean =>
  shunt.shares.filter((s) => s.expected === 1).every(isZero)

/** Does another load-side shunt measure the device? Two of them may share the loads of one system between them. */
export const measuredElsewhere = (
  shunts: ReadonlyMap<string, ShuntAnswer>,
  besides: ShuntAnswer,
  of: MeterShare,
): boolean =>
  [...shunts.values()].some(
    (other) =>
      other !== besides &&
      other.role === besides.role &&
      other.shares.some((s) => s.part === of.part && s.device === of.device && !isZero(s)),
  )
