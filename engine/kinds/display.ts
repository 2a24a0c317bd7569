import { defineKind } from '../model/kind'
import { captions } from './caption'
import { linkFields, linkTerminal, waves } from './datalink'
import { line, rect } from './draw'
import { fittingField } from './fitting'
import { supplyField, supplyMarks, supplyModel, supplyPoles } from './panelbox'
import { standing } from './sign'

const W = 20
const H = 12.5

export const display = defineKind({
  key: 'display',
  title: 'Display',
  group: 'data',
  letter: 'P',
  about: 'Shows the readings of a monitor hub.',
  words: ['screen', 'panel', 'touch', 'readings'],
  fields: { supplyA: supplyField(0.3), fitting: fittingField('tail'), ...linkFields('wired') },
  terminals: (v) => [...supplyPoles(v), ...linkTerminal(v.data, 'right', W, 5, v.dataPlug)],
  electrical: (v) => supplyModel(v.supplyA),
  symbol: (v) => ({
    w: W,
    h: H,
    marks: [
      ...supplyMarks(),
      rect(2.5, 0.25, W - 5, H - 0.5),
      rect(4, 1.75, W - 8, 7, { pen: 'thin' }),
      ...standing(W / 2, 5.25, [line([7, 7, 8.75, 5, 10.5, 6, 13, 3.5])]),
      ...(v.data === 'wired' ? [line([W - 2.5, 5, W, 5], { ink: 'data' })] : []),
      ...(v.data === 'wireless' ? standing(W / 2, 10.6, waves(W / 2, 11.5)) : []),
    ],
  }),
  caption: () => captions(),
})
