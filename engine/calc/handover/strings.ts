import { Unions } from '../../math/unions'
import type { Design, Part } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Plan } from '../operating/plan'
import type { Standing } from './standing'

/** Batteries in series hang together: the negative of one is the positive of the next. */
export interface BatteryString {
  readonly parts: readonly Part[]
  readonly devices: readonly number[]
  /** Nets of their positives. */
  readonly highs: readonly string[]
  /** Nets of all their posts. */
  readonly nets: readonly string[]
}

/** Strings of batteries in one state of the switches; a battery by itself is one. O(batteries²). */
export function stringsOf(design: Design, plan: Plan, now: Standing): BatteryString[] {
  const cells = plan.devices.flatMap(({ is, part: id }, d) => {
    const part = is === 'battery' ? partById(design, id) : undefined
    const { positive, negative } = plan.border.form.devices[d]!
    return part ? [{ part, d, high: now.netOf(positive), low: now.netOf(negative) }] : []
  })
  const joins = new Unions()
  for (const a of cells)
    for (const b of cells) if (a !== b && a.low === b.high) joins.join(`${a.d}`, `${b.d}`)
  const groups = new Map<number, typeof cells>()
  for (const cell of cells) {
    const key = joins.numberOf(`${cell.d}`)
    groups.set(key, [...(groups.get(key) ?? []), cell])
  }
  return [...groups.values()].map((of) => ({
    parts: of.map((c) => c.part),
    devices: of.map((c) => c.d),
    highs: of.map((c) => c.high),
    nets: of.flatMap((c) => [c.high, c.low]),
  }))
}
