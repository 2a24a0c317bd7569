import type { Design, Part } from '../../model/design'
import { partById } from '../../model/lookup'
import type { Amps } from '../../units'
import { operate } from '../operate'
import { changed } from '../operating/change'
import type { OperatingState } from '../operating/state'
import type { Effects } from './effects'

/** One source alone at its most, nothing drawn. */
export interface ChargeReading {
  /** What charges: a controller, an alternator charger, a charger. */
  readonly part: Part
  /** What stands behind it: its array, its alternator; null: nothing drawn. */
  readonly from: Part | null
  /** A into the batteries; null: not known. */
  readonly amps: Amps | null
}

/** Charge at which a source is read: half full, so that it takes all that is given. */
const HALF = 0.5

/** Each charging device with its own source at the most, all else at rest. */
export function chargingOf(
  design: Design,
  { plan, standing }: Effects,
  idle: OperatingState,
): ChargeReading[] {
  const { form } = plan.border
  return plan.devices.flatMap(({ id, part: partId, is, input, waitsFor }, d) => {
    const part = partById(design, partId)
    if (!part || !(is === 'controller' || is === 'charger' || is === 'source' || is === 'two-way')) return []
    if (is === 'source' && plan.devices.some((x) => x.waitsFor.includes(d))) return []
    const at = (end: 'positive' | 'negative', k: number): string => standing.netOf(form.devices[k]![end])
    const behind =
      is === 'controller'
        ? plan.devices.flatMap(({ device }, a) =>
            device.array &&
            at('positive', a) === at('positive', input) &&
            at('negative', a) === at('negative', input)
              ? [a]
              : [],
          )
        : waitsFor
    const on = [id, ...behind.map((k) => plan.devices[k]!.id)].filter((key) => idle.sources.has(key))
    const half = [...idle.charge.keys()].reduce(
      (now, key) => changed(now, { set: 'charge', id: key, share: HALF }),
      idle,
    )
    const state = on.reduce((now, key) => changed(now, { set: 'source', id: key, share: 1 }), half)
    const amps = ampsAt(design, state, id)
    return [
      {
        part,
        from: behind[0] === undefined ? null : (partById(design, plan.devices[behind[0]]!.part) ?? null),
        amps,
      },
    ]
  })
}

function ampsAt(design: Design, state: OperatingState, device: string): Amps | null {
  const point = operate(design, state)
  return point.ok ? (point.devices.get(device)?.amps ?? null) : null
}
