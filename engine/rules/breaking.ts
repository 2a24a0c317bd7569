import { leastKnown } from '../calc/answer'
import type { DeviceFault } from '../calc/faultanswers'
import { fuseFacts } from '../calc/fusefacts'
import { type Zones, zonesOf } from '../calc/zones'
import type { PartId } from '../model/design'
import { capacityHolds } from './breakingvoltage'
import type { Finding } from './finding'
import { type Case, found, type Rule } from './rule'
import { isWhole } from './untriedshorts'

/**
 * K1: a short circuit can drive more through a fuse or breaker than it can interrupt: it may burst, and the arc burns on.
 * A warning where every way from a battery passes a device that can interrupt what flows there: it may clear first,
 * but no maker's statement that the two work together is known to the drawing, so no back-up protection is claimed. Where
 * a figure is missing, what flows for certain is judged, and a device before it that bears that is told as perhaps able.
 */
export const breaking: Rule = {
  id: 'K1',
  looksFor: 'fuses and breakers that cannot interrupt the fault current there',
  check: (c) => {
    const capacities = fuseFacts(c.design, c.border)
    const able = new Set<number>()
    const perhapsAble = new Set<number>()
    const worst = new Map<PartId, { id: string; amps: number; capacityA: number; ways: string[] }>()
    for (const [id, { part, greatest }] of c.answers.faults.devices) {
      const of = capacities.get(id)
      const capacityA = of?.breakingA ?? null
      const e = c.p.branchIndex.get(id)
      const amps = ampsOf(greatest)
      if (!of || of.ratingA === null || capacityA === null || amps === null || e === undefined) continue
      if (amps <= capacityA * (1 + 1e-9)) {
        if (capacityHolds(c, of) && isWhole(greatest)) ('value' in greatest ? able : perhapsAble).add(e)
        continue
      }
      const before = worst.get(part)
      const ways = [...(before?.ways ?? []), of.name].filter((name) => name !== '')
      worst.set(part, before && before.amps >= amps ? { ...before, ways } : { id, amps, capacityA, ways })
    }
    const zones = zonesOf(c.p, (e) => able.has(e) || perhapsAble.has(e))
    return [...worst].map(([part, w]) => findingOf(c, part, w, zones, perhapsAble))
  },
}

function ampsOf(answer: DeviceFault['greatest']): number | null {
  const amps = leastKnown(answer)
  return typeof amps === 'number' ? amps : null
}

function findingOf(
  c: Case,
  part: PartId,
  w: { id: string; amps: number; capacityA: number; ways: string[] },
  zones: Zones,
  perhapsAble: ReadonlySet<number>,
): Finding {
  const e = c.p.branchIndex.get(w.id)!
  // It is no barrier itself: both of its ends are in one zone.
  const [zone] = zones.ends(e)
  const before = zones.at[zone]!
  const backed = zones.hasBattery[zone] === 0 && before.length > 0
  const upstream = backed
    ? [...new Set(before.flatMap((b) => c.border.branches.get(c.p.form.branches[b]!.id)?.part ?? []))]
    : []
  const at = c.answers.faults.devices.get(w.id)?.greatest
  const place = at && 'value' in at ? at.value.at : null
  return found(
    'K1',
    backed ? 'warning' : 'danger',
    'rating',
    { parts: [part] },
    {
      part,
      ways: w.ways,
      upstream,
      perhaps: backed && before.some((b) => perhapsAble.has(b)),
      at: place?.part ?? '',
    },
    { actual: { value: w.amps / 1000, unit: 'kA' }, limit: { value: w.capacityA / 1000, unit: 'kA' } },
  )
}
