import type { Answers } from '../calc/answers'
import { designIn } from '../edit/designin'
import type { Design } from '../model/design'
import type { Drawing } from './drawing'
import { type Content, contentOf } from './layout'
import { linkDesign } from './linkdesign'
import { natureIn } from './nature'
import type { Area } from './paper'
import type { SceneView } from './scene'
import { drawingsOf } from './spread'

/** Drawings of one kind, with the design as its parts stand in them. */
export interface PaperDrawings {
  readonly design: Design
  readonly drawings: readonly Drawing[]
}

/**
 * What is drawn on paper, for sheets that offer `room`: one view without its data links, then the links, which have
 * sheets of their own; these none where there are no links. Cost: that of the router, twice where a drawing is spread.
 */
export function paperDrawings(
  design: Design,
  answers: Answers | null,
  view: Exclude<SceneView, 'data'>,
  room: Area,
): { readonly power: PaperDrawings; readonly links: PaperDrawings | null } {
  const inView = designIn(design, view)
  const power = drawingsOf(inView, answers, withoutLinks(inView, answers, view), room)
  const linked = contentOf(design, answers, 'data')
  if (linked.shown.length === 0) return { power: { design: inView, drawings: power }, links: null }
  // Links that were laid out by hand stay as they were; others are moved together.
  const byHand = linked.parts.some((p) => p.at?.data)
  const near = byHand ? designIn(design, 'data') : linkDesign(design, linked)
  const links = drawingsOf(near, answers, contentOf(near, answers, 'data'), room)
  return { power: { design: inView, drawings: power }, links: { design: near, drawings: links } }
}

/** A view without its data links, and without parts that hang on nothing else. */
function withoutLinks(design: Design, answers: Answers | null, view: Exclude<SceneView, 'data'>): Content {
  const natureOf = natureIn(design, answers)
  const content = contentOf(design, answers, view)
  const shown = content.shown.filter((s) => natureOf(s.conductor) !== 'data')
  const joined = new Set(
    design.conductors.filter((c) => natureOf(c) !== 'data').flatMap((c) => [c.from.part, c.to.part]),
  )
  const linked = new Set(design.conductors.flatMap((c) => [c.from.part, c.to.part]))
  return { ...content, shown, parts: content.parts.filter((p) => joined.has(p.id) || !linked.has(p.id)) }
}
