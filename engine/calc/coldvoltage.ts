import type { Part } from '../model/design'
import { coldFactor } from '../tables/coldvoltage'
import type { Celsius, Volts } from '../units'
import { numberOf } from './numberof'

/** Voc·s·(1 + β·(T − 25)), or the general table where the module states no coefficient. null: a figure is missing. */
export function coldVoltage(part: Part, at: Celsius): Volts | null {
  const voc = numberOf(part, 'vocV')
  const series = numberOf(part, 'series')
  if (voc === null || series === null) return null
  const perKelvin = numberOf(part, 'vocPerKelvin')
  const factor = perKelvin === null ? coldFactor(at)?.value : 1 + (perKelvin / 100) * (at - 25)
  return factor === undefined ? null : voc * series * factor
}
