import { found, type Rule } from './rule'

/** E1: the voltage drop of a load, out and return, is more than its class of circuit is allowed. */
export const drop: Rule = {
  id: 'E1',
  looksFor: 'loads with more voltage drop than their class of circuit is allowed',
  check: ({ answers, ruleSet }) =>
    [...answers.drops.values()].flatMap((answer) => {
      if (!('value' in answer.drop)) return []
      const { percent, ofV, conductorsV, conductors } = answer.drop.value
      if (percent <= answer.limitPercent * (1 + 1e-9)) return []
      const worst = conductors[0]
      return [
        found(
          'E1',
          'warning',
          ruleSet.dropPercent[answer.service].source,
          { parts: [answer.part], conductors: worst ? [worst.conductor] : [] },
          {
            part: answer.part,
            volts: conductorsV,
            ofV,
            service: answer.service,
            ...(worst ? { worst: worst.conductor, worstV: worst.volts } : {}),
          },
          {
            about: answer.device,
            actual: { value: percent, unit: '%' },
            limit: { value: answer.limitPercent, unit: '%' },
          },
        ),
      ]
    }),
}
