import { line, rect } from '../kinds/draw'
import type { Mark, XY } from '../model/marks'
import type { Millimetres } from '../units'
import { LEAST, textMark } from './block'

/** A point in the quantities of the two axes. */
export type LogPoint = readonly [across: number, up: number]

export interface LogAxis {
  /** Everything to be seen lies between; the axis runs over whole decades. */
  readonly least: number
  readonly most: number
  readonly unit: string
}

interface Rect {
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

/** A frame with a logarithmic scale along both sides, whole decades. */
export interface LogFrame {
  readonly box: Rect
  readonly across: Decades
  readonly up: Decades
  /** Place of a quantity, kept within the frame. */
  x(quantity: number): Millimetres
  y(quantity: number): Millimetres
  /** What of a run of straight strokes (on these scales) lies in the frame, in pieces. */
  stroke(points: readonly LogPoint[]): readonly (readonly XY[])[]
}

interface Decades {
  /** Powers of ten at the two ends. */
  readonly from: number
  readonly to: number
  readonly unit: string
}

export function logFrame(of: { box: Rect; across: LogAxis; up: LogAxis }): LogFrame {
  const { box } = of
  const [across, up] = [decades(of.across), decades(of.up)]
  const share = (q: number, { from, to }: Decades): number => (Math.log10(q) - from) / (to - from)
  const kept = (s: number): number => Math.min(1, Math.max(0, s))
  const place = ([a, b]: readonly [number, number]): XY => [box.x + a * box.w, box.y + (1 - b) * box.h]
  return {
    box,
    across,
    up,
    x: (q) => place([kept(share(q, across)), 0])[0],
    y: (q) => place([0, kept(share(q, up))])[1],
    stroke(points) {
      const shares = points.map(([a, b]) => [share(a, across), share(b, up)] as const)
      const pieces: XY[][] = []
      for (let i = 1; i < shares.length; i++) {
        const cut = within(shares[i - 1]!, shares[i]!)
        if (!cut) continue
        const [from, to] = cut.map(place) as [XY, XY]
        const open = pieces[pieces.length - 1]
        const end = open?.[open.length - 1]
        if (open && end && end[0] === from[0] && end[1] === from[1]) open.push(to)
        else pieces.push([from, to])
      }
      return pieces
    },
  }
}

const decades = ({ least, most, unit }: LogAxis): Decades => {
  const from = Math.floor(Math.log10(least) + 1e-9)
  return { from, to: Math.max(from + 1, Math.ceil(Math.log10(most) - 1e-9)), unit }
}

type Share = readonly [number, number]

/** The piece of a stroke that lies in the unit square; null where none does. */
function within(a: Share, b: Share): readonly [Share, Share] | null {
  let [from, to] = [0, 1]
  for (const i of [0, 1] as const) {
    const step = b[i] - a[i]
    if (step === 0) {
      if (a[i] < 0 || a[i] > 1) return null
      continue
    }
    const [enter, leave] = step > 0 ? [-a[i] / step, (1 - a[i]) / step] : [(1 - a[i]) / step, -a[i] / step]
    from = Math.max(from, enter)
    to = Math.min(to, leave)
  }
  if (from >= to) return null
  const point = (t: number): Share => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])]
  return [from === 0 ? a : point(from), to === 1 ? b : point(to)]
}

/** The frame, a thin line a decade with its figure, and the unit at the end of each axis. */
export function axisMarks({ box, across, up, x, y }: LogFrame): Mark[] {
  const powers = ({ from, to }: Decades): number[] =>
    Array.from({ length: to - from + 1 }, (_, i) => from + i)
  const under = box.y + box.h + LEAST + 0.7
  return [
    ...powers(across)
      .slice(1, -1)
      .map((n) => line([x(10 ** n), box.y, x(10 ** n), box.y + box.h], { pen: 'thin', ink: 'faint' })),
    ...powers(up)
      .slice(1, -1)
      .map((n) => line([box.x, y(10 ** n), box.x + box.w, y(10 ** n)], { pen: 'thin', ink: 'faint' })),
    rect(box.x, box.y, box.w, box.h, { pen: 'line' }),
    ...powers(across).map((n, i, all) => {
      const last = i === all.length - 1
      const text = last ? lastWords(n, across.unit) : decadeWords(n)
      return textMark(x(10 ** n), under, { text }, { anchor: last ? 'end' : i === 0 ? 'start' : 'middle' })
    }),
    ...powers(up).map((n, i, all) => {
      const text = i === all.length - 1 ? lastWords(n, up.unit) : decadeWords(n)
      const baseline = Math.max(y(10 ** n) + LEAST / 2, box.y + LEAST)
      return textMark(box.x - 0.8, baseline, { text }, { anchor: 'end' })
    }),
  ]
}

/** "0.01", "10", "1000", "10 k". */
const decadeWords = (power: number): string => (power > 3 ? `${10 ** (power - 3)} k` : String(10 ** power))

/** The same with the unit: "1000 s", "10 kA". */
const lastWords = (power: number, unit: string): string =>
  unit === 'A' && power >= 3 ? `${10 ** (power - 3)} kA` : `${decadeWords(power)} ${unit}`
