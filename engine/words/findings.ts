import type { Accepted, Design } from '../model/design'
import type { Finding } from '../rules/finding'
import { benchWords } from './bench'
import { currentWords } from './currents'
import { faultWords } from './faults'
import { joinWords } from './joins'
import { meterWords } from './meters'
import { protectionWords } from './protection'
import { pvWords } from './pv'
import { ratingWords } from './ratings'
import type { Sentence, Wording } from './sentence'

const ALL = new Map<string, Wording>(
  [
    protectionWords,
    faultWords,
    currentWords,
    ratingWords,
    pvWords,
    meterWords,
    joinWords,
    benchWords,
  ].flatMap((words) => Object.entries(words)),
)

/** The words of a finding. Throws a RangeError for a rule without words: a test holds that there is none. */
export function sentence(finding: Finding, design: Design): Sentence {
  const wording = ALL.get(finding.rule)
  if (!wording) throw new RangeError(`rule ${finding.rule} has no words`)
  return wording(finding, design)
}

export const LEVEL_WORDS = {
  danger: 'Danger',
  warning: 'Warning',
  note: 'Note',
  'not-checked': 'Not checked',
} as const

/** "Accepted by R. Hale, 2026-03-04: …" */
export const acceptedWords = ({ reason, by, date }: Accepted): string =>
  `Accepted${[by && ` by ${by}`, date && `, ${date}`].filter(Boolean).join('')}: ${reason}`
