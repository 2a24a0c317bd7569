import { found, type Rule } from './rule'

/** C1: the worst-case current is more than the conductor may carry. */
export const overload: Rule = {
  id: 'C1',
  looksFor: 'conductors that may carry more than their ampacity',
  check: ({ design, answers }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.ampacity)) return []
      const amps = 'value' in run.design ? run.design.value : (run.design.atLeastA ?? 0)
      const { value: may } = run.ampacity
      if (amps === 'unlimited' || amps <= may.amps * (1 + 1e-9)) return []
      return [
        found(
          'C1',
          'danger',
          may.source,
          { conductors: [c.id] },
          { conductor: c.id, own: run.ownFigure },
          { actual: { value: amps, unit: 'A' }, limit: { value: may.amps, unit: 'A' } },
        ),
      ]
    }),
}
