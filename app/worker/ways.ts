import { useHand, useMotion, useWays } from '../store/hand'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { Newest } from './newest'
import type { Ways, WaysBase, WaysWish } from './ways.worker'

/**
 * While parts are carried: true ways of their conductors, in a worker of its own that is loaded with the first drag.
 * It is asked where the hand rests for a moment; until its answer is there the conductors stretch.
 */
export function startWays(): void {
  let worker: Worker | null = null
  const ways = new Newest<WaysWish, Ways>(
    (wish) => worker?.postMessage(wish),
    (outcome, { by }) => {
      if ('done' in outcome) useWays.setState({ by, ways: outcome.done })
    },
  )
  const begin = () => {
    const { scene, laidOut } = useLatest.getState()
    if (!scene || laidOut !== useOpen.getState().design) return false
    if (!worker) {
      worker = new Worker(new URL('./ways.worker.ts', import.meta.url), { type: 'module' })
      worker.onmessage = (e) => ways.receive(e.data)
    }
    const base: WaysBase = { design: laidOut, scene }
    // No wish has this number, so the answer to it goes nowhere.
    worker.postMessage({ seq: 0, body: base })
    return true
  }
  let ready = false
  let rest: ReturnType<typeof setTimeout> | undefined
  useHand.subscribe(({ parts }, before) => {
    if (parts === before.parts) return
    clearTimeout(rest)
    ready = parts.size > 0 && begin()
    useWays.setState({ by: null, ways: new Map() })
  })
  const ask = () => {
    const { parts } = useHand.getState()
    if (ready && parts.size > 0) ways.ask({ parts, by: useMotion.getState().by })
  }
  useMotion.subscribe((now, before) => {
    if (now.by === before.by) return
    clearTimeout(rest)
    rest = setTimeout(ask, REST_MS)
  })
}

/** A hand that has not moved for so long rests. */
const REST_MS = 120
