import type { Design } from '../model/design'
import { type Handover, MOST_LETTERS, MOST_PARAGRAPHS, type OwnParagraph } from '../model/handover'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Sets language, hidden chapters or own paragraphs of the handover pack; what is empty leaves no trace. */
export function applyHandover(design: Design, { set }: EditOf<'handover'>): EditResult {
  const fault = faultOf(set.paragraphs ?? [])
  if (fault) return fault
  const { handover: before, ...rest } = design
  const { language, hidden, paragraphs, ...further } = { ...before, ...set }
  const handover: Handover = {
    ...further,
    ...(language === undefined ? {} : { language }),
    ...(hidden?.length ? { hidden: [...new Set(hidden)] } : {}),
    ...(paragraphs?.length ? { paragraphs } : {}),
  }
  const empty = Object.keys(handover).length === 0
  if (JSON.stringify(before ?? {}) === JSON.stringify(handover)) return done(design)
  return done(empty ? rest : { ...rest, handover })
}

/** An empty paragraph with an id that no other has. */
export function newParagraph(design: Design, after: string | null): OwnParagraph {
  const taken = (design.handover?.paragraphs ?? []).map(({ id }) => Number(/^h(\d{1,9})$/.exec(id)?.[1] ?? 0))
  return { id: `h${Math.max(0, ...taken) + 1}`, heading: '', text: '', after }
}

/**
 * The paragraphs with one moved a place up (-1) or down (1), past its neighbour: another paragraph, or a chapter of
 * `chapters`. The same list where there is nowhere to go. Pure.
 */
export function movedParagraph(
  paragraphs: readonly OwnParagraph[],
  id: string,
  by: -1 | 1,
  chapters: readonly string[],
): readonly OwnParagraph[] {
  const places: readonly (string | null)[] = [null, ...chapters]
  const at = paragraphs.find((p) => p.id === id)
  if (!at) return paragraphs
  const place = places.includes(at.after) ? at.after : (places.at(-1) ?? null)
  const beside = paragraphs.filter((p) => (places.includes(p.after) ? p.after : places.at(-1)) === place)
  const neighbour = beside[beside.indexOf(at) + by]
  if (neighbour) {
    const [i, k] = [paragraphs.indexOf(at), paragraphs.indexOf(neighbour)]
    return paragraphs.with(i, neighbour).with(k, at)
  }
  const next = places[places.indexOf(place) + by]
  if (next === undefined) return paragraphs
  const moved = { ...at, after: next }
  const others = paragraphs.filter((p) => p.id !== id)
  return by === 1 ? [moved, ...others] : [...others, moved]
}

function faultOf(paragraphs: readonly OwnParagraph[]): Refusal | null {
  if (paragraphs.length > MOST_PARAGRAPHS)
    return refuse('many-paragraphs', `A handover pack has at most ${MOST_PARAGRAPHS} paragraphs of your own.`)
  if (new Set(paragraphs.map((p) => p.id)).size < paragraphs.length)
    return refuse('same-paragraph', 'Every paragraph of the handover pack needs an id of its own.')
  if (paragraphs.some((p) => p.heading.length > 200))
    return refuse('long-heading', 'A heading has at most 200 letters.')
  if (paragraphs.some((p) => p.text.length > MOST_LETTERS))
    return refuse('long-paragraph', `A paragraph has at most ${MOST_LETTERS} letters.`)
  return null
}
