import { sortAccepted } from '../../engine'
import { useLatest } from './latest'
import { useOpen } from './open'
import { say } from './say'
import { LEVELS } from './tally'
import { showFinding, useView } from './view'

/** Goes to the next or previous finding that stands open, in the order of the list. */
export function stepFinding(by: 1 | -1): void {
  const { open } = sortAccepted(useOpen.getState().design, useLatest.getState().findings)
  const list = LEVELS.flatMap((level) => open.filter((f) => f.level === level))
  if (!list.length) {
    say('No finding stands open.')
    return
  }
  const here = list.findIndex((f) => f.key === useView.getState().finding)
  const next = list[here < 0 ? (by > 0 ? 0 : list.length - 1) : (here + by + list.length) % list.length]!
  showFinding(next.key, next.parts, next.conductors)
}
