import type { ValuesOf } from '../model/fields'
import { defineKind } from '../model/kind'
import { captions } from './caption'
import { plugField, plugged, waves } from './datalink'
import { line, rect } from './draw'
import { count, counted } from './field'
import { fittingField } from './fitting'
import {
  BOX_W,
  boxHeight,
  type Port,
  portMarks,
  portY,
  supplyField,
  supplyMarks,
  supplyModel,
  supplyPoles,
} from './panelbox'
import { standing } from './sign'
import { terminal } from './terminal'

const dataPorts = count(
  'Data ports',
  'Wired ports; each wired shunt, controller or charger takes one.',
  3,
  0,
  16,
)
const tankInputs = count('Tank inputs', 'Inputs for wired tank senders.', 3, 0, 16)
const temperatureInputs = count('Temperature inputs', 'Inputs for wired temperature senders.', 2, 0, 16)
const wirelessMax = count(
  'Wireless senders',
  'Number of wireless senders that its radio serves well.',
  8,
  0,
  99,
)

const fields = {
  dataPorts,
  tankInputs,
  temperatureInputs,
  wirelessMax,
  supplyA: supplyField(0.3),
  fitting: fittingField('clamp 2.5'),
  dataPlug: plugField('unknown', 'Plug of its data ports'),
  inputPlug: plugField('open', 'Ends at its inputs'),
}

interface HubPort extends Port {
  /** For a sender, not for a data lead. */
  readonly input: boolean
}

const numbered = (n: number, key: string, name: string, mark: string, input: boolean): readonly HubPort[] =>
  Array.from({ length: n }, (_, i) => ({
    key: `${key}${i + 1}`,
    name: `${name} ${i + 1}`,
    mark: `${mark}${i + 1}`,
    input,
  }))

const portsOf = (v: ValuesOf<typeof fields>): readonly HubPort[] => [
  ...numbered(counted(v.dataPorts, dataPorts), 'data', 'data port', 'D', false),
  ...numbered(counted(v.tankInputs, tankInputs), 'tank', 'tank input', 'L', true),
  ...numbered(counted(v.temperatureInputs, temperatureInputs), 'temp', 'temperature input', 'T', true),
]

export const monitorHub = defineKind({
  key: 'monitor-hub',
  title: 'Monitor hub',
  group: 'data',
  letter: 'K',
  about: 'Gathers the readings of shunts, chargers and senders and shows them.',
  words: ['monitor', 'hub', 'gateway', 'control', 'readings'],
  fields,
  terminals: (v) => [
    ...supplyPoles(v),
    ...portsOf(v).map((p, i) =>
      terminal('right', BOX_W, portY(i), p.key, p.name, 'data', {
        mark: p.mark,
        ...plugged(p.input ? v.inputPlug : v.dataPlug),
      }),
    ),
  ],
  electrical: (v) => supplyModel(v.supplyA),
  symbol: (v) => ({
    w: BOX_W,
    h: boxHeight(portsOf(v).length),
    marks: [
      ...supplyMarks(),
      ...portMarks(portsOf(v)),
      ...standing(8.75, 7, [rect(5, 5, 7.5, 4), line([5.75, 8, 7.25, 6.5, 8.75, 7.5, 11.5, 6])]),
      ...(counted(v.wirelessMax, wirelessMax) > 0 ? standing(8.75, 7, waves(8.75, 3.75)) : []),
    ],
  }),
  caption: (v) => captions(`${counted(v.dataPorts, dataPorts)} data ports`),
})
