import { defineKind, type Kind, NOTHING } from '../model/kind'
import { cutTo, letter, line, rect } from './draw'
import { terminal } from './terminal'

const W = 30
const PITCH = 5

/**
 * Stands in for a kind that this version does not know: a broken outline with the key of the kind, and the
 * terminals that conductors refer to, first half on the left. It has no fields and no electrical model.
 */
export function placeholderKind(key: string, terminalKeys: readonly string[]): Kind {
  const half = Math.ceil(terminalKeys.length / 2)
  const h = PITCH * Math.max(2, half)
  const y = (row: number) => PITCH * (row + 0.5)
  const terminals = terminalKeys.map((k, i) =>
    i < half
      ? terminal('left', 0, y(i), k, k, 'any', { mark: k })
      : terminal('right', W, y(i - half), k, k, 'any', { mark: k }),
  )
  return defineKind({
    key,
    title: 'Unknown kind',
    group: 'distribution',
    letter: 'U',
    about: 'A part of a kind that this version does not know; it is kept as it is.',
    words: [],
    fields: {},
    terminals: () => terminals,
    electrical: () => NOTHING,
    symbol: () => ({
      w: W,
      h,
      marks: [
        rect(2.5, 0.25, W - 5, h - 0.5, { dash: true }),
        ...terminals.map((t) => line(t.side === 'left' ? [0, t.y, 2.5, t.y] : [W - 2.5, t.y, W, t.y])),
        letter(W / 2, h / 2, cutTo(W - 6, key)),
      ],
    }),
    caption: () => ['unknown kind'],
  })
}
