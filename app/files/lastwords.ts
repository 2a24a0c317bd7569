import type { Kept } from './database'
import { fetchKept, keep } from './kept'

type Words = Omit<Kept, 'thumbnail'>

const KEY = 'loomwright-last-words'
let spoken = false

/** Puts a design aside at once: a page that is being left has no time to wait for the database. */
export function sayLastWords(words: Words): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(words))
    spoken = true
  } catch {
    // Longer than the browser takes here: the database, one write behind, has to do.
  }
}

/** The database has caught up with what this page put aside. */
export function takeBackLastWords(): void {
  if (spoken) localStorage.removeItem(KEY)
  spoken = false
}

/** What a page that was left put aside goes into the database, unless that has something newer. */
export async function hearLastWords(): Promise<void> {
  const text = localStorage.getItem(KEY)
  if (text === null) return
  const words = JSON.parse(text) as Words
  const kept = await fetchKept(words.id)
  if (!kept || kept.savedAt < words.savedAt) await keep(words)
  localStorage.removeItem(KEY)
}
