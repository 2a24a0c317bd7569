import { kindOf } from '../../../kinds/all'
import type { PartId } from '../../../model/design'
import { partById } from '../../../model/lookup'
import { apart, atMostOhms, notKnown } from '../expect'
import { conductorsOn, negativeFor, netOf, polesOf, probe } from '../probes'
import { ohmsBetween } from '../resistance'
import type { Rig } from '../rig'
import type { Expected, Probe, Reading, TestStep } from '../step'

/** Nothing is joined that should be apart, and what should be joined is: measured with everything isolated and fuses out. */
export function resistanceSteps(rig: Rig): TestStep[] {
  return [
    ...apartSteps(rig),
    ...offFrameSteps(rig),
    ...returnSteps(rig),
    ...frameSteps(rig),
    ...shuntSteps(rig),
  ]
}

const isolated = (
  key: string,
  tells: TestStep['tells'],
  parts: readonly PartId[],
  readings: readonly Reading[],
): TestStep => ({
  key: `resistance/${key}`,
  group: 'resistance',
  tells,
  parts,
  conductors: [],
  cautions: ['everything-isolated', 'no-ohms-on-live', 'frees-electronics'],
  setting: { isolated: true },
  readings,
})

const reading = (key: string, asks: Reading['asks'], at: readonly Probe[], expected: Expected): Reading => ({
  key,
  asks,
  instrument: 'ohmmeter',
  at,
  conductors: [],
  expected,
})

/** Positive against negative, wherever a bar or a block gathers positives. */
function apartSteps(rig: Rig): TestStep[] {
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

/** Bars and blocks in nets that some battery or held output feeds. */
function positiveBars(rig: Rig): Probe[] {
  const { border, all, devices } = rig.plan
  const fed = new Set(
    devices.flatMap((x, d) => (x.is === 'battery' || x.is === 'held' ? [all.net[all.positive[d]!]!] : [])),
  )
  return [...border.bars.keys()].map((id) => probe(id)).filter((at) => fed.has(netOf(rig, at)))
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

/** The lowest post of each system of batteries: one for each net of negatives. */
function negativePosts(rig: Rig): Probe[] {
  const { all, devices } = rig.plan
  const positives = new Set(
    devices.flatMap((x, d) => (x.is === 'battery' ? [all.net[all.positive[d]!]!] : [])),
  )
  const byNet = new Map<number, Probe>()
  devices.forEach((x, d) => {
    const net = all.net[all.negative[d]!]!
    if (x.is === 'battery' && !positives.has(net) && !byNet.has(net)) byNet.set(net, polesOf(x)[1])
  })
  return [...byNet.values()]
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

export const isBar = (rig: Rig, id: PartId): boolean =>
  kindOf(partById(rig.design, id)?.kind ?? '')?.key === 'busbar'
