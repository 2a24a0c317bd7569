import type { ValuesOf } from '../model/fields'
import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { circle, letter, line, rect, text } from './draw'
import { choice, number, result } from './field'
import { fastened, fittingField } from './fitting'
import { terminal } from './terminal'

const W = 30
const MIDDLE = W / 2
const TAPS = [10, 20] as const
const H = 12.5
const Y = 5

const fields = {
  role: choice(
    'Measures',
    'Battery: everything that enters or leaves the batteries. Loads: what the loads take, and nothing else.',
    { battery: 'Battery', load: 'Loads' },
    'battery',
  ),
  ratingA: number('Rated current', 'A', 'Current at which the shunt gives its rated millivolts.', {
    required: true,
    initial: 500,
    standard: [50, 100, 150, 200, 300, 500, 600, 1000],
  }),
  // 50, 60, 75 and 100 mV are the usual outputs: a public guide to shunts.
  millivolts: number('Rated output', 'mV', 'Voltage across the shunt at its rated current.', {
    required: true,
    initial: 50,
    standard: [50, 60, 75, 100],
  }),
  fitting: fittingField('M10'),
  senseFitting: fittingField('M4', 'Sense leads by'),
  ...linkFields('wired'),
  resistanceMOhm: result('Resistance', 'mΩ', 'Rated output divided by rated current.'),
}

/** Ω; null where a figure is missing. */
const shuntOhms = (v: ValuesOf<typeof fields>): number | null =>
  v.ratingA !== null && v.ratingA > 0 && v.millivolts !== null && v.millivolts > 0
    ? v.millivolts / 1000 / v.ratingA
    : null

/** Stands in for a shunt whose figures are missing: 500 A at 50 mV. */
const USUAL_OHMS = 0.0001

export const shunt = defineKind({
  key: 'shunt',
  title: 'Shunt',
  group: 'measuring',
  letter: 'B',
  about: 'Measures current in a return: all that passes between its two studs, and only that.',
  words: ['shunt', 'battery monitor', 'current sensor', 'meter', 'load shunt'],
  fields,
  terminals: (v) => {
    const sense = { ...fastened(v.senseFitting), takes: 1 }
    return [
      terminal('left', 0, Y, 'b', 'battery side', 'any', { mark: 'battery', ...fastened(v.fitting) }),
      terminal('right', W, Y, 's', farSide(v.role).name, 'any', {
        mark: farSide(v.role).mark,
        ...fastened(v.fitting),
      }),
      terminal('down', TAPS[0], H, 'sense-b', 'sense, battery side', 'sense', { ...sense }),
      terminal('down', TAPS[1], H, 'sense-s', 'sense, far side', 'sense', { ...sense }),
      terminal('down', MIDDLE, H, 'sense-v', 'voltage sense', 'sense', { mark: 'V', ...sense }),
      ...linkTerminal(v.data, 'up', MIDDLE, 0, v.dataPlug),
    ]
  },
  // From the far side to the battery side: the return current of a load counts as positive.
  electrical: (v) => ({
    merges: [],
    branches: [
      {
        key: 'shunt',
        from: 's',
        to: 'b',
        ohms: shuntOhms(v) ?? USUAL_OHMS,
        measures: v.role,
        kind: 'shunt',
        ratingA: v.ratingA,
      },
    ],
    devices: [],
  }),
  results: (v) => ({ resistanceMOhm: milli(shuntOhms(v)) }),
  symbol: (v) => ({
    w: W,
    h: H,
    marks: [
      line([0, Y, W, Y], { pen: 'strong' }),
      rect(8.75, Y - 1.5, 12.5, 3, { pen: 'strong', fill: 'paper' }),
      ...TAPS.flatMap((x) => [line([x, Y + 1.5, x, H]), circle(x, Y + 1.5, 0.5, { fill: 'paper' })]),
      line([MIDDLE, 10.25, MIDDLE, H]),
      letter(MIDDLE, 9, 'V'),
      ...linkMarks(v.data, MIDDLE, Y - 1.5),
      text(0.4, Y - 1.9, 'battery'),
      text(W - 0.4, Y - 1.9, farSide(v.role).mark, { anchor: 'end' }),
    ],
  }),
  caption: (v) =>
    captions(v.role === 'battery' ? 'battery shunt' : 'load shunt', [
      `${figure(v.ratingA, 'A')} / ${figure(v.millivolts, 'mV')}`,
    ]),
})

const farSide = (role: 'battery' | 'load') =>
  role === 'battery' ? { mark: 'system', name: 'system side' } : { mark: 'loads', name: 'loads side' }

const milli = (ohms: number | null): number | null => (ohms === null ? null : ohms * 1000)
