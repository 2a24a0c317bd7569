import { type Design, standingWords, writeDesign } from '../../engine'
import { useOpen } from '../store/open'
import { useSaved } from '../store/saved'
import type { Kept } from './database'
import { keep } from './kept'
import { takeBackLastWords } from './lastwords'

type Keep = (design: Omit<Kept, 'thumbnail'>) => Promise<void>

/**
 * Keeps every edit in the browser's database, at once: while one write is under way the newest state of each design
 * waits, so at most one write's time is ever lost. Returns a function that stops it.
 */
export function startAutosave(write: Keep = keep): () => void {
  const wanted = new Map<string, Design>()
  let writing = false

  const writeAll = async () => {
    writing = true
    useSaved.setState({ state: 'keeping' })
    let failed = false
    for (let next = first(wanted); next; next = first(wanted)) {
      wanted.delete(next.id)
      await write(keptOf(next)).catch(() => {
        failed = true
      })
    }
    writing = false
    useSaved.setState({ state: failed ? 'failed' : 'kept' })
    if (!failed) takeBackLastWords()
  }

  return useOpen.subscribe((now, before) => {
    if (now.hold !== 'writing' || now.design === before.design) return
    const edited = now.history.past.length + now.history.future.length > 0
    if (!edited && !now.own) return
    wanted.set(now.design.id, now.design)
    if (!writing) void writeAll()
  })
}

const first = (wanted: ReadonlyMap<string, Design>): Design | undefined => wanted.values().next().value

/** A design as it is kept. */
export const keptOf = (design: Design): Omit<Kept, 'thumbnail'> => ({
  id: design.id,
  name: design.settings.name,
  revision: standingWords(design).revision,
  parts: design.parts.length,
  conductors: design.conductors.length,
  savedAt: new Date().toISOString(),
  text: writeDesign(design),
})
