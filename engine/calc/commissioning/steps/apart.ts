import { apart, notKnown } from '../expect'
import { negativeFor } from '../probes'
import { ohmsBetween } from '../resistance'
import type { Rig } from '../rig'
import type { Reading, TestStep } from '../step'
import { isolated, negativePosts, positiveBars, reading } from './isolated'

/** What should be apart is: plus from minus, and both from the frame where no bond to it is drawn. */
export const apartSteps = (rig: Rig): TestStep[] => [...poleSteps(rig), ...offFrameSteps(rig)]

/** Positive against negative, wherever a bar or a block gathers positives. */
function poleSteps(rig: Rig): TestStep[] {
  const bare = ohmsBetween(rig, (b) => b.kind !== 'fuse' && b.kind !== 'contact')
  const readings = positiveBars(rig).flatMap((at): Reading[] => {
    const negative = negativeFor(rig, at)
    if (!negative) return []
    const joined = bare(at, negative) !== undefined
    const expected = joined ? notKnown('joined-as-drawn', [at.part, negative.part]) : apart()
    return [reading(at.part, 'apart', [at, negative], expected)]
  })
  return readings.length === 0
    ? []
    : [
        isolated(
          'poles',
          'apart',
          readings.map((r) => r.at[0]!.part),
          readings,
        ),
      ]
}

/** Where no bond to the frame is drawn, neither pole has anything to do with it. */
function offFrameSteps(rig: Rig): TestStep[] {
  if (rig.plan.border.frames.length > 0) return []
  const at = [...positiveBars(rig), ...negativePosts(rig)]
  const readings = at.map((p) => reading(`${p.part}/${p.terminal ?? ''}`, 'apart-frame', [p], apart()))
  return readings.length === 0
    ? []
    : [isolated('off-frame', 'off-frame', [...new Set(at.map((p) => p.part))], readings)]
}
