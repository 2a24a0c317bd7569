import { reroutedReturn } from './rerouted'
import { found, type Rule } from './rule'
import { isReversed, isZero } from './shares'

/** M1: a load whose return misses the load-side shunt: what it draws is not shown. */
export const bypass: Rule = {
  id: 'M1',
  looksFor: 'loads that bypass the load-side shunt',
  check: (c) =>
    [...c.answers.shunts.values()].flatMap((shunt) => {
      if (shunt.role !== 'load' || isReversed(shunt)) return []
      const anyMeasured = shunt.shares.some((s) => s.role === 'load' && !isZero(s))
      if (!anyMeasured) return []
      return shunt.shares
        .filter((s) => s.role === 'load' && isZero(s))
        .map((s) => {
          const fix = reroutedReturn(c, shunt.part, s.part, s.device)
          const returns = returnsOf(c, s.part, s.device)
          return found(
            'M1', 'warning', 'load-side-shunt',
            { parts: [s.part, shunt.part], conductors: returns },
            { part: s.part, shunt: shunt.part, ...(drawOf(c, s.part, s.device) ?? {}) },
            { about: s.device, ...(fix ? { fix } : {}) },
          )
        })
    }),
}

function returnsOf(c: Parameters<Rule['check']>[0], part: string, device: string): string[] {
  const ref = c.border.devices.get(`${part}/${device}`)
  if (!ref) return []
  return c.design.conductors
    .filter((w) =>
      [w.from, w.to].some((t) => t.part === part && t.terminal === ref.device.negative),
    )
    .map((w) => w.id)
}

function drawOf(c: Parameters<Rule['check']>[0], part: string, device: string): { amps: number } | null {
  const min = c.border.devices.get(`${part}/${device}`)?.device.minA
  return typeof min === 'number' ? { amps: -min } : null
}
