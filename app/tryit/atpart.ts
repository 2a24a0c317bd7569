import { type Control, figure, type OperatingPoint, type Part, type PartId } from '../../engine'
import { isOn, stateWords } from './flip'
import type { Trial } from './trial'

export interface PartWords {
  readonly text: string
  /** Something is open, out or off: it is told from the rest by a filled tag. */
  readonly off: boolean
}

/** The controls of each part. */
export function controlsByPart(controls: readonly Control[]): ReadonlyMap<PartId, readonly Control[]> {
  const by = new Map<PartId, Control[]>()
  for (const c of controls) by.set(c.part, [...(by.get(c.part) ?? []), c])
  return by
}

/** What stands at a part in use, in a few words; null: nothing worth saying. */
export function partWords(
  part: Part,
  own: readonly Control[],
  { state }: Trial,
  point: OperatingPoint,
): PartWords | null {
  const shunt = point.shunts.get(part.id)
  if (shunt) {
    const off = Math.abs(shunt.off) >= 0.05
    const text = `shows ${figure(shunt.shows, 'A')}${off ? `, truly ${figure(shunt.truth, 'A')}` : ''}`
    return { text, off }
  }
  const fuses = own.filter((c) => c.is === 'fuse')
  const out = fuses.filter((c) => !isOn(c, state))
  if (fuses.length > 0) return out.length === 0 ? null : { text: outWords(out, fuses), off: true }
  const relay = [...point.relays].filter(([id]) => id.startsWith(`${part.id}/`))
  if (relay.length > 0) {
    const fed = relay.some(([, on]) => on)
    return { text: fed ? 'coil fed' : 'coil not fed', off: !fed }
  }
  const [first] = own
  if (!first) return null
  if (first.is === 'contact' || first.is === 'throw')
    return { text: stateWords(first, state), off: first.is === 'contact' && !isOn(first, state) }
  // A converter that works both ways is a load and a source under one id.
  const devices = new Set(own.map((c) => c.id))
  const total = [...devices].reduce((sum, id) => sum + (point.devices.get(id)?.amps ?? 0), 0)
  const used = own.some((c) => isOn(c, state))
  if (!used) return { text: 'off', off: true }
  const sign = first.is === 'load' ? Math.abs(total) : total
  return { text: figure(sign, 'A'), off: false }
}

/** "out", or which ways of a block are out. */
function outWords(out: readonly Control[], of: readonly Control[]): string {
  if (of.length === 1) return 'out'
  return `${out.map((c) => c.id.slice(c.id.indexOf('/') + 1)).join(', ')} out`
}
