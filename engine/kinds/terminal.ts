import type { Pole, Side, Terminal } from '../model/kind'
import type { Millimetres } from '../units'

/** Makers of terminals. */

type More = Partial<Pick<Terminal, 'mark' | 'use' | 'takes' | 'stud'>>

/** A terminal on one side of the box; `mark` is empty and `use` 'both' unless given. */
export const terminal = (
  side: Side,
  x: Millimetres,
  y: Millimetres,
  key: string,
  name: string,
  pole: Pole,
  more: More = {},
): Terminal => ({ key, mark: '', name, pole, use: 'both', x, y, side, ...more })

/** In on the left, out on the right: what stands in a line. */
export const inLine = (
  w: Millimetres,
  y: Millimetres,
  names: readonly [left: string, right: string] = ['supply side', 'load side'],
  more: More = {},
): readonly Terminal[] => [
  terminal('left', 0, y, '1', names[0], 'any', { use: 'in', ...more }),
  terminal('right', w, y, '2', names[1], 'any', { use: 'out', ...more }),
]

/** Positive above negative on one side. `use` is that of the positive terminal. */
export const twoPoles = (
  side: 'left' | 'right',
  x: Millimetres,
  positiveY: Millimetres,
  negativeY: Millimetres,
  use: 'in' | 'out',
  more: More = {},
): readonly Terminal[] => [
  terminal(side, x, positiveY, '+', 'positive', 'positive', { mark: '+', use, ...more }),
  terminal(side, x, negativeY, '-', 'negative', 'negative', {
    mark: '−',
    use: use === 'in' ? 'out' : 'in',
    ...more,
  }),
]
