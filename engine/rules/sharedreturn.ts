import { found, type Rule } from './rule'
import { isPart } from './shares'

/** M3: part of a device's return takes another way beside the shunt, commonly the chassis. */
export const sharedReturn: Rule = {
  id: 'M3',
  looksFor: 'returns that only partly pass a shunt',
  check: ({ answers }) =>
    [...answers.shunts.values()].flatMap((shunt) =>
      shunt.shares
        .filter((s) => s.expected === 1 && isPart(s))
        .map((s) =>
          found(
            'M3',
            'warning',
            'load-side-shunt',
            { parts: [s.part, shunt.part] },
            { part: s.part, shunt: shunt.part },
            {
              about: s.device,
              ...(shunt.leaning ? {} : { actual: { value: Math.abs(s.from) * 100, unit: '%' } }),
              limit: { value: 100, unit: '%' },
            },
          ),
        ),
    ),
}
