import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { gives } from './device'
import { circle, letter } from './draw'
import { flag, number } from './field'
import { fittingField } from './fitting'
import { directSign, frameSign, standing } from './sign'
import { SUPPLY_R, SUPPLY_X, SUPPLY_Y, supplySymbol, supplyTerminals } from './supply'

/** Path from the case of an alternator through the engine to the frame, Ω. Common practice, no source. */
const CASE_OHMS = 0.001

/** Its regulator holds one voltage, whatever the stage. */
const output = (regulatedV: number | null) => ({
  key: 'output',
  positive: '+',
  negative: '-',
  charging: { absorptionV: regulatedV },
})

export const alternator = defineKind({
  key: 'alternator',
  title: 'Alternator',
  group: 'sources',
  letter: 'G',
  about: "The engine's generator with its rectifier and regulator.",
  words: ['generator', 'engine', 'dynamo', 'B+'],
  fields: {
    ratedA: number('Rated current', 'A', 'Greatest output current; an alternator limits itself to it.', {
      required: true,
      standard: [60, 70, 90, 100, 120, 150, 180, 200, 220],
    }),
    regulatedV: number('Regulated voltage', 'V', 'Voltage that its regulator holds.'),
    fitting: fittingField('M8'),
    throughCase: flag(
      'Negative through the case',
      'Its negative is its case, bolted to the engine and the frame.',
    ),
  },
  terminals: (v) =>
    supplyTerminals(v).map((t) => (t.key === '+' ? { ...t, mark: 'B+' } : { ...t, mark: 'B−' })),
  electrical: (v) => ({
    merges: [],
    branches: [],
    devices: [gives(output(v.regulatedV), v.ratedA)],
    ...(v.throughCase ? { frame: { terminal: '-', ohms: CASE_OHMS } } : {}),
  }),
  symbol: (v) =>
    supplySymbol([
      circle(SUPPLY_X, SUPPLY_Y, SUPPLY_R, { fill: 'paper' }),
      ...standing(SUPPLY_X, SUPPLY_Y, [
        letter(SUPPLY_X, SUPPLY_Y - 0.7, 'G'),
        ...directSign(SUPPLY_X, SUPPLY_Y + 1.4),
      ]),
      ...(v.throughCase ? frameSign(SUPPLY_X + 5, 10) : []),
    ]),
  caption: (v) => captions([figure(v.ratedA, 'A'), known(v.regulatedV, 'V')]),
})
