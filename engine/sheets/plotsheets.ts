import type { Answers } from '../calc/answers'
import { type BandPlot, fuseBandPlot, type PlotPoint } from '../calc/bandplot'
import type { ConductorId, Design } from '../model/design'
import { partById } from '../model/lookup'
import type { Mark } from '../model/marks'
import { clearsBy, holdsAtLeast } from '../tables/fuseband'
import type { Millimetres } from '../units'
import { conductorName, figure, listed } from '../words/names'
import { bandPlotMarks } from './bandplot'
import { LARGE, LEAST, moved, textMark } from './block'
import { wrapTo } from './measure'
import { type PageForm, pageOf } from './schedules/page'
import type { Sheet } from './sheet'

export interface PlotSheetOptions {
  /** Default A3, across. */
  readonly form?: PageForm
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
  /** Number of the first of these sheets, and of all sheets that they stand among. Default: a set of their own. */
  readonly first?: number
  readonly of?: number
}

/** A device with its plot, drawn for the conductor behind it that bears the least, and all that it guards. */
export interface DevicePlot {
  readonly plot: BandPlot
  readonly guards: readonly ConductorId[]
}

/** One plot for each protective device, or way of a block, whose operating times are known; in the order of the parts. */
export function devicePlots(design: Design, answers: Answers): DevicePlot[] {
  const byDevice = new Map<string, { plot: BandPlot; guards: ConductorId[] }>()
  for (const { id } of design.conductors) {
    const plot = fuseBandPlot(design, answers, id)
    if (!plot) continue
    const key = `${plot.part} ${plot.key}`
    const known = byDevice.get(key)
    if (!known) byDevice.set(key, { plot, guards: [id] })
    else {
      known.guards.push(id)
      if (heat(plot) < heat(known.plot)) known.plot = plot
    }
  }
  const rank = new Map(design.parts.map((p, i) => [p.id, i]))
  const way = ({ key }: BandPlot): number => (/^\d+$/.test(key) ? Number(key) : 0)
  return [...byDevice.values()].sort(
    (a, b) => rank.get(a.plot.part)! - rank.get(b.plot.part)! || way(a.plot) - way(b.plot),
  )
}

/** What the conductor bears, A²s. */
const heat = ({ bears }: BandPlot): number => (bears ? bears[0].amps ** 2 * bears[0].seconds : Infinity)

const CELL = { w: 72, plot: 52, caption: 17 } as const
const GAP: Millimetres = 6
const HEAD: Millimetres = 12

/** Time-current plots, several to a sheet, each with what it shows in words. No device with known times: no sheet. Pure. */
export function bandPlotSheets(design: Design, answers: Answers, options: PlotSheetOptions = {}): Sheet[] {
  const plots = devicePlots(design, answers)
  const page = pageOf(options.form ?? 'A3-landscape')
  const { x, y, w, h } = page.area
  const across = Math.max(1, Math.floor((w + GAP) / (CELL.w + GAP)))
  const width = (w - (across - 1) * GAP) / across
  const least = CELL.plot + CELL.caption + GAP
  const down = Math.max(1, Math.floor((h - HEAD + GAP) / least))
  const height = (h - HEAD + GAP) / down
  const plotHeight = height - CELL.caption - GAP
  const rows = Math.ceil(plots.length / across)
  const count = Math.ceil(rows / down)
  // As many rows on each sheet as on the others, so that the last one is not nearly empty.
  const before = (sheet: number): number => Math.round((sheet * rows) / count) * across
  const first = options.first ?? 1
  const of = options.of ?? first + count - 1
  const date = options.date ?? design.settings.date
  return Array.from({ length: count }, (_, i): Sheet => {
    const subtitle = count > 1 ? `part ${i + 1} of ${count}` : ''
    const words = { documentType: 'Time-current plots', subtitle, number: first + i, of, date }
    const marks = plots.slice(before(i), before(i + 1)).flatMap((device, k) => {
      const left = x + (k % across) * (width + GAP)
      const top = y + HEAD + Math.floor(k / across) * height
      return moved(cellMarks(design, device, width, plotHeight), left, top)
    })
    return {
      title: `${first + i} Time-current plots${subtitle === '' ? '' : `, ${subtitle}`}`,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...moved(headMarks(w), x, y), ...marks],
      links: [],
    }
  })
}

function headMarks(width: Millimetres): Mark[] {
  const text =
    'Tinted: between the longest time that the device surely holds and the time by which it has surely cleared. Broken: what the conductor bears. Ring: the hardest start. Upright: short circuits at the far end.'
  return [
    textMark(0, 5.5, { text: 'Protective devices and what they guard', height: LARGE, weight: 'bold' }),
    ...wrapTo(width, text, LEAST).map((line, i) => textMark(0, 9 + i * 2.7, { text: line })),
  ]
}

function cellMarks(design: Design, device: DevicePlot, width: Millimetres, height: Millimetres): Mark[] {
  const lines = plotCaption(design, device).flatMap((text) =>
    wrapTo(width - 3, text, LEAST).map((t, i) => [t, i] as const),
  )
  return [
    ...bandPlotMarks(design, device.plot, { w: width, h: height }),
    ...lines.flatMap(([text, i], row) => [
      ...(i === 0 ? [textMark(0, height + 3 + row * 2.7, { text: '–' })] : []),
      textMark(3, height + 3 + row * 2.7, { text }),
    ]),
  ]
}

/** What the plot says, in sentences: the start, the short circuit, the conductor, what else the device guards. */
export function plotCaption(design: Design, { plot, guards }: DevicePlot): string[] {
  const { band, start, leastA, conductor } = plot
  const said: string[] = []
  if (start) {
    const name = partById(design, start.part)?.designation ?? start.part
    const holds = holdsAtLeast(band, start.amps) >= start.seconds
    said.push(
      `${name} starts with ${figure(start.amps, 'A')} for ${figure(start.seconds, 's')}: ${holds ? 'the device holds.' : 'the device MAY OPEN.'}`,
    )
  }
  said.push(...faultWords(design, plot))
  const others = guards.filter((id) => id !== conductor).map((id) => conductorName(design, id))
  if (others.length > 0) said.push(`Guards ${listed(others, 6)} as well.`)
  if (leastA === null) said.push('Short circuit at the far end: not checked.')
  return said
}

function faultWords(design: Design, { band, leastA, bears, conductor }: BandPlot): string[] {
  if (leastA === null) return []
  const within = clearsBy(band, leastA)
  const fault = `Least short circuit ${figure(leastA, 'A')}`
  if (within === null) return [`${fault}: NOT SURELY CLEARED by the device.`]
  const cleared = `${fault}: cleared within ${seconds(within)}`
  if (!bears) return [`${cleared}; no size is chosen for ${conductorName(design, conductor)}.`]
  const borne = bornFor(bears[0], leastA)
  return [
    `${cleared}; ${conductorName(design, conductor)} bears it for ${seconds(borne)}${within > borne ? ': TOO SHORT' : ''}.`,
  ]
}

/** t = k²S²/I², from a point on the line. */
const bornFor = (point: PlotPoint, amps: number): number => point.seconds * (point.amps / amps) ** 2

const seconds = (s: number): string =>
  s < 0.01 ? 'under 0.01 s' : s > 100 ? 'over 100 s' : figure(Number(s.toPrecision(2)), 's')
