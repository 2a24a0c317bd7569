import type { Design, Part } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Effects } from './effects'
import type { Standing } from './standing'

/** Chargers with a battery still behind their input: until they rest, what they feed stays live. O(devices²). */
export function runningOn(design: Design, { plan }: Effects, now: Standing): Part[] {
  const high = (d: number): string => now.netOf(plan.border.form.devices[d]!.positive)
  const live = new Set(plan.devices.flatMap(({ is }, d) => (is === 'battery' ? [high(d)] : [])))
  return plan.devices.flatMap(({ is, part, input }) => {
    const found = partById(design, part)
    return is === 'charger' && input !== -1 && found && live.has(high(input)) ? [found] : []
  })
}
