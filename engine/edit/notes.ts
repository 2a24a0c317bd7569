import type { Design, Part } from '../model/design'
import { drawingNotes } from '../model/drawingnotes'
import { partById } from '../model/lookup'
import { done, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Numbers have two figures at most, so that a flag has room for them. */
const MOST = 99

/**
 * Sets the drawing notes anew. Parts go on referring to the same notes by their new numbers; of notes that are gone
 * nothing is left at the parts.
 */
export function applyNotes(design: Design, { notes }: EditOf<'notes'>): EditResult {
  const lines = notes
    .map(({ text, was }) => ({ text: text.replaceAll(/\s+/g, ' ').trim(), was }))
    .filter(({ text }) => text !== '')
  if (lines.length > MOST) return refuse('many-notes', `A drawing has at most ${MOST} notes.`)
  const text = lines.map((l) => l.text).join('\n')
  if (text.length > 20000) return refuse('long-notes', 'Drawing notes have at most 20000 letters together.')
  const now = new Map(lines.flatMap(({ was }, i) => (was === null ? [] : [[was, i + 1] as const])))
  const settings = text === design.settings.notes ? design.settings : { ...design.settings, notes: text }
  const renumbered = withParts(design, (p) =>
    p.notes
      ? referring(
          p,
          p.notes.flatMap((n) => now.get(n) ?? []),
        )
      : p,
  )
  return done(settings === design.settings ? renumbered : { ...renumbered, settings })
}

/** Says which drawing notes a part refers to. */
export function applyRefer(design: Design, { part: id, notes }: EditOf<'refer'>): EditResult {
  const part = partById(design, id)
  if (!part) return refuse('no-part', `There is no part ${id}.`)
  const count = drawingNotes(design).length
  const stray = notes.find((n) => !Number.isInteger(n) || n < 1 || n > count)
  if (stray !== undefined) return refuse('no-note', `There is no drawing note ${stray}.`)
  return done(withParts(design, (p) => (p.id === id ? referring(p, notes) : p)))
}

/** Ascending, each once; none leaves no trace. */
function referring(part: Part, notes: readonly number[]): Part {
  const sorted = [...new Set(notes)].sort((a, b) => a - b)
  const { notes: before = [], ...rest } = part
  if (sorted.length === before.length && sorted.every((n, i) => n === before[i])) return part
  return sorted.length === 0 ? rest : { ...rest, notes: sorted }
}
