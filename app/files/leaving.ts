import { useOpen } from '../store/open'
import { useSaved } from '../store/saved'
import { keptOf } from './autosave'
import { sayLastWords } from './lastwords'

/**
 * What is being typed counts when the page is left in the middle of it (reloaded, closed, put aside on a tablet): the
 * field is left as by the person, so that it hands over its entry, and taken up again when the page comes back.
 * Returns a function that stops it.
 */
export function startLeaving(): () => void {
  let left: HTMLElement | null = null
  const leave = () => {
    const at = document.activeElement
    if (at instanceof HTMLInputElement || at instanceof HTMLTextAreaElement) {
      left = at
      at.blur()
    }
    if (useSaved.getState().state === 'keeping') sayLastWords(keptOf(useOpen.getState().design))
  }
  const turn = () => {
    if (document.visibilityState === 'hidden') return leave()
    if (left?.isConnected) left.focus()
    left = null
  }
  window.addEventListener('beforeunload', leave)
  window.addEventListener('pagehide', leave)
  document.addEventListener('visibilitychange', turn)
  return () => {
    window.removeEventListener('beforeunload', leave)
    window.removeEventListener('pagehide', leave)
    document.removeEventListener('visibilitychange', turn)
  }
}
