import { reroutedReturn, returnsOf } from './rerouted'
import { type Case, found, type Rule } from './rule'
import { isDeaf, isZero, measuredElsewhere } from './shares'

/** M1: a load whose return misses the load-side shunt: what it draws is not shown. */
export const bypass: Rule = {
  id: 'M1',
  looksFor: 'loads that bypass the load-side shunt',
  check: (c) =>
    [...c.answers.shunts.values()].flatMap((shunt) => {
      if (shunt.role !== 'load' || isDeaf(shunt)) return []
      const missed = shunt.shares.filter(
        (s) => s.expected === 1 && isZero(s) && !measuredElsewhere(c.answers.shunts, shunt, s),
      )
      return missed.map((s) => {
        const fix = reroutedReturn(c, shunt.part, s.part, s.device)
        return found(
          'M1',
          'warning',
          'load-side-shunt',
          { parts: [s.part, shunt.part], conductors: returnsOf(c, s.part, s.device) },
          { part: s.part, shunt: shunt.part, ...drawOf(c, s.part, s.device) },
          { about: s.device, ...(fix ? { fix } : {}) },
        )
      })
    }),
}

function drawOf(c: Case, part: string, device: string): { amps?: number } {
  const min = c.border.devices.get(`${part}/${device}`)?.device.minA
  return typeof min === 'number' ? { amps: -min } : {}
}
