import type { PartDeviceRef } from '../calc/network'
import { kindOf } from '../kinds/all'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import type { Volts } from '../units'
import type { Case } from './rule'

/**
 * Nominal voltage between the two nets of a device, from the batteries and converters that hold them apart; null
 * where none does. With every contact closed; of several ways the first counts. O(nets + devices).
 */
export function nominalVolts(c: Case): (device: string) => Volts | null {
  const links = new Map<number, { to: number; volts: Volts }[]>()
  const link = (from: number, to: number, volts: Volts): void => {
    const list = links.get(from)
    if (list) list.push({ to, volts })
    else links.set(from, [{ to, volts }])
  }
  for (const [id, ref] of c.border.devices) {
    const volts = holds(c, ref)
    const d = c.p.deviceIndex.get(id)
    if (volts === null || d === undefined) continue
    const low = c.p.net[c.p.negative[d]!]!
    const high = c.p.net[c.p.positive[d]!]!
    link(low, high, volts)
    link(high, low, -volts)
  }
  const place = new Map<number, { tree: number; volts: Volts }>()
  for (const root of links.keys()) {
    if (place.has(root)) continue
    place.set(root, { tree: root, volts: 0 })
    const open = [root]
    for (const net of open)
      for (const { to, volts } of links.get(net) ?? []) {
        if (place.has(to)) continue
        place.set(to, { tree: root, volts: place.get(net)!.volts + volts })
        open.push(to)
      }
  }
  return (device) => {
    const d = c.p.deviceIndex.get(device)
    if (d === undefined) return null
    const low = place.get(c.p.net[c.p.negative[d]!]!)
    const high = place.get(c.p.net[c.p.positive[d]!]!)
    return low && high && low.tree === high.tree ? high.volts - low.volts : null
  }
}

/** Volts between the terminals of a device that holds its voltage: the nominal ones of a battery, or a converter's output. */
function holds(c: Case, { part: id, device, role }: PartDeviceRef): Volts | null {
  const part = partById(c.design, id)
  const kind = part && kindOf(part.kind)
  if (!kind) return null
  if (role !== 'battery') return device.holdsV ?? null
  const volts = Number(complete(kind.fields, part.values).volts)
  return volts > 0 ? volts : null
}
