import { kindOf } from '../../kinds/all'
import type { ConductorId, PartId } from '../../model/design'
import { conductorsAt, partById } from '../../model/lookup'
import type { PlannedDevice } from '../operating/plan'
import type { OperatingPoint } from '../operating/state'
import { type Rig, voltsBetween } from './rig'
import type { Probe } from './step'

export const probe = (part: PartId, terminal: string | null = null): Probe => ({ part, terminal })

/** The two terminals of a device. */
export const polesOf = ({ part, device }: PlannedDevice): readonly [Probe, Probe] => [
  probe(part, device.positive),
  probe(part, device.negative),
]

/** Conductors on a terminal: what a clamp meter is put round. */
export const conductorsOn = (rig: Rig, { part, terminal }: Probe): ConductorId[] =>
  conductorsAt(rig.design, part, terminal ?? undefined)
    .filter((c) => rig.plan.border.conductors.has(c.id))
    .map((c) => c.id)

/** Terminal of a probe as the load flow calls it; a part as a whole: its bar. */
export const terminalKey = (rig: Rig, { part, terminal }: Probe): string =>
  terminal === null ? (rig.plan.border.bars.get(part) ?? `${part}/`) : `${part}/${terminal}`

/** Node of a probe in the network with everything closed; −1: it is no part of it. */
export function nodeOf(rig: Rig, at: Probe): number {
  const { border, all } = rig.plan
  const key = terminalKey(rig, at)
  return all.nodeIndex.get(border.nodeOf.get(key) ?? key) ?? -1
}

export const netOf = (rig: Rig, at: Probe): number => {
  const node = nodeOf(rig, at)
  return node === -1 ? -1 : rig.plan.all.net[node]!
}

export const volts = (rig: Rig, point: OperatingPoint, high: Probe, low: Probe): number =>
  voltsBetween(point, terminalKey(rig, high), terminalKey(rig, low))

/** The negative that belongs to a place: a bar near it, or the post of the battery. null: nothing feeds it. */
export function negativeFor(rig: Rig, at: Probe): Probe | null {
  const foot = footOf(rig, netOf(rig, at))
  if (!foot) return null
  const post = probe(foot.part, foot.device.negative)
  return barNear(rig, netOf(rig, post), partById(rig.design, at.part)?.location ?? '') ?? post
}

/** Outermost posts of what feeds a place: of a string of batteries the highest and the lowest. null: nothing does. */
export function supplyPosts(rig: Rig, at: Probe): readonly [high: Probe, low: Probe] | null {
  const { all, devices } = rig.plan
  const net = netOf(rig, at)
  const top = ['battery', 'held']
    .map((is) => devices.find((x, d) => x.is === is && all.net[all.positive[d]!] === net))
    .find((x) => x !== undefined)
  const foot = footOf(rig, net)
  if (!top || !foot) return null
  return [probe(top.part, top.device.positive), probe(foot.part, foot.device.negative)]
}

/** The device at the foot of what feeds a net: of a string of batteries the lowest. */
function footOf({ plan: { all, devices } }: Rig, net: number): PlannedDevice | undefined {
  const feeding = (of: number, is: (x: PlannedDevice) => boolean): number =>
    devices.findIndex((x, d) => is(x) && all.net[all.positive[d]!] === of && all.net[all.negative[d]!] !== of)
  const isBattery = (x: PlannedDevice): boolean => x.is === 'battery'
  let found = feeding(net, isBattery)
  if (found === -1) found = feeding(net, (x) => x.is === 'held')
  if (found === -1) found = feeding(net, () => true)
  const seen = new Set<number>()
  while (found !== -1 && !seen.has(found)) {
    seen.add(found)
    const below = feeding(all.net[all.negative[found]!]!, isBattery)
    if (below === -1) break
    found = below
  }
  return devices[found]
}

/** A bar of a net, in the same place where there is one. */
function barNear(rig: Rig, net: number, location: string): Probe | null {
  const bars = [...rig.plan.border.bars.keys()].filter(
    (id) => kindOf(partById(rig.design, id)?.kind ?? '')?.key === 'busbar' && netOf(rig, probe(id)) === net,
  )
  const here = bars.find((id) => partById(rig.design, id)?.location === location)
  const any = here ?? bars[0]
  return any === undefined ? null : probe(any)
}
