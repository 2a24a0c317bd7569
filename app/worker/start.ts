import { type Analysed, type Design, type Scene, sameForChecks } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { startBuilt } from './built'
import { Newest } from './newest'
import type { SceneWish } from './scene.worker'
import { startWays } from './ways'

/**
 * Keeps answers and scene up to date with the design, each in a worker of its own: figures and findings never wait for
 * the drawing, and the canvas waits for neither.
 */
export function startEngine(): void {
  const answers = connect<Design, Analysed>(
    new Worker(new URL('./answers.worker.ts', import.meta.url), { type: 'module' }),
    (outcome, design) => {
      if ('failed' in outcome) useLatest.setState({ failure: outcome.failed })
      else useLatest.setState({ ...outcome.done, checked: design, failure: null })
      askScene()
    },
  )
  const scenes = connect<SceneWish, Scene>(
    new Worker(new URL('./scene.worker.ts', import.meta.url), { type: 'module' }),
    (outcome, { design }) => {
      if ('failed' in outcome) useLatest.setState({ failure: outcome.failed })
      else useLatest.setState({ scene: outcome.done, laidOut: design })
    },
  )
  const askScene = () =>
    scenes.ask({
      design: useOpen.getState().design,
      answers: useLatest.getState().answers,
      view: useView.getState().view,
    })

  startBuilt()
  startWays()
  useOpen.subscribe((now, before) => {
    if (now.hold === 'loading' || now.design === before.design) return
    const { checked, laidOut } = useLatest.getState()
    // A tick at the bench changes no figure and no line: what was worked out stands for the new design too.
    if (checked !== before.design || !sameForChecks(before.design, now.design)) answers.ask(now.design)
    else if (laidOut === before.design) useLatest.setState({ checked: now.design, laidOut: now.design })
    else {
      useLatest.setState({ checked: now.design })
      askScene()
    }
  })
  useView.subscribe((now, before) => {
    if (now.view !== before.view && useOpen.getState().hold !== 'loading') askScene()
  })
}

function connect<Wish, Result>(worker: Worker, take: ConstructorParameters<typeof Newest<Wish, Result>>[1]) {
  const newest = new Newest<Wish, Result>((wish) => worker.postMessage(wish), take)
  worker.onmessage = (e) => newest.receive(e.data)
  return newest
}
