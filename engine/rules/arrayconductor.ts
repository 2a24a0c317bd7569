import { arrayAmps } from '../calc/sizing/arrayamps'
import { PV_CONTINUOUS, PV_IRRADIANCE } from '../tables/pvfactors'
import { found, type Rule } from './rule'

/** V4: a conductor of an array carries its current, but not the 1.56 times the short-circuit current asked of it. */
export const arrayConductor: Rule = {
  id: 'V4',
  looksFor: 'PV conductors below 1.56 times the short-circuit current',
  check: ({ design, answers }) =>
    design.conductors.flatMap((w) => {
      const run = answers.runs.get(w.id)
      if (!run || run.ownFigure || !('value' in run.ampacity)) return []
      const needs = arrayAmps(design, run)
      // What it carries at the worst holds the factor of strong sun already; beyond that, C1 tells.
      const amps = needs / PV_CONTINUOUS
      const may = run.ampacity.value.amps
      if (may >= needs * (1 - 1e-9) || amps > may * (1 + 1e-9)) return []
      return [
        found(
          'V4',
          'warning',
          'iec-62548',
          { conductors: [w.id] },
          { conductor: w.id, isc: amps / PV_IRRADIANCE },
          { actual: { value: needs, unit: 'A' }, limit: { value: may, unit: 'A' } },
        ),
      ]
    }),
}
