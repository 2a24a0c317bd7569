import type { Design } from '../../engine'
import { useOpen } from '../store/open'
import { keepPoint } from './points'

const EVERY_MS = 30 * 60_000

/**
 * Keeps the state in which a design was opened, once it is edited, and then the state of every half hour of editing.
 * Returns a function that stops it.
 */
export function startPoints(keep: (design: Design, name: string) => Promise<void> = keepPoint): () => void {
  let id: string | null = null
  let last = 0
  // A browser that cannot keep designs cannot keep their points either, and says so already.
  const keepQuietly = (design: Design, name: string) => void keep(design, name).catch(() => {})
  return useOpen.subscribe((now, before) => {
    const edited = now.hold === 'writing' && now.history.past.length + now.history.future.length > 0
    if (!edited || now.design === before.design || now.design.id !== before.design.id) return
    const first = now.design.id !== id
    if (!first && Date.now() - last < EVERY_MS) return
    id = now.design.id
    last = Date.now()
    keepQuietly(before.design, first ? 'On opening' : 'While editing')
  })
}
