import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { circle, outline } from './draw'
import { loadFields } from './loadfields'

/** One blade of three, from the hub outwards, turned by an angle in degrees. */
const blade = (degrees: number) => {
  const a = (degrees * Math.PI) / 180
  const points = [
    [0.4, 0],
    [1.1, 0.9],
    [1.9, 1.05],
    [2.4, 0.5],
    [2.1, 0],
  ] as const
  return outline(
    points.flatMap(([x, y]) => [
      LOAD_X + x * Math.cos(a) - y * Math.sin(a),
      LOAD_Y + x * Math.sin(a) + y * Math.cos(a),
    ]),
  )
}

export const fan = defineKind({
  ...loadParts([
    circle(LOAD_X, LOAD_Y, LOAD_R, { fill: 'paper' }),
    ...[-90, 30, 150].map(blade),
    circle(LOAD_X, LOAD_Y, 0.4, { fill: 'ink', pen: 'thin' }),
  ]),
  key: 'fan',
  title: 'Fan',
  letter: 'M',
  about: 'A ventilator or a blower.',
  words: ['ventilator', 'blower', 'vent', 'extractor'],
  fields: loadFields({ inrush: 2, inrushS: 1 }),
})
