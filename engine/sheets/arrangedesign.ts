import type { Answer, Answers, WorstCase } from '../calc/answers'
import type { Edit } from '../edit/edit'
import { kindOf } from '../kinds/all'
import { boxOf, terminalsOf } from '../kinds/place'
import type { Conductor, Design, Part, PartId } from '../model/design'
import type { ShelfGroup } from '../model/kind'
import { arrange } from './arrange/arrange'
import type { ArrangeColumn, ArrangeLink, ArrangePart } from './arrange/part'
import { blockOf } from './block'
import { contentOf } from './layout'
import { linkPlaces } from './linkdesign'
import { partLines } from './partlabels'

const COLUMN: Readonly<Record<ShelfGroup, ArrangeColumn>> = {
  stores: 'store',
  sources: 'source',
  converters: 'source',
  distribution: 'distribution',
  protection: 'protection',
  switching: 'switching',
  measuring: 'distribution',
  loads: 'load',
  control: 'switching',
  data: 'data',
  mains: 'load',
}

/** Width by height of the room for drawing on an A3 sheet, above cautions and title block. */
const ROOM_ASPECT = 378 / 223

/** Where an arranged drawing starts: room for labels above and to the left. */
const MARGIN = 20

/**
 * The edit that lays a whole design out for reading, stores left, loads right; or only the parts given, which keep
 * the place of their top left corner. Deterministic. One undo step.
 */
export function arrangeEdit(design: Design, answers: Answers | null, only?: ReadonlySet<PartId>): Edit {
  const parts = design.parts.filter((p) => only?.has(p.id) ?? true)
  const inside = new Set(parts.map((p) => p.id))
  const links = design.conductors.filter((c) => inside.has(c.from.part) && inside.has(c.to.part))
  const places = arrange(
    parts.map((p) => arrangePart(design, p, answers)),
    links.map((c) => arrangeLink(c, answers)),
    { aspect: ROOM_ASPECT },
  )
  const boxes = parts.map((p) => boxOf(p, design.conductors))
  const x0 = only ? Math.min(...boxes.map((b) => b.x)) : MARGIN
  const y0 = only ? Math.min(...boxes.map((b) => b.y)) : MARGIN
  return {
    do: 'move',
    to: [...places].map(([part, place]) => ({ part, x: x0 + place.x, y: y0 + place.y })),
  }
}

/**
 * The edit that lays out what the data view shows, hub first, as on the sheet of data links; or only the parts given.
 * `design`: as that view shows it. It leaves the other views as they are.
 */
export function arrangeLinksEdit(design: Design, answers: Answers | null, only?: ReadonlySet<PartId>): Edit {
  const content = contentOf(design, answers, 'data')
  const isIn = (id: PartId): boolean => only?.has(id) ?? true
  const parts = content.parts.filter((p) => isIn(p.id))
  const shown = content.shown.filter(({ conductor: { from, to } }) => isIn(from.part) && isIn(to.part))
  const places = linkPlaces(design, { ...content, parts, shown })
  const boxes = parts.map((p) => boxOf(p, design.conductors))
  const x0 = only ? Math.min(...boxes.map((b) => b.x)) : MARGIN
  const y0 = only ? Math.min(...boxes.map((b) => b.y)) : MARGIN
  const to = [...places].map(([part, { x, y }]) => ({ part, x: x0 + x, y: y0 + y }))
  return { do: 'move', to, view: 'data' }
}

function arrangePart(design: Design, part: Part, answers: Answers | null): ArrangePart {
  const box = boxOf(part, design.conductors)
  const ports = terminalsOf(part, design.conductors).map((t) => ({
    id: t.key,
    x: t.x - box.x,
    y: t.y - box.y,
    side: t.side,
  }))
  const group = kindOf(part.kind)?.group
  const { w, h } = blockOf(partLines(design, part, answers))
  return { id: part.id, w: box.w, h: box.h, column: group ? COLUMN[group] : 'load', ports, words: { w, h } }
}

/** A conductor in the direction in which its greater current flows; as drawn where that is not known. */
function arrangeLink(c: Conductor, answers: Answers | null): ArrangeLink {
  const run = answers?.runs.get(c.id)
  const back = run ? amps(run.backward) > amps(run.forward) : false
  const end = (t: Conductor['from']) => ({ part: t.part, port: t.terminal })
  return back ? { from: end(c.to), to: end(c.from) } : { from: end(c.from), to: end(c.to) }
}

function amps(answer: Answer<WorstCase>): number {
  if (!('value' in answer)) return 0
  return answer.value.amps === 'unlimited' ? Number.POSITIVE_INFINITY : answer.value.amps
}
