import type { Answers } from '../../engine/calc/answers'
import { terminalsOf } from '../../engine/kinds/place'
import type { Design } from '../../engine/model/design'
import { partById } from '../../engine/model/lookup'
import { extentOf } from '../../engine/sheets/extent'
import type { Flag } from '../../engine/sheets/flags'
import { PAPERS } from '../../engine/sheets/paper'
import { paperDrawings } from '../../engine/sheets/paperdrawings'
import type { RoutePort } from '../../engine/sheets/route/request'
import type { Scene, SceneConductor, SceneLabel } from '../../engine/sheets/scene'
import { drawingArea } from '../../engine/sheets/sheetbase'
import { type LayoutQuality, layoutQuality } from './layoutquality'

/** What is drawn, on the screen or on one sheet. */
interface Drawn extends Pick<Scene, 'parts' | 'conductors' | 'outlines' | 'texts'> {
  readonly labels: readonly SceneLabel[]
  readonly flags?: readonly Flag[]
}

export interface DrawnQuality extends LayoutQuality {
  /** Texts on the sheet and names of outlines that lie on a part, a conductor, a label or each other. */
  readonly textsInLanes: number
  /** Conductors for which no free way was found. */
  readonly unrouted: number
}

/** The outside measure of a drawing: everything against everything, by geometry alone. `design`: as the view shows it. */
export function drawnQuality(design: Design, drawn: Drawn): DrawnQuality {
  const flagAt = new Map((drawn.flags ?? []).map((f) => [`${f.conductor} ${f.end}`, f.port]))
  const portOf = (c: SceneConductor, end: 'from' | 'to'): RoutePort =>
    flagAt.get(`${c.id} ${end}`) ??
    terminalsOf(partById(design, c[end].part)!, design.conductors).find((t) => t.key === c[end].terminal)!
  const ways = drawn.conductors.map((c) => ({
    id: c.id,
    from: portOf(c, 'from'),
    to: portOf(c, 'to'),
    points: c.points.map(([x, y]) => ({ x, y })),
  }))
  const boxes = [
    ...drawn.parts,
    ...(drawn.flags ?? []).map((f) => ({ id: `flag ${f.conductor} ${f.end}`, ...f.box })),
  ]
  const labels = drawn.labels.map(extentOf)
  const words = [...drawn.texts, ...drawn.outlines.map((o) => o.name)]
  const quality = layoutQuality(boxes, ways, labels)
  const withWords = layoutQuality(boxes, ways, [...labels, ...words])
  return {
    ...quality,
    textsInLanes: withWords.labelCollisions - quality.labelCollisions,
    unrouted: drawn.conductors.filter((c) => !c.routed).length,
  }
}

/** The same of every drawing of a schematic on A3, in their order. */
export function onPaperOf(
  design: Design,
  answers: Answers | null,
  view: 'single-line' | 'both-poles',
): DrawnQuality[] {
  const { power, links } = paperDrawings(design, answers, view, drawingArea(PAPERS.A3))
  return [power, ...(links ? [links] : [])].flatMap(({ design: there, drawings }) =>
    drawings.map(({ layout, labels }) => drawnQuality(there, { ...layout, labels })),
  )
}
