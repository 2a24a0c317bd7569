import type { TestEntry } from '../../model/commissioning'

export type EntryResult = 'passed' | 'failed'

/** What an entry came to, against what was expected when it was made. A judgement passes by its words alone. */
export function resultOf({ found, expected, judged, remark }: TestEntry): EntryResult {
  if (expected === null) return judged === 'good' && remark.trim() !== '' ? 'passed' : 'failed'
  if (typeof found === 'boolean') return found && expected.seen !== undefined ? 'passed' : 'failed'
  if (found === null || expected.seen !== undefined) return 'failed'
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = expected
  return found >= least && found <= most ? 'passed' : 'failed'
}
