import { electricalIn } from '../../edit/terminal'
import { kindOf } from '../../kinds/all'
import type { Design, Part } from '../../model/design'
import { complete } from '../../model/values'
import { REST_VOLTAGE } from '../../tables/restvoltage'
import type { Amps, Volts } from '../../units'
import { contextOf } from '../network'

export type Chemistry = keyof typeof REST_VOLTAGE

/** A battery with the figures that a customer must keep to; null: not stated. */
export interface Store {
  readonly part: Part
  readonly isStarting: boolean
  readonly chemistry: Chemistry | null
  readonly capacityAh: number | null
  readonly volts: Volts | null
  readonly chargeA: Amps | null
  readonly dischargeA: Amps | null
}

/** Every battery of a design. O(parts). */
export const storesOf = (design: Design): Store[] =>
  design.parts.filter((p) => kindOf(p.kind)?.group === 'stores').map((part) => storeOf(design, part))

function storeOf(design: Design, part: Part): Store {
  const values = complete(kindOf(part.kind)!.fields, part.values)
  const number = (key: string): number | null => {
    const value = values[key]
    return typeof value === 'number' ? value : null
  }
  const emfV = electricalIn(part, contextOf(design))?.devices.find((d) => d.role === 'battery')?.emfV
  const { chemistry, volts } = values
  return {
    part,
    isStarting: part.kind === 'starting-battery',
    chemistry:
      typeof chemistry === 'string' && Object.hasOwn(REST_VOLTAGE, chemistry)
        ? (chemistry as Chemistry)
        : null,
    capacityAh: number('capacityAh'),
    volts: typeof volts === 'string' && volts !== '' ? Number(volts) : (emfV ?? null),
    chargeA: number('chargeA'),
    dischargeA: number('dischargeA'),
  }
}

/** Energy of the full batteries of the system, Wh, by their nominal voltages; null: a capacity is not stated. */
export function storedWh(stores: readonly Store[]): number | null {
  let sum = 0
  for (const { isStarting, capacityAh, volts } of stores) {
    if (isStarting) continue
    if (capacityAh === null || volts === null) return null
    sum += capacityAh * volts
  }
  return sum
}
