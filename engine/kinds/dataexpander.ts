import { defineKind, NOTHING } from '../model/kind'
import { captions } from './caption'
import { plugField, plugged } from './datalink'
import { line } from './draw'
import { count, counted } from './field'
import { BOX_W, boxHeight, type Port, portMarks, portY } from './panelbox'
import { terminal } from './terminal'

const ports = count('Ports', 'Wired ports that it offers in place of the one that it takes.', 4, 1, 16)

const portsOf = (value: number | null): readonly Port[] =>
  Array.from({ length: counted(value, ports) }, (_, i) => ({
    key: `data${i + 1}`,
    name: `data port ${i + 1}`,
    mark: `D${i + 1}`,
  }))

export const dataExpander = defineKind({
  key: 'data-expander',
  title: 'Data expander',
  group: 'data',
  letter: 'K',
  about: 'Makes several data ports out of one; fed through its own data lead.',
  words: ['expander', 'hub', 'splitter', 'ports'],
  fields: { ports, dataPlug: plugField('unknown', 'Plug of its data ports') },
  terminals: (v) => [
    terminal('left', 0, 2.5, 'up', 'port towards the hub', 'data', { use: 'in', ...plugged(v.dataPlug) }),
    ...portsOf(v.ports).map((p, i) =>
      terminal('right', BOX_W, portY(i), p.key, p.name, 'data', {
        mark: p.mark,
        use: 'out',
        ...plugged(v.dataPlug),
      }),
    ),
  ],
  electrical: () => NOTHING,
  symbol: (v) => ({
    w: BOX_W,
    h: boxHeight(portsOf(v.ports).length),
    marks: [
      line([0, 2.5, 2.5, 2.5], { ink: 'data' }),
      ...portMarks(portsOf(v.ports)),
      line([2.5, 2.5, 7.5, 2.5], { ink: 'data' }),
      line([7.5, 2.5, 7.5, portY(portsOf(v.ports).length - 1)], { ink: 'data' }),
      ...portsOf(v.ports).map((_, i) => line([7.5, portY(i), 13, portY(i)], { ink: 'data' })),
    ],
  }),
  caption: (v) => captions(`${counted(v.ports, ports)} data ports`),
})
