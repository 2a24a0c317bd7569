import { useLatest } from './latest'
import { say } from './say'
import { LEVELS } from './tally'
import { showFinding, useView } from './view'

/** Goes to the next or previous finding, in the order of the list. */
export function stepFinding(by: 1 | -1): void {
  const { findings } = useLatest.getState()
  const list = LEVELS.flatMap((level) => findings.filter((f) => f.level === level))
  if (!list.length) {
    say('There are no findings.')
    return
  }
  const here = list.findIndex((f) => f.key === useView.getState().finding)
  const next = list[here < 0 ? (by > 0 ? 0 : list.length - 1) : (here + by + list.length) % list.length]!
  showFinding(next.key, next.parts, next.conductors)
}
