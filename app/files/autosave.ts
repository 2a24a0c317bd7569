import { type Design, writeDesign } from '../../engine'
import { useOpen } from '../store/open'
import { useSaved } from '../store/saved'
import { keep } from './database'

/**
 * Keeps every edit in the browser's database, at once: while one write is under way the newest design waits, so at
 * most one write's time is ever lost. Returns a function that stops it.
 */
export function startAutosave(): () => void {
  let writing = false
  let wanted: Design | null = null

  const write = async (design: Design) => {
    writing = true
    useSaved.setState({ state: 'keeping' })
    try {
      const { name, revision } = design.settings
      await keep({
        id: design.id,
        name,
        revision,
        parts: design.parts.length,
        conductors: design.conductors.length,
        savedAt: new Date().toISOString(),
        text: writeDesign(design),
      })
      useSaved.setState({ state: 'kept' })
    } catch {
      useSaved.setState({ state: 'failed' })
    }
    writing = false
    const next = wanted
    wanted = null
    if (next) void write(next)
  }

  return useOpen.subscribe((now, before) => {
    if (now.hold !== 'writing' || now.design === before.design) return
    const edited = now.history.past.length + now.history.future.length > 0
    if (!edited && !now.own) return
    if (writing) wanted = now.design
    else void write(now.design)
  })
}
