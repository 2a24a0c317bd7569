import { valuesOf } from '../calc/fusefacts'
import type { PartId } from '../model/design'
import type { Volts } from '../units'
import { nominalVolts } from './nominal'
import { isKnown } from './polarity'
import { found, type Rule } from './rule'
import { unfedParts } from './unfedparts'

/**
 * Nominal voltages further apart than this share of the rated one: a coil of 12 V works on a 12 V system from about 8 V to
 * 16 V, pulls in at neither half of it nor lasts at twice. Common practice, no source.
 */
const APART = 0.25

/**
 * R5: the coil of a relay, or what works a combiner or a cut-out, is made for another voltage than feeds it: it burns out,
 * or does not pull in. Not checked where it is fed and nothing tells what voltage there is.
 */
export const coilVoltage: Rule = {
  id: 'R5',
  looksFor: 'coils made for another voltage than feeds them',
  check: (c) => {
    const voltsOf = nominalVolts(c)
    const worst = new Map<PartId, { rated: Volts; volts: Volts | null }>()
    for (const [id, { part, role }] of c.border.devices) {
      const rated = role === 'load' ? valuesOf(c.design, part)('coilV') : null
      if (typeof rated !== 'number' || rated <= 0 || !isKnown(c, id)) continue
      const volts = voltsOf(id)
      if (volts === null ? unfedParts(c).has(part) : volts <= 0 || Math.abs(volts - rated) <= APART * rated)
        continue
      const before = worst.get(part)
      if (!before || (before.volts ?? 0) < (volts ?? 0)) worst.set(part, { rated, volts })
    }
    return [...worst].map(([part, { rated, volts }]) =>
      found(
        'R5',
        volts === null ? 'not-checked' : volts > rated ? 'danger' : 'warning',
        volts === null ? 'method' : 'rating',
        { parts: [part] },
        { part },
        {
          ...(volts === null ? {} : { actual: { value: volts, unit: 'V' } as const }),
          limit: { value: rated, unit: 'V' },
        },
      ),
    )
  },
}
