import type { Accepted, Design } from '../model/design'
import { GRAVITY } from '../model/level'
import type { Finding } from './finding'

export interface AcceptedFinding {
  readonly finding: Finding
  readonly accepted: Accepted
}

/**
 * Findings that stand open, and those that somebody has accepted, in the order of the list. One that has become graver
 * than it was when it was accepted, or further beyond its limit, is open again. O(findings + accepted).
 */
export function sortAccepted(
  design: Design,
  findings: readonly Finding[],
): { readonly open: readonly Finding[]; readonly accepted: readonly AcceptedFinding[] } {
  const byKey = new Map((design.accepted ?? []).map((a) => [a.key, a]))
  const open: Finding[] = []
  const accepted: AcceptedFinding[] = []
  for (const finding of findings) {
    const known = byKey.get(finding.key)
    if (known && !isWorse(finding, known)) accepted.push({ finding, accepted: known })
    else open.push(finding)
  }
  return { open, accepted }
}

/** Part by which a figure may move: sums of the same currents differ by rounding. */
const TOLERANCE = 0.001

function isWorse({ level, actual, limit }: Finding, then: Accepted): boolean {
  if (GRAVITY[level] > GRAVITY[then.level]) return true
  if (actual === undefined || then.actual === undefined || actual.value === then.actual) return false
  if (actual.value === 'unlimited' || then.actual === 'unlimited') return actual.value === 'unlimited'
  // A limit may lie above or below; without one, a figure that has moved at all is another one.
  const from = typeof limit?.value === 'number' ? limit.value : then.actual
  const beyond = Math.abs(then.actual - from)
  return Math.abs(actual.value - from) > beyond + TOLERANCE * Math.abs(then.actual)
}
