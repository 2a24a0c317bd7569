import type { PartId } from '../model/design'
import type { DeviceRole, PartDevice } from '../model/kind'
import type { Amps } from '../units'
import type { Border } from './network'
import type { Prepared } from './prepare'
import type { Solved, State } from './solved'
import { netSystems } from './systems'
import { type Figure, type GreatestCurrent, greatestOf } from './witness'

/** Loads between one pair of nets that ask for more than batteries and converters give them for long. */
export interface BeyondSupply {
  /** The load that alone asks for more; null: only all of them together do. */
  readonly alone: PartId | null
  readonly loads: readonly PartId[]
  readonly asksA: Amps
  readonly givesA: Amps
  readonly supplies: readonly PartId[]
}

interface Taker {
  readonly device: number
  readonly part: PartId
  readonly amps: Amps
}

const MORE = 1 + 1e-9

/**
 * Where limits of batteries and converters cut the worst cases short. Sources that come and go (mains, engine, sun) count
 * only where nothing else feeds the loads; what charges is no load here. Every make contact closed, each throw of the
 * changeovers; the greatest excess of each load, or of each group. Loads between the same nets compete for the same
 * supply, so one search a pair of nets tells of each alone as well.
 */
export function beyondSupply(border: Border, states: readonly State[]): BeyondSupply[] {
  const worst = new Map<string, BeyondSupply>()
  for (const { any, opened } of states) {
    if (opened) continue
    const whole = { p: any.p, greatest: any.envelope.greatest }
    const lasting = withLastingSources(border, any)
    for (const takers of takersByNets(border, any).values())
      for (const of of excesses(border, lasting ?? whole, takers) ?? excesses(border, whole, takers) ?? []) {
        const key = of.alone ?? of.loads.join(' ')
        const before = worst.get(key)
        if (!before || of.asksA / of.givesA > before.asksA / before.givesA) worst.set(key, of)
      }
  }
  return [...worst.values()]
}

interface Supply {
  readonly p: Prepared
  readonly greatest: (figure: Figure) => GreatestCurrent | undefined
}

/** null: nothing at all feeds them there. */
function excesses(border: Border, { p, greatest }: Supply, takers: readonly Taker[]): BeyondSupply[] | null {
  const most = greatest(new Map(takers.map((t) => [t.device, -1])))
  if (!most) return []
  const givesA = most.value
  if (givesA <= 0) return null
  const asksA = takers.reduce((sum, t) => sum + t.amps, 0)
  if (asksA <= givesA * MORE) return []
  const supplies = [
    ...new Set(
      [...most.currents].flatMap(([d, amps]) =>
        amps > 0 ? (border.devices.get(p.form.devices[d]!.id)?.part ?? []) : [],
      ),
    ),
  ]
  // What a load joined the wrong way round seems to give is told by another rule.
  if (supplies.length === 0) return []
  const alone = takers.filter((t) => t.amps > givesA * MORE)
  if (alone.length > 0)
    return alone.map((t) => ({ alone: t.part, loads: [t.part], asksA: t.amps, givesA, supplies }))
  return [{ alone: null, loads: [...new Set(takers.map((t) => t.part))], asksA, givesA, supplies }]
}

function takersByNets(border: Border, { p }: Solved): Map<string, Taker[]> {
  const charging = new Set(
    [...border.devices.values()].flatMap(({ part, device }) => (comesAndGoes(device) ? [part] : [])),
  )
  const groups = new Map<string, Taker[]>()
  for (const [id, { part, role }] of border.devices) {
    const device = p.deviceIndex.get(id)
    if (device === undefined || !takes(role, charging.has(part))) continue
    const amps = -p.min[device]!
    const nets = [p.net[p.negative[device]!]!, p.net[p.positive[device]!]!]
    if (!(amps > 0 && amps < Number.POSITIVE_INFINITY) || nets[0] === nets[1]) continue
    const key = nets.join(' ')
    groups.set(key, [...(groups.get(key) ?? []), { device, part, amps }])
  }
  return groups
}

const takes = (role: DeviceRole, charges: boolean): boolean =>
  role === 'two-way' || (role === 'load' && !charges)

const comesAndGoes = (device: PartDevice): boolean =>
  device.charging !== undefined || device.suppliedBy?.array !== undefined

/** The same network without what mains, an engine or the sun give; null where there is nothing of the kind. */
function withLastingSources(border: Border, { p }: Solved): Supply | null {
  const max = p.max.slice()
  for (const [id, { device, role }] of border.devices) {
    const d = p.deviceIndex.get(id)
    if (d === undefined || role === 'battery' || role === 'load') continue
    if (role === 'two-way' || device.holdsV === undefined) max[d] = 0
  }
  if (max.every((amps, d) => amps === p.max[d])) return null
  const lasting = { ...p, max }
  return { p: lasting, greatest: greatestOf(lasting, netSystems(lasting)) }
}
