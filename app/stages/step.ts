import { setStage, useView } from '../store/view'
import { STAGES } from './stages'

/** One stage on (1) or back (-1); round from the last to the first. */
export function stepStage(by: 1 | -1): void {
  const at = STAGES.findIndex((s) => s.key === useView.getState().stage)
  const next = STAGES[(at + by + STAGES.length) % STAGES.length]
  if (next) setStage(next.key)
}
