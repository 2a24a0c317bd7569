import type { NumberField } from '../model/fields'
import type { PartDevice } from '../model/kind'
import { number } from './field'

/** What chargers share: the voltages of their stages. */
interface StageFields {
  readonly absorptionV: NumberField
  readonly floatV: NumberField
}

export const stageFields: StageFields = {
  absorptionV: number(
    'Absorption voltage',
    'V',
    'Voltage up to which it gives its full current. Empty: 14.4 V for each 12 V.',
    { group: 'Charge stages' },
  ),
  floatV: number('Float voltage', 'V', 'Voltage it holds on a full battery. Empty: 13.6 V for each 12 V.', {
    group: 'Charge stages',
  }),
}

export const charges = (v: {
  readonly absorptionV: number | null
  readonly floatV: number | null
}): Pick<PartDevice, 'charging'> => ({ charging: { absorptionV: v.absorptionV, floatV: v.floatV } })
