import type { Metered, MeterShare, ShuntAnswer, WorstCase } from './answers'

/**
 * How a conductor's current counts: of the loads in the state that brings about its worst case, which pass the
 * load-side shunt of their system. Null where no shunt measures loads.
 */
export function meteredOf(worst: readonly WorstCase[], shunts: Iterable<ShuntAnswer>): Metered {
  const shares = new Map<string, MeterShare>()
  for (const shunt of shunts)
    if (shunt.role === 'load')
      for (const s of shunt.shares) if (s.expected === 1) shares.set(`${s.part}/${s.device}`, s)
  if (shares.size === 0) return 'no-load-shunt'
  const loads = worst.flatMap((w) =>
    w.witness.flatMap((line) => shares.get(`${line.part}/${line.device}`) ?? []),
  )
  if (loads.length === 0) return 'source-side'
  if (loads.every((s) => s.from > 1 - CLOSE && s.to < 1 + CLOSE)) return 'measured'
  return loads.every((s) => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE) ? 'bypasses' : 'shared'
}

const CLOSE = 1e-6
