import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { line, rect } from './draw'
import { loadFields } from './loadfields'

/** A snow crystal of three strokes, each with a small barb at both ends. */
const crystal = [30, 90, 150].flatMap((degrees) => {
  const at = (r: number, turn: number) => {
    const a = ((degrees + turn) * Math.PI) / 180
    return [LOAD_X + r * Math.cos(a), LOAD_Y + r * Math.sin(a)]
  }
  return [
    line([...at(2.4, 0), ...at(-2.4, 0)]),
    ...[1, -1].map((s) => line([...at(2.2 * s, 18), ...at(1.3 * s, 0), ...at(2.2 * s, -18)])),
  ]
})

export const fridge = defineKind({
  ...loadParts([
    rect(LOAD_X - LOAD_R, LOAD_Y - LOAD_R, 2 * LOAD_R, 2 * LOAD_R, { fill: 'paper' }),
    ...crystal,
  ]),
  key: 'fridge',
  title: 'Fridge',
  letter: 'E',
  about: 'A compressor refrigerator or freezer.',
  words: ['refrigerator', 'freezer', 'cooler', 'compressor'],
  fields: loadFields({ nature: 'power', inrush: 3, inrushS: 1, fitting: 'blade 6.3' }),
})
