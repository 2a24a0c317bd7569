import type { Design } from '../model/design'
import { done, put } from './change'
import type { EditOf, EditResult } from './edit'
import { snap } from './grid'
import { refuse } from './refuse'

/** Longest text on the sheet, letters. */
const MOST = 2000

/** Puts a text on the sheet, or replaces the one with the same id: rewritten, moved, shown in other views. */
export function applyText(design: Design, { text }: EditOf<'text'>): EditResult {
  const words = text.text.replace(/\s+$/, '')
  if (words.trim() === '') return refuse('no-text', 'A text on the sheet has at least one letter.')
  if (words.length > MOST) return refuse('long-text', `A text on the sheet has at most ${MOST} letters.`)
  if (!Number.isFinite(text.x) || !Number.isFinite(text.y))
    return refuse('not-a-place', 'A text cannot be put at a place that is not a number.')
  const next = { ...text, text: words, x: snap(text.x), y: snap(text.y) }
  return done({ ...design, texts: put(design.texts, next) })
}

/** Takes texts off the sheet. */
export function applyUntext(design: Design, { ids }: EditOf<'untext'>): EditResult {
  const gone = new Set(ids)
  const stray = ids.find((id) => !design.texts?.some((t) => t.id === id))
  if (stray !== undefined) return refuse('no-text', `There is no text ${stray} on the sheet.`)
  if (gone.size === 0) return done(design)
  const { texts = [], ...rest } = design
  const left = texts.filter((t) => !gone.has(t.id))
  return done(left.length === 0 ? rest : { ...rest, texts: left })
}
