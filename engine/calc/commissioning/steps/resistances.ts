import { apart, atMostOhms, notKnown } from '../expect'
import { conductorsOn, netOf, probe } from '../probes'
import { ohmsBetween } from '../resistance'
import type { Rig } from '../rig'
import type { Reading, TestStep } from '../step'
import { apartSteps } from './apart'
import { isolated, negativePosts, reading } from './isolated'

/** Nothing is joined that should be apart, and what should be joined is: measured with everything isolated and fuses out. */
export function resistanceSteps(rig: Rig): TestStep[] {
  return [...apartSteps(rig), ...returnSteps(rig), ...frameSteps(rig), ...shuntSteps(rig)]
}

/** Negative bars back to the battery. */
function returnSteps(rig: Rig): TestStep[] {
  const closed = ohmsBetween(rig, () => true)
  const posts = negativePosts(rig)
  const readings = posts.flatMap((post) =>
    [...rig.plan.border.bars.keys()].flatMap((id): Reading[] => {
      const bar = probe(id)
      if (netOf(rig, bar) !== netOf(rig, post)) return []
      const ohms = closed(bar, post)
      return ohms === undefined ? [] : [reading(id, 'resistance', [bar, post], atMostOhms(ohms))]
    }),
  )
  return readings.length === 0
    ? []
    : [
        isolated(
          'returns',
          'returns',
          readings.map((r) => r.at[0]!.part),
          readings,
        ),
      ]
}

/** Bonds to the vehicle's frame. */
function frameSteps(rig: Rig): TestStep[] {
  const closed = ohmsBetween(rig, () => true)
  const posts = negativePosts(rig)
  const readings = rig.plan.border.frames.flatMap(({ part, node }): Reading[] => {
    const terminal = node.slice(0, part.length + 1) === `${part}/` ? node.slice(part.length + 1) : null
    const at = probe(part, terminal)
    const post = posts.find((x) => netOf(rig, x) === netOf(rig, at))
    const ohms = post && closed(at, post)
    if (post === undefined || ohms === undefined)
      return [reading(part, 'resistance', [at], notKnown('not-joined', [part]))]
    return [reading(part, 'resistance', [at, post], atMostOhms(ohms))]
  })
  return readings.length === 0
    ? []
    : [
        isolated(
          'frame',
          'frame',
          readings.map((r) => r.at[0]!.part),
          readings,
        ),
      ]
}

/** No way round a load-side shunt: its far lead lifted, the two sides are apart. */
function shuntSteps(rig: Rig): TestStep[] {
  return rig.plan.shunts.flatMap(({ part, branch: id }): TestStep[] => {
    const { branch } = rig.plan.border.branches.get(id)!
    if (branch.measures !== 'load') return []
    const [far, near] = [probe(part, branch.from), probe(part, branch.to)]
    const without = ohmsBetween(rig, (b) => b.id !== id && b.kind !== 'fuse')
    const joined = without(far, near) !== undefined
    const expected = joined ? notKnown('joined-as-drawn', [part]) : apart()
    const round = { ...reading('round', 'apart', [far, near], expected), conductors: conductorsOn(rig, near) }
    return [isolated(`round/${part}`, 'way-round-shunt', [part], [round])]
  })
}
