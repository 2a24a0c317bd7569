import { type BuiltAnalysed, differencesOf, sameForChecks } from '../../engine'
import { useBuilt } from '../store/built'
import { useLatest } from '../store/latest'
import type { BuiltWish } from './built.worker'
import { light } from './light'
import { Newest } from './newest'

/**
 * Keeps the checks of the design as built up to date, after those of the drawing. The worker is loaded with the first
 * conductor that was built otherwise.
 */
export function startBuilt(): void {
  let worker: Worker | null = null
  const newest = new Newest<BuiltWish, BuiltAnalysed | null>(
    ({ seq, body }) => worker?.postMessage({ seq, body: { ...body, design: light(body.design) } }),
    (outcome, { design }) => {
      // It may have been taken back, or another design opened, in the meantime.
      const { checked } = useLatest.getState()
      if (checked?.id !== design.id || differencesOf(checked).length === 0) return
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
    if (known.of?.id !== checked.id) useBuilt.setState({ built: null, of: null, failure: null })
    if (!worker) {
      worker = new Worker(new URL('./built.worker.ts', import.meta.url), { type: 'module' })
      worker.onmessage = (e) => newest.receive(e.data)
    }
    newest.ask({ design: checked, drawn: findings })
  })
}
