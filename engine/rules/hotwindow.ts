import { contextOf } from '../calc/network'
import type { Part } from '../model/design'
import type { Celsius, Volts } from '../units'
import { arrayWays } from './arrays'
import { nominalVolts } from './nominal'
import { numberOf } from './ratings'
import { found, type Rule } from './rule'

/** Cells of a roof-mounted module in full summer sun, °C. Common practice, no source. */
const HOT_CELLS_C: Celsius = 70
/** Of crystalline silicon where the module states none, %/K. From memory. */
const USUAL_PER_KELVIN = -0.3

/** V2: the voltage at most power of a hot string is below what its controller needs: it stops charging in full sun. */
export const hotWindow: Rule = {
  id: 'V2',
  looksFor: 'PV strings whose voltage is too low for the controller when hot',
  check: (c) => {
    const { highestV, systemV } = contextOf(c.design)
    const voltsOf = nominalVolts(c)
    return c.design.parts.flatMap((part) => {
      if (part.kind !== 'solar-controller') return []
      const charged = ((voltsOf(`${part.id}/output`) ?? systemV) * highestV) / systemV
      const needs = Math.max(numberOf(part, 'pvMinV') ?? 0, charged)
      return arrayWays(c, `${part.id}/input`).flatMap((way) => {
        const volts = way.reduce<Volts | null>((sum, array) => {
          const hot = hotVoltage(array)
          return sum === null || hot === null ? null : sum + hot
        }, 0)
        if (volts === null || volts >= needs * (1 - 1e-9)) return []
        const arrays = way.map((array) => array.id)
        return [
          found(
            'V2',
            'warning',
            'iec-62548',
            { parts: [...arrays, part.id] },
            { arrays, controller: part.id, hot: HOT_CELLS_C, charged },
            { actual: { value: volts, unit: 'V' }, limit: { value: needs, unit: 'V' } },
          ),
        ]
      })
    })
  },
}

/**
 * (Vmp + Voc·β·(T − 25))·s: the voltage at most power falls by about as many volts a kelvin as the open-circuit
 * voltage does. Common practice, no source. null: a figure is missing.
 */
export function hotVoltage(array: Part, at: Celsius = HOT_CELLS_C): Volts | null {
  const vmp = numberOf(array, 'vmpV')
  const voc = numberOf(array, 'vocV')
  const series = numberOf(array, 'series')
  if (vmp === null || voc === null || series === null) return null
  const perKelvin = numberOf(array, 'vocPerKelvin') ?? USUAL_PER_KELVIN
  return series * (vmp + voc * (perKelvin / 100) * (at - 25))
}
