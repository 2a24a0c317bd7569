import { found, type Rule } from './rule'

/** M4: the shunt is wired the wrong way round: it shows draw as charge. */
export const reversedShunt: Rule = {
  id: 'M4',
  looksFor: 'shunts wired the wrong way round',
  check: ({ answers }) =>
    [...answers.shunts.values()]
      .filter((shunt) => shunt.reversed)
      .map((shunt) =>
        found(
          'M4',
          'warning',
          'load-side-shunt',
          { parts: [shunt.part] },
          { shunt: shunt.part, role: shunt.role },
        ),
      ),
}
