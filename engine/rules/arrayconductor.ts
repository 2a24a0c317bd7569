import type { RunAnswer } from '../calc/answers'
import { partById } from '../model/lookup'
import { PV_CONTINUOUS } from '../tables/pvfactors'
import { type Case, found, type Rule } from './rule'

/** V4: a conductor of an array carries its current, but not the 1.56 times the short-circuit current asked of it. */
export const arrayConductor: Rule = {
  id: 'V4',
  looksFor: 'PV conductors below 1.56 times the short-circuit current',
  check: (c) =>
    c.design.conductors.flatMap((w) => {
      const run = c.answers.runs.get(w.id)
      const amps = run && !run.ownFigure ? arrayAmps(c, run) : null
      if (!run || amps === null || !('value' in run.ampacity)) return []
      const needs = amps * PV_CONTINUOUS
      const may = run.ampacity.value.amps
      if (may >= needs * (1 - 1e-9) || amps > may * (1 + 1e-9)) return []
      return [
        found(
          'V4',
          'warning',
          'iec-62548',
          { conductors: [w.id] },
          { conductor: w.id, isc: amps / 1.25 },
          { actual: { value: needs, unit: 'A' }, limit: { value: may, unit: 'A' } },
        ),
      ]
    }),
}

/** Worst current of a conductor that arrays alone feed, A (it holds the 1.25 of strong sun already); null: another one. */
function arrayAmps(c: Case, run: RunAnswer): number | null {
  const worst = [run.forward, run.backward].flatMap((w) => ('value' in w ? [w.value] : []))
  const gives = worst.flatMap((w) => w.witness).filter((line) => line.amps > 0)
  if (gives.length === 0 || gives.some((line) => partById(c.design, line.part)?.kind !== 'pv-array'))
    return null
  const amps = Math.max(...worst.map((w) => (w.amps === 'unlimited' ? Number.NaN : w.amps)))
  return amps > 0 ? amps : null
}
