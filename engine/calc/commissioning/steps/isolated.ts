import type { PartId } from '../../../model/design'
import { netOf, polesOf, probe } from '../probes'
import type { Rig } from '../rig'
import type { Expected, Probe, Reading, TestStep } from '../step'

/** What the steps with an ohmmeter share: everything is isolated, and where the poles can be touched. */

export const isolated = (
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

export const reading = (
  key: string,
  asks: Reading['asks'],
  at: readonly Probe[],
  expected: Expected,
): Reading => ({
  key,
  asks,
  instrument: 'ohmmeter',
  at,
  conductors: [],
  expected,
})

/** Bars and blocks in nets that some battery or held output feeds. */
export function positiveBars(rig: Rig): Probe[] {
  const { border, all, devices } = rig.plan
  const fed = new Set(
    devices.flatMap((x, d) => (x.is === 'battery' || x.is === 'held' ? [all.net[all.positive[d]!]!] : [])),
  )
  return [...border.bars.keys()].map((id) => probe(id)).filter((at) => fed.has(netOf(rig, at)))
}

/** The lowest post of each system of batteries: one for each net of negatives. */
export function negativePosts(rig: Rig): Probe[] {
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
