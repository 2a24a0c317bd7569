import { type FuseFacts, fuseFacts } from '../calc/fusefacts'
import { clearsBy, holdsAtLeast } from '../tables/fuseband'
import type { Amps, Seconds } from '../units'
import { found, type Rule } from './rule'

/**
 * F2: the starting current of a load, on top of everything else that runs, may open a fuse. A warning where the slow edge
 * of the band is passed (it will open), a note inside the band (it may), not checked where no band is known.
 */
export const inrush: Rule = {
  id: 'F2',
  looksFor: 'fuses and breakers that a starting load may open',
  check: (c) => {
    const facts = fuseFacts(c.design, c.border)
    return [...c.answers.faults.starts].flatMap(([id, starts]) => {
      const of = facts.get(id)
      if (!of || of.ratingA === null) return []
      const judged = starts
        .map((s) => ({ ...s, ...judge(of, s.amps, s.seconds) }))
        .filter((s) => s.level !== null)
        .sort((a, b) => ORDER.indexOf(a.level!) - ORDER.indexOf(b.level!) || b.amps - a.amps)[0]
      if (!judged?.level) return []
      return [
        found(
          'F2',
          judged.level,
          of.band?.source ?? 'method',
          { parts: [of.part, judged.part] },
          {
            part: of.part,
            way: of.name,
            load: judged.part,
            lasts: judged.seconds,
            ...(judged.time === null ? {} : { time: judged.time }),
          },
          {
            about: of.key,
            actual: { value: judged.amps, unit: 'A' },
            limit: { value: of.ratingA, unit: 'A' },
          },
        ),
      ]
    })
  },
}

const ORDER = ['warning', 'note', 'not-checked']

type Judged = { level: 'warning' | 'note' | 'not-checked' | null; time: Seconds | null }

/** Up to its rating a device is taken to hold. */
function judge({ band, ratingA }: FuseFacts, amps: Amps, lasts: Seconds): Judged {
  if (amps <= ratingA! * (1 + 1e-9)) return { level: null, time: null }
  if (!band) return { level: 'not-checked', time: null }
  const held = holdsAtLeast(band, amps)
  if (held >= lasts) return { level: null, time: held }
  const opens = clearsBy(band, amps)
  return opens !== null && opens <= lasts ? { level: 'warning', time: opens } : { level: 'note', time: held }
}
