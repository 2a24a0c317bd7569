import { CHAPTERS, type OwnParagraph } from '../../../engine'

const LAST = CHAPTERS.at(-1) ?? null
const KNOWN: readonly (string | null)[] = [null, ...CHAPTERS]

/** Own paragraphs that stand after a chapter; one after an unknown chapter stands last. */
export const placed = (paragraphs: readonly OwnParagraph[], after: string | null): readonly OwnParagraph[] =>
  paragraphs.filter((p) => (KNOWN.includes(p.after) ? p.after : LAST) === after)
