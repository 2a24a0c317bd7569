/** Why a check was not made, by the code of the gap; a reason that is words already is told as it is. */
export const reasonWords = (code: string): string => REASONS[code] ?? code

const REASONS: Readonly<Record<string, string>> = {
  'missing-figure': 'a figure of a part is missing',
  'missing-run': 'size or length is missing',
  'missing-size': 'its size is missing, or the rule set has no ampacity for it',
  'missing-rating': 'a fuse has no rating',
  'source-cycle': 'sources feed each other in a ring',
  'not-in-network': 'it carries no power',
  'no-battery-feeds-it': 'no battery feeds it',
  'terminals-joined': 'its two terminals are joined to each other',
  'too-many-positions': 'switches stand in more combinations than were tried',
  'too-many-supplies': 'too many batteries can feed it',
  'too-many-two-way-joins': 'too many conductors here may carry current either way',
  'too-large': 'too many fuses bear on one meshed part',
  'no-convergence': 'the search for the worst case came to no end',
  'resistance-spread': 'resistances in one meshed part lie too far apart',
  'internal-resistance-missing': 'a battery states neither internal resistance nor short-circuit current',
  'resistance-is-limit': 'the resistance of a battery is only a "not more than" figure',
  'operating-times-unknown': 'no operating times are published here for the class of the fuse',
  'resistance-out-of-range': 'resistances in one meshed part lie too far apart',
}
