import { terminalsIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import type { Design, Part } from '../../model/design'
import type { Effects } from './effects'
import type { Handle } from './handles'
import type { Standing } from './standing'

/** Net of the positive of a device, and of what feeds it where it is a converter. */
export const highs = ({ plan }: Effects, now: Standing, d: number): string[] => {
  const { input } = plan.devices[d]!
  return [d, input].flatMap((k) => (k === -1 ? [] : [now.netOf(plan.border.form.devices[k]!.positive)]))
}

/** Nets on both sides of an open handle. */
export function sides({ plan }: Effects, now: Standing, { branches }: Handle): string[] {
  return branches.flatMap((id) => {
    const found = plan.border.branches.get(id)
    return found
      ? [now.netOf(`${found.part}/${found.branch.from}`), now.netOf(`${found.part}/${found.branch.to}`)]
      : []
  })
}

export function touches(effects: Effects, now: Standing, handle: Handle, what: 'battery' | 'array'): boolean {
  const nets = sides(effects, now, handle)
  return effects.plan.devices.some(
    ({ is, device }, d) =>
      (what === 'battery' ? is === 'battery' : device.array !== undefined) &&
      nets.some((net) => isAt(effects, now, d, net)),
  )
}

/** Either terminal of a device stands in a net. */
function isAt({ plan }: Effects, now: Standing, d: number, net: string): boolean {
  const { positive, negative } = plan.border.form.devices[d]!
  return now.netOf(positive) === net || now.netOf(negative) === net
}

/** Parts with a terminal on the positive of a battery, or of an array: bars, fuses, switches, converters. */
export function liveParts(design: Design, { plan }: Effects, now: Standing): Part[] {
  const live = new Set<string>()
  plan.devices.forEach(({ is, device }, d) => {
    if (is === 'battery' || device.array) live.add(now.netOf(plan.border.form.devices[d]!.positive))
  })
  return design.parts.filter((part) => {
    const group = kindOf(part.kind)?.group
    if (group === 'stores' || group === 'sources' || group === 'loads') return false
    const keys = (terminalsIn(part) ?? []).filter((t) => t.pole !== 'data' && t.pole !== 'mains')
    return keys.some((t) => live.has(now.netOf(`${part.id}/${t.key}`)))
  })
}
