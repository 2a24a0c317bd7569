import { defineKind, NOTHING } from '../model/kind'
import { captions } from './caption'
import { line } from './draw'
import { count, counted } from './field'
import { MAINS_W, mainsSymbol } from './mainsbox'
import { alternatingSign } from './sign'
import { terminal } from './terminal'

const PITCH = 5

const outputs = count('Outputs', 'Number of mains circuits that leave it.', 2, 1, 12)
const inputs = count('Inputs', 'Number of mains supplies that enter it.', 1, 1, 3)

const list = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i + 1)
const y = (n: number): number => PITCH * (n - 0.5)

export const mainsDistribution = defineKind({
  key: 'mains-distribution',
  title: 'Mains distribution',
  group: 'mains',
  letter: 'A',
  about: 'Protection and distribution of mains. For licensed persons only; not sized here.',
  words: ['consumer unit', 'switchboard', 'RCD', 'AC panel', 'mains panel'],
  fields: { inputs, outputs },
  terminals: (v) => [
    ...list(counted(v.inputs, inputs)).map((n) =>
      terminal('left', 0, y(n), `in${n}`, `mains supply ${n}`, 'mains', { mark: '~', use: 'in' }),
    ),
    ...list(counted(v.outputs, outputs)).map((n) =>
      terminal('right', MAINS_W, y(n), `out${n}`, `mains circuit ${n}`, 'mains', { mark: '~', use: 'out' }),
    ),
  ],
  electrical: () => NOTHING,
  symbol: (v) => {
    const [ins, outs] = [list(counted(v.inputs, inputs)), list(counted(v.outputs, outputs))]
    const h = Math.max(10, PITCH * Math.max(ins.length, outs.length))
    return mainsSymbol(
      h,
      [
        ...ins.map((n) => ({ side: 'left' as const, y: y(n) })),
        ...outs.map((n) => ({ side: 'right' as const, y: y(n) })),
      ],
      [
        ...alternatingSign(6, h / 2),
        line([9.5, 1.5, 9.5, h - 1.5], { ink: 'mains', pen: 'strong' }),
        ...outs.map((n) => line([9.5, y(n), 15, y(n)], { ink: 'mains' })),
      ],
    )
  },
  caption: (v) => captions(`mains, ${counted(v.outputs, outputs)} circuits`),
})
