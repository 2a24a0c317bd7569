import type { Accepted, Design } from '../model/design'
import { GRAVITY } from '../model/level'
import type { Finding } from './finding'

export interface AcceptedFinding {
  readonly finding: Finding
  readonly accepted: Accepted
}

/**
 * Findings that stand open, and those that somebody has accepted, in the order of the list. One that has become graver
 * than it was when it was accepted is open again. O(findings + accepted).
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
    if (known && GRAVITY[finding.level] <= GRAVITY[known.level]) accepted.push({ finding, accepted: known })
    else open.push(finding)
  }
  return { open, accepted }
}
