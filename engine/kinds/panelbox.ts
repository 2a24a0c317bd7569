import type { Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import type { Amps, Millimetres } from '../units'
import { takes } from './device'
import { line, rect, text } from './draw'
import { number } from './field'
import { fastened } from './fitting'
import { twoPoles } from './terminal'

/** Boxes of the monitor: supply on the left, ports in rows on the right. */

export const BOX_W = 22.5
export const PITCH = 5

export interface Port {
  readonly key: string
  readonly name: string
  readonly mark: string
}

export const portY = (row: number): Millimetres => PITCH * (row + 0.5)
export const boxHeight = (ports: number): Millimetres => PITCH * Math.max(3, ports)

export const supplyField = (initial: Amps) =>
  number('Own current', 'A', 'Current that it takes for itself.', { initial })

export const supplyPoles = (v: { readonly fitting: FittingKey }): readonly Terminal[] =>
  twoPoles('left', 0, 2.5, 10, 'in', fastened(v.fitting))

export const supplyModel = (amps: Amps | null) => ({
  merges: [],
  branches: [],
  devices: [takes({ key: 'supply', positive: '+', negative: '-' }, amps)],
})

export const supplyMarks = (): readonly Mark[] => [
  line([0, 2.5, 2.5, 2.5]),
  line([0, 10, 2.5, 10]),
  text(1.25, 2, '+', { anchor: 'middle' }),
  text(1.25, 9.5, '−', { anchor: 'middle' }),
]

/** The box, and a lead with its mark for each port on the right. */
export const portMarks = (ports: readonly Port[]): readonly Mark[] => [
  rect(2.5, 0.25, BOX_W - 5, boxHeight(ports.length) - 0.5),
  ...ports.flatMap((p, i) => [
    line([BOX_W - 2.5, portY(i), BOX_W, portY(i)], { ink: 'data' }),
    text(BOX_W - 3.25, portY(i) + 0.9, p.mark, { anchor: 'end' }),
  ]),
]
