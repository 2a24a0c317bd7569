import type { BandPlot, PlotPoint } from '../calc/bandplot'
import { circle, line, outline, rect } from '../kinds/draw'
import type { Design } from '../model/design'
import { conductorById, partById } from '../model/lookup'
import type { Mark, XY } from '../model/marks'
import { sizeIn } from '../model/sizes'
import type { Millimetres } from '../units'
import { conductorName, figure } from '../words/names'
import { LEAST, textMark } from './block'
import { axisMarks, type LogFrame, type LogPoint, logFrame } from './logaxes'
import { cutTo, widthOf } from './measure'

/** Smallest box in which the plot is legible on paper. */
export const BAND_PLOT_MM = { w: 60, h: 45 } as const

const TOP: Millimetres = 6.5
/** Of a decade, left of a start: room for what it is called. */
const ROOM_LEFT = 5
/** Between a line and what it is called. */
const GAP: Millimetres = 0.6

/**
 * The time-current plot of a conductor's guard: logarithmic axes with a line a decade; the band between its two edges
 * tinted; the conductor's line broken; the hardest start as a ring; the two fault currents as upright lines. Reads
 * without colour. From the top left corner of a box of w × h.
 */
export function bandPlotMarks(
  design: Design,
  plot: BandPlot,
  { w, h }: { readonly w: Millimetres; readonly h: Millimetres } = BAND_PLOT_MM,
): Mark[] {
  const frame = frameOf(plot, w, h)
  return [
    ...bandMarks(plot, frame),
    ...axisMarks(frame),
    ...bornMarks(design, plot, frame),
    ...faultMarks(plot, frame),
    ...startMarks(design, plot, frame),
    ...titleMarks(design, plot, w),
    ...(plot.band.confirmed ? [] : [unconfirmedMark(frame, h)]),
  ]
}

function frameOf(plot: BandPlot, w: Millimetres, h: Millimetres): LogFrame {
  const gates = plot.band.gates.map((g) => g.amps)
  const currents = [
    plot.ratingA,
    ...gates,
    plot.start && plot.start.amps / ROOM_LEFT,
    plot.leastA,
    plot.greatestA,
    plot.bears?.[0].amps,
  ]
  const known = currents.filter((a): a is number => typeof a === 'number' && a > 0)
  return logFrame({
    box: { x: 8.5, y: TOP, w: w - 10.5, h: h - TOP - 6 },
    across: { least: Math.min(...known), most: Math.max(...known), unit: 'A' },
    up: { least: 0.01, most: 1000, unit: 's' },
  })
}

const at = ({ amps, seconds }: PlotPoint): LogPoint => [amps, seconds]

/** The tinted band, and its two edges over it. */
function bandMarks({ holds, clears }: BandPlot, frame: LogFrame): Mark[] {
  const upper = edge(clears[0], clears, undefined)
  const lower = edge(holds[0], holds, holds[holds.length - 1])
  const [over, under] = [frame.stroke(upper).flat(), frame.stroke(lower).flat()]
  const edges = [over, under].filter((points) => points.length > 1).map((points) => lineThrough(points))
  if (over.length === 0 || under.length === 0) return edges
  const { box } = frame
  const right = over[over.length - 1]![0] >= box.x + box.w - 1e-6
  const corner: XY[] = right ? [[box.x + box.w, box.y + box.h]] : []
  const area = [...under, ...corner, ...over.reverse()]
  return [outline(area.flat(), { pen: 'thin', ink: 'tint', fill: 'tint' }), ...edges]
}

/** An edge with where it comes from, far above, and where it goes to, far below. */
const edge = (
  from: PlotPoint | undefined,
  points: readonly PlotPoint[],
  to: PlotPoint | undefined,
): LogPoint[] => [
  ...(from ? [[from.amps, Number.MAX_VALUE] as const] : []),
  ...points.map(at),
  ...(to ? [[to.amps, Number.MIN_VALUE] as const] : []),
]

const lineThrough = (points: readonly XY[], dash = false): Mark =>
  line(points.flat(), { pen: dash ? 'line' : 'strong', ...(dash ? { dash } : {}) })

function bornMarks(design: Design, { bears, conductor }: BandPlot, frame: LogFrame): Mark[] {
  if (!bears) return []
  const strokes = frame.stroke(bears.map(at))
  const top = strokes[0]?.[0]
  if (!top) return []
  const text = `${conductorName(design, conductor)} bears`
  return [...strokes.map((xy) => lineThrough(xy, true)), ...beside(frame, text, top, top[1] - GAP)]
}

/** Text that starts at a place, or ends at the frame where it would run out of it. */
function beside({ box }: LogFrame, text: string, [x]: XY, baseline: Millimetres): Mark[] {
  const fits = x + GAP + widthOf(text, LEAST) <= box.x + box.w
  return onPaper(text, fits ? x + GAP : box.x + box.w - GAP, baseline, fits ? 'start' : 'end')
}

/** Text on a piece of paper of its own, so that no line runs through it. */
function onPaper(text: string, x: Millimetres, baseline: Millimetres, anchor: 'start' | 'end'): Mark[] {
  const w = widthOf(text, LEAST)
  const left = anchor === 'start' ? x : x - w
  return [
    rect(left - 0.3, baseline - LEAST - 0.3, w + 0.6, LEAST + 0.9, {
      pen: 'thin',
      ink: 'paper',
      fill: 'paper',
    }),
    textMark(x, baseline, { text }, { anchor }),
  ]
}

/** Upright lines over the whole height, their figures above the frame, the lesser to the left. */
function faultMarks({ leastA, greatestA }: BandPlot, frame: LogFrame): Mark[] {
  const { box } = frame
  const baseline = box.y - GAP - 0.2
  const upright = (x: Millimetres): Mark[] => [
    line([x, box.y, x, box.y + box.h], { pen: 'line' }),
    outline([x - 0.8, box.y, x + 0.8, box.y, x, box.y + 1.4], { pen: 'thin', fill: 'ink' }),
  ]
  const marks: Mark[] = []
  let room = box.x + box.w
  if (greatestA !== null) {
    const x = frame.x(greatestA)
    const text = `Ik max ${figure(greatestA, 'A')}`
    const from = Math.min(x, room - widthOf(text, LEAST))
    marks.push(...upright(x), textMark(from, baseline, { text }))
    room = from - 1.5
  }
  if (leastA !== null) {
    const x = frame.x(leastA)
    const text = `Ik min ${figure(leastA, 'A')}`
    const until = Math.max(Math.min(x + widthOf(text, LEAST) / 2, room), widthOf(text, LEAST))
    marks.push(...upright(x), textMark(until, baseline, { text }, { anchor: 'end' }))
  }
  return marks
}

function startMarks(design: Design, { start }: BandPlot, frame: LogFrame): Mark[] {
  if (!start) return []
  const [x, y] = [frame.x(start.amps), frame.y(start.seconds)]
  const name = partById(design, start.part)?.designation ?? ''
  const text = `${name} starts`
  const left = x - 1.2 - widthOf(text, LEAST) >= frame.box.x
  const place = left ? x - 1.2 : x + 1.2
  return [
    circle(x, y, 0.8, { pen: 'strong', fill: 'paper' }),
    ...onPaper(text, place, y + LEAST / 2, left ? 'end' : 'start'),
  ]
}

function titleMarks(design: Design, plot: BandPlot, w: Millimetres): Mark[] {
  const part = partById(design, plot.part)
  const device = part?.designation ?? ''
  const way = /^\d+$/.test(plot.key) ? ` way ${plot.key}` : ''
  const size = sizeIn(design, conductorById(design, plot.conductor)?.size ?? null)?.name ?? ''
  const text = `${device}${way} ${figure(plot.ratingA, 'A')} · ${conductorName(design, plot.conductor)} ${size}`
  return [textMark(0, LEAST + 0.3, { text: cutTo(w, text, LEAST, 'bold'), weight: 'bold' })]
}

const unconfirmedMark = ({ box }: LogFrame, h: Millimetres): Mark =>
  textMark(box.x, h - 0.6, { text: 'limits of the class not confirmed' })
