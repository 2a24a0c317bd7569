import type { Design, Revision } from './design'
import { digestOf, packed, unpacked } from './freeze'
import { writeDesign } from './write'

/** What a person says of a revision. */
export type RevisionWords = Pick<Revision, 'number' | 'date' | 'by' | 'reason'>

/** A revision of a design: its file as it is now, without the revisions before it and without photographs. */
export function frozen(design: Design, words: RevisionWords): Revision {
  const { revisions: _before, ...state } = design
  const text = writeDesign(withoutPhotos(state))
  return { ...words, digest: digestOfRevision(words, text), frozen: packed(text) }
}

/** Text of the design file that was issued; null: what is kept is not what was issued any more. */
export function frozenText(revision: Revision): string | null {
  const text = unpacked(revision.frozen)
  return text !== null && digestOfRevision(revision, text) === revision.digest ? text : null
}

const digestOfRevision = ({ number, date, by, reason }: RevisionWords, text: string): string =>
  digestOf(number, date, by, reason, text)

/** Photographs of the work stand once, in the design itself. */
const withoutPhotos = (design: Design): Design =>
  Object.fromEntries(
    Object.entries(design).map(([key, value]) => [key, key === 'bench' ? stripped(value) : value]),
  ) as unknown as Design

function stripped(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(stripped)
  if (typeof data !== 'object' || data === null) return data
  const entries = Object.entries(data).filter(([key]) => key !== 'photos')
  return Object.fromEntries(entries.map(([key, value]) => [key, stripped(value)]))
}

/** An earlier state with the revisions that have been issued since: what was issued is never lost. */
export const withRevisionsOf = (state: Design, { revisions, settings: s }: Design): Design =>
  revisions
    ? { ...state, revisions, settings: { ...state.settings, revision: s.revision, date: s.date } }
    : state

/** Letters of revisions in their order; I, O and Q are passed over, as they read as numerals. */
const LETTERS = 'ABCDEFGHJKLMNPRSTUVWXYZ'

/** What the next revision is usually called: C after B, 4 after 3; the first one goes by the title block, or is A. */
export function nextRevision({ revisions = [], settings }: Design): string {
  const last = revisions.at(-1)?.number
  if (last === undefined) return settings.revision || LETTERS[0]!
  const digits = /\d+$/.exec(last)?.[0]
  if (digits !== undefined) return `${last.slice(0, -digits.length)}${Number(digits) + 1}`
  const letter = LETTERS.indexOf(last.slice(-1))
  if (letter < 0) return `${last}1`
  const before = last.slice(0, -1)
  return letter + 1 < LETTERS.length ? `${before}${LETTERS[letter + 1]}` : `${before}AA`
}
