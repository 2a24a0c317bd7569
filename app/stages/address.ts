import { setStage, useView } from '../store/view'
import { STAGES } from './stages'

/** The stage stands in the address (#bench), so that it can be kept as a bookmark and the browser's way back works. */
export function watchAddress(): void {
  const read = () => {
    const word = window.location.hash.slice(1)
    setStage(STAGES.find((s) => s.key === word)?.key ?? 'drawing')
  }
  read()
  window.addEventListener('hashchange', read)
  window.addEventListener('popstate', read)
  useView.subscribe((now, before) => {
    if (now.stage === before.stage) return
    const hash = now.stage === 'drawing' ? '' : `#${now.stage}`
    if (window.location.hash === hash) return
    window.history.pushState(null, '', hash || window.location.pathname + window.location.search)
  })
}
