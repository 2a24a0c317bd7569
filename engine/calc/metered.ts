import type { Answer, Metered, MeterShare, ShuntAnswer, WorstCase } from './answers'
import type { Border } from './network'

const CLOSE = 1e-6

/**
 * How a conductor's current counts, from its worst cases in both directions: of the loads in the states that bring
 * them about, which pass the load-side shunt of their system. What hangs on a converter is counted as the converter's
 * input is. Null where a worst case is not known.
 */
export function meteredBy(
  shunts: Iterable<ShuntAnswer>,
  devices: Border['devices'],
): (worst: readonly Answer<WorstCase>[]) => Metered | null {
  const shares = new Map<string, MeterShare>()
  for (const shunt of shunts)
    if (shunt.role === 'load')
      for (const s of shunt.shares) {
        const key = `${s.part}/${s.device}`
        if (s.expected === 1 && !(Math.abs(shares.get(key)?.from ?? 0) > CLOSE)) shares.set(key, s)
      }
  for (const [id, { part, device }] of devices) {
    const input = device.suppliedBy && shares.get(`${part}/${device.suppliedBy.device}`)
    if (input) shares.set(id, input)
  }
  return (worst) => (shares.size === 0 ? 'no-load-shunt' : countOf(worst, shares))
}

function countOf(
  worst: readonly Answer<WorstCase>[],
  shares: ReadonlyMap<string, MeterShare>,
): Metered | null {
  const loads: MeterShare[] = []
  for (const w of worst) {
    if (!('value' in w) || w.value.amps === 'unlimited') return null
    for (const line of w.value.witness) {
      const share = shares.get(`${line.part}/${line.device}`)
      if (share) loads.push(share)
    }
  }
  if (loads.length === 0) return 'source-side'
  if (loads.every((s) => s.from > 1 - CLOSE && s.to < 1 + CLOSE)) return 'measured'
  return loads.every((s) => Math.abs(s.from) < CLOSE && Math.abs(s.to) < CLOSE) ? 'bypasses' : 'shared'
}
