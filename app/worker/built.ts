import { type BuiltAnalysed, differencesOf, sameForChecks } from '../../engine'
import { useBuilt } from '../store/built'
import { useLatest } from '../store/latest'
import type { BuiltWish } from './built.worker'
import { Newest } from './newest'

/**
 * Keeps the checks of the design as built up to date, after those of the drawing. The worker is loaded with the first
 * conductor that was built otherwise.
 */
export function startBuilt(): void {
  let worker: Worker | null = null
  const newest = new Newest<BuiltWish, BuiltAnalysed | null>(
    (wish) => worker?.postMessage(wish),
    (outcome, { design }) => {
      if ('failed' in outcome) useBuilt.setState({ failure: outcome.failed })
      else useBuilt.setState({ built: outcome.done, of: design, failure: null })
    },
  )
  useLatest.subscribe(({ checked, findings }, before) => {
    if (!checked || checked === before.checked) return
    if (differencesOf(checked).length === 0) {
      useBuilt.setState({ built: null, of: checked, failure: null })
      return
    }
    const known = useBuilt.getState()
    if (known.of && known.built && before.checked === known.of && sameForChecks(known.of, checked)) {
      useBuilt.setState({ of: checked })
      return
    }
    if (!worker) {
      worker = new Worker(new URL('./built.worker.ts', import.meta.url), { type: 'module' })
      worker.onmessage = (e) => newest.receive(e.data)
    }
    newest.ask({ design: checked, drawn: findings })
  })
}
