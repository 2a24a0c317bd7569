import type { Answer, Level, MaybeUnlimited, RunAnswer, WorstCase } from '../../engine'

/** The figures that decide on a conductor: its current, what its protection lets last, its ampacity. */
export type GlanceKey = 'carries' | 'lets' | 'bears'

/** →: from the first end to the second. */
type Way = '→' | '←'

interface Carries {
  readonly way: Way
  readonly testId: 'forward' | 'backward'
  readonly witness: Answer<WorstCase>
  readonly amps: Answer<MaybeUnlimited>
  /** The other direction, where it can carry anything, or nobody knows. */
  readonly other: {
    readonly way: Way
    readonly testId: 'forward' | 'backward'
    readonly answer: Answer<WorstCase>
  } | null
}

/** The greater direction, the end at which more can last, the ampacity, and how grave the verdict is. */
export function glanceOf(run: RunAnswer): {
  readonly carries: Carries
  readonly lets: Answer<MaybeUnlimited>
  readonly bears: Answer<MaybeUnlimited>
  readonly level: Level | null
} {
  const back = rank(run.backward) > rank(run.forward)
  const witness = back ? run.backward : run.forward
  const less = back ? run.forward : run.backward
  const end = rank(run.to) > rank(run.from) ? run.to : run.from
  return {
    carries: {
      way: back ? '←' : '→',
      testId: back ? 'backward' : 'forward',
      witness,
      amps: ampsOf(witness),
      other:
        rank(less) > 0
          ? { way: back ? '→' : '←', testId: back ? 'forward' : 'backward', answer: less }
          : null,
    },
    lets: ampsOf(run.sustained ?? end),
    bears: 'value' in run.ampacity ? { value: run.ampacity.value.amps } : run.ampacity,
    level: !('value' in run.verdict) ? 'not-checked' : LEVELS[run.verdict.value],
  }
}

const LEVELS = {
  unprotected: 'danger',
  'device-too-big': 'danger',
  'sources-add-up': 'warning',
  'thin-return': 'danger',
  'near-source': null,
  protected: null,
} as const

/** What is not known may be anything: it counts as the greatest. */
const rank = (answer: Answer<{ readonly amps: MaybeUnlimited }>): number =>
  !('value' in answer) || answer.value.amps === 'unlimited' ? Number.POSITIVE_INFINITY : answer.value.amps

const ampsOf = (answer: Answer<{ readonly amps: MaybeUnlimited }>): Answer<MaybeUnlimited> =>
  'value' in answer ? { value: answer.value.amps } : answer
