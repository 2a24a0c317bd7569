import { leastKnown } from '../calc/answer'
import type { RunAnswer } from '../calc/answers'
import { worse } from '../calc/worst'
import { found, type Rule } from './rule'

/**
 * C1: the worst-case current is more than the conductor may carry. A designer's own figure counts in its place; where the
 * conductor bears that one and not what the drawing gives, it is a warning, so that somebody looks at the reason again.
 */
export const overload: Rule = {
  id: 'C1',
  looksFor: 'conductors that may carry more than their ampacity',
  check: ({ design, answers }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.ampacity)) return []
      const { value: may } = run.ampacity
      const isBeyond = (amps: number | 'unlimited'): amps is number =>
        amps !== 'unlimited' && amps > may.amps * (1 + 1e-9)
      const counted = 'value' in run.design ? run.design.value : (run.design.atLeastA ?? 0)
      const drawn = run.ownFigure ? drawnOf(run) : 0
      const amps = [counted, drawn].find(isBeyond)
      if (amps === undefined) return []
      const instead = amps === counted ? {} : { instead: counted }
      return [
        found(
          'C1',
          amps === counted ? 'danger' : 'warning',
          may.source,
          { conductors: [c.id] },
          { conductor: c.id, own: run.ownFigure, ...instead },
          { actual: { value: amps, unit: 'A' }, limit: { value: may.amps, unit: 'A' } },
        ),
      ]
    }),
}

/** What the drawing gives, whatever the designer's own figure is. */
const drawnOf = ({ forward, backward }: RunAnswer): number | 'unlimited' =>
  leastKnown(worse(forward, backward)) ?? 0
