import { circle, line } from '../kinds/draw'
import type { Mark, XY } from '../model/marks'
import type { SceneConductor } from './scene'

/**
 * Conductors as marks. The pole can be told without colour: positive is one line, negative a double line, data is
 * broken, mains is broken and heavy.
 */
export function runMarks(conductors: readonly SceneConductor[], joins: readonly XY[]): Mark[] {
  const negatives = conductors.filter((c) => c.nature === 'negative')
  const others = conductors.filter((c) => c.nature !== 'negative')
  return [
    ...negatives.flatMap(lineOf),
    ...others.flatMap(lineOf),
    ...joins.map(([x, y]) => circle(x, y, 0.9, { fill: 'ink', pen: 'thin' })),
    ...conductors.filter((c) => c.withReturn !== null).flatMap(tickOf),
  ]
}

function lineOf({ points, nature }: SceneConductor): Mark[] {
  switch (nature) {
    case 'positive':
      return [{ is: 'line', points, pen: 'strong', ink: 'positive' }]
    case 'negative':
      return [
        { is: 'line', points, pen: 'bar', ink: 'negative' },
        { is: 'line', points, pen: 'strong', ink: 'paper' },
      ]
    case 'data':
      return [{ is: 'line', points, pen: 'line', ink: 'data', dash: true }]
    case 'mains':
      return [{ is: 'line', points, pen: 'strong', ink: 'mains', dash: true }]
    case 'other':
      return [{ is: 'line', points, pen: 'line' }]
  }
}

/** How far a tick stands from the end of its stretch, mm, so that the middle is left to words. */
const FROM_END = 5

/** Where the two-conductor tick stands: near the far end of the longest straight stretch. */
export function tickAt({ points }: Pick<SceneConductor, 'points'>): {
  readonly at: XY
  readonly upright: boolean
} {
  let [longest, at, upright] = [-1, points[0] ?? ([0, 0] as XY), false]
  for (let i = 1; i < points.length; i++) {
    const [[x1, y1], [x2, y2]] = [points[i - 1]!, points[i]!]
    const length = Math.abs(x2 - x1) + Math.abs(y2 - y1)
    if (length <= longest) continue
    const back = Math.min(0.25, FROM_END / length)
    ;[longest, upright] = [length, Math.abs(y2 - y1) > Math.abs(x2 - x1)]
    at = [x2 + (x1 - x2) * back, y2 + (y1 - y2) * back]
  }
  return { at, upright }
}

/** Half the height of a tick: it keeps clear of words that a line passes. */
const TICK = 1.1

function tickOf(c: SceneConductor): Mark[] {
  const {
    at: [x, y],
    upright,
  } = tickAt(c)
  return [-0.6, 0.6].map((off) =>
    upright
      ? line([x - TICK, y + off + 0.45, x + TICK, y + off - 0.45])
      : line([x + off - 0.45, y + TICK, x + off + 0.45, y - TICK]),
  )
}
