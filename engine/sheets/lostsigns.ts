import type { Design } from '../model/design'
import { unprintable } from './measure'

export interface LostSigns {
  /** The text as it was written. */
  readonly text: string
  /** Those of its signs that are printed as "?", each once. */
  readonly signs: string
}

/** What nobody wrote by hand: digests, pictures, states of other days. */
const NOT_WORDS: ReadonlySet<string> = new Set(['digest', 'frozen', 'jpeg'])

/** Every text of a design, work records included, that loses signs on paper, in the order of the file. Cost: one pass. */
export function lostSigns(design: Design): readonly LostSigns[] {
  const found = new Map<string, string>()
  const look = (value: unknown): void => {
    if (typeof value === 'string') {
      const signs = unprintable(value)
      if (signs !== '') found.set(value, signs)
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) if (!NOT_WORDS.has(key)) look(inner)
    }
  }
  look(design)
  return [...found].map(([text, signs]) => ({ text, signs }))
}
