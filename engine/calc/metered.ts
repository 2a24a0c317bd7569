import type { Answer, Metered, MeterShare, ShuntAnswer, WorstCase } from './answers'

/**
 * How a conductor's current counts: of the loads in the states that bring about its worst cases, which pass the
 * load-side shunt of their system. Null where a worst case is not known.
 */
export function meteredOf(
  worst: readonly Answer<WorstCase>[],
  shunts: Iterable<ShuntAnswer>,
): Metered | null {
  const shares = new Map<string, MeterShare>()
  for (const shunt of shunts)
    if (shunt.role === 'load')
      for (const s of shunt.shares) {
        const key = `${s.part}/${s.device}`
        if (s.expected === 1 && !(Math.abs(shares.get(key)?.from ?? 0) > CLOSE)) shares.set(key, s)
      }
  if (shares.size === 0) return 'no-load-shunt'
  const loads: MeterShare[] = []
  for (const w of worst) {
    if (!('value' in w) || w.value.amps === 'unlimited') return null
    loads.push(...w.value.witness.flatMap((line) => shares.get(`${line.part}/${line.device}`) ?? []))
  }
  if (loads.length === 0) return 'source-side'
  if (loads.every((s) => s.from > 1 - CLOSE && s.to < 1 + CLOSE)) return 'measured'
  return loads.every((s) => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE) ? 'bypasses' : 'shared'
}

const CLOSE = 1e-6
