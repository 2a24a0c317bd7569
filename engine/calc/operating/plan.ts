import { blocksOf } from '../../math/blocks'
import type { Design, PartId } from '../../model/design'
import type { PartDevice, WorkedBy } from '../../model/kind'
import type { Amps } from '../../units'
import { deviceShares } from '../deviceshares'
import { meter } from '../meters'
import { type Border, networkOf } from '../network'
import { type Prepared, prepare } from '../prepare'

/**
 * What a device is at an operating point. A follower is the input of a converter: it draws what the output asks. Outputs:
 * a charger is fed by a battery, a controller by an array, and `held` holds a voltage. Unknown: a figure is missing.
 */
export type Behaves =
  | 'battery'
  | 'load'
  | 'coil'
  | 'source'
  | 'two-way'
  | 'array'
  | 'charger'
  | 'controller'
  | 'held'
  | 'follower'
  | 'unknown'

export interface PlannedDevice {
  readonly id: string
  readonly part: PartId
  readonly device: PartDevice
  readonly is: Behaves
  /** Greatest current of a source or an output; 0 where there is none. */
  readonly limitA: Amps
  /** Index of a converter's input; −1 where there is none. */
  readonly input: number
  /** Charger: sources at its input, one of which must give before it does; empty where none is drawn. */
  readonly waitsFor: readonly number[]
}

export interface PlannedContact {
  readonly id: string
  readonly part: PartId
  /** `${part}/${name}` of a changeover, and the position in which it is closed. */
  readonly changeover: { readonly id: string; readonly position: string; readonly rest: string } | null
  readonly workedBy: WorkedBy | null
}

export interface PlannedShunt {
  readonly part: PartId
  readonly branch: string
  /** A that it should show for each amp that a device delivers. */
  readonly truth: Float64Array
}

/** What does not change while a design is switched: worked out once for each design. */
export interface Plan {
  readonly border: Border
  /** Everything closed. */
  readonly all: Prepared
  /** In the order of the network's devices. */
  readonly devices: readonly PlannedDevice[]
  readonly contacts: readonly PlannedContact[]
  readonly shunts: readonly PlannedShunt[]
  readonly systemV: number
}

const remembered = new WeakMap<Design, Plan>()

/** O(parts + conductors) the first time. */
export function planOf(design: Design): Plan {
  const known = remembered.get(design)
  if (known) return known
  const border = networkOf(design, 'none', new Set())
  const all = prepare(border.form)
  const contacts = contactsOf(border)
  const plan = {
    border,
    all,
    devices: devicesOf(border, all, contacts),
    contacts,
    shunts: shuntsIn(border, all),
    systemV: design.settings.systemV,
  }
  remembered.set(design, plan)
  return plan
}

function devicesOf(border: Border, all: Prepared, contacts: readonly PlannedContact[]): PlannedDevice[] {
  const coils = new Set(
    contacts.flatMap(({ part, workedBy: w }) => {
      if (w?.by === 'coil') return [`${part}/${w.coil}`]
      return w?.by === 'pulses' ? [`${part}/${w.close}`, `${part}/${w.open}`] : []
    }),
  )
  const inputs = new Map<string, string>()
  for (const [id, { part, device }] of border.devices)
    if (device.suppliedBy) inputs.set(id, `${part}/${device.suppliedBy.device}`)
  const followers = new Set(inputs.values())
  const devices = border.form.devices.map(({ id }): PlannedDevice => {
    const { part, device } = border.devices.get(id)!
    const is = followers.has(id) ? 'follower' : coils.has(id) ? 'coil' : roleOf(device)
    const limitA = typeof device.maxA === 'number' ? device.maxA : 0
    const input = all.deviceIndex.get(inputs.get(id) ?? '') ?? -1
    return { id, part, device, is, limitA, input, waitsFor: [] }
  })
  const at = (d: number): number => all.net[all.positive[d]!]!
  return devices.map((x) => {
    if (x.is !== 'charger') return x
    return {
      ...x,
      waitsFor: devices.flatMap((s, d) => (s.is === 'source' && at(d) === at(x.input) ? [d] : [])),
    }
  })
}

function roleOf(device: PartDevice): Behaves {
  if (device.role === 'battery') return 'battery'
  if (device.suppliedBy?.efficiency === null || device.holdsV === null) return 'unknown'
  if (device.array) return device.array.watts === null || device.array.volts === null ? 'unknown' : 'array'
  if (device.role === 'load') return device.minA === null && !device.atFullUse ? 'unknown' : 'load'
  if (device.minA === null || typeof device.maxA !== 'number') return 'unknown'
  if (device.role === 'two-way') return 'two-way'
  if (!device.suppliedBy) return 'source'
  if (device.holdsV !== undefined) return 'held'
  return device.suppliedBy.array ? 'controller' : 'charger'
}

function contactsOf(border: Border): PlannedContact[] {
  const rest = new Map<string, string>()
  const contacts = [...border.branches].filter(([, { branch }]) => branch.kind === 'contact')
  for (const [, { part, branch }] of contacts) {
    if (!branch.changeover) continue
    const id = `${part}/${branch.changeover.name}`
    const atRest = branch.workedBy?.by === 'coil' && branch.workedBy.closed === 'at-rest'
    if (atRest || !rest.has(id)) rest.set(id, branch.changeover.position)
  }
  return contacts.map(([id, { part, branch }]) => ({
    id,
    part,
    changeover: branch.changeover
      ? {
          id: `${part}/${branch.changeover.name}`,
          position: branch.changeover.position,
          rest: rest.get(`${part}/${branch.changeover.name}`)!,
        }
      : null,
    workedBy: branch.workedBy ?? null,
  }))
}

function shuntsIn(border: Border, all: Prepared): PlannedShunt[] {
  const shunts = border.form.branches.filter((b) => b.kind === 'shunt')
  if (shunts.length === 0) return []
  const shares = deviceShares(all, blocksOf(all.graph)).of
  return shunts.map(({ id }) => {
    const { part, branch } = border.branches.get(id)!
    const { truth } = meter(all, shares, {
      shunt: all.branchIndex.get(id)!,
      ...(branch.measures === undefined ? {} : { role: branch.measures }),
    })
    return { part, branch: id, truth }
  })
}
