import type { NumberField } from '../model/fields'
import type { PartDevice, SymbolDrawing } from '../model/kind'
import type { Mark } from '../model/marks'
import type { Amps, Volts, Watts } from '../units'
import { line, rect } from './draw'
import { number } from './field'

/** What converters share: the box with the diagonal, and input current from output power. */

export const CONVERTER_W = 20
export const CONVERTER_H = 15
export const UPPER_Y = 5
export const LOWER_Y = 10

export const efficiencyField = (initial: number): NumberField =>
  number('Efficiency', '%', 'Output power over input power at full load, from the data sheet.', {
    initial,
    min: 50,
    max: 100,
    group: 'Conversion',
  })

/**
 * Input current I = P / (η · V), A; null where a figure is missing. `percent` is the efficiency η in percent; the
 * current is greatest at the lowest input voltage.
 */
export const inputAmps = (outputW: Watts | null, percent: number | null, lowestV: Volts): Amps | null =>
  outputW === null || percent === null || percent <= 0 || lowestV <= 0
    ? null
    : outputW / ((percent / 100) * lowestV)

/** For an output: its power comes from the device `input` of the same part; `array`: see `PartDevice.suppliedBy`. */
export const suppliedByInput = (
  percent: number | null,
  array?: 'power' | 'current',
): Pick<PartDevice, 'suppliedBy'> => ({
  suppliedBy: {
    device: 'input',
    efficiency: percent === null || percent <= 0 ? null : percent / 100,
    ...(array === undefined ? {} : { array }),
  },
})

/** Box with a diagonal, what goes in above it on the left and what comes out below it on the right. */
export const converterSymbol = (
  input: readonly Mark[],
  output: readonly Mark[],
  marks: readonly Mark[],
): SymbolDrawing => ({
  w: CONVERTER_W,
  h: CONVERTER_H,
  marks: [
    rect(2.5, 2.5, CONVERTER_W - 5, CONVERTER_H - 5),
    line([2.5, CONVERTER_H - 2.5, CONVERTER_W - 2.5, 2.5]),
    ...input,
    ...output,
    ...marks,
  ],
})

/** Places for the signs of the two halves. */
export const INPUT_SIGN = [7.5, 4.75] as const
export const OUTPUT_SIGN = [12.5, 10.25] as const
