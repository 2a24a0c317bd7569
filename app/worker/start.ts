import { type Analysed, type Design, type Scene, sameForChecks } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { startBuilt } from './built'
import { light } from './light'
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
      else useLatest.setState({ ...outcome.done, checked: newest(design), failure: null })
      askScene()
    },
    light,
  )
  const scenes = connect<SceneWish, Scene>(
    new Worker(new URL('./scene.worker.ts', import.meta.url), { type: 'module' }),
    (outcome, { design }) => {
      if ('failed' in outcome) useLatest.setState({ failure: outcome.failed })
      else useLatest.setState({ scene: outcome.done, laidOut: newest(design) })
    },
    (wish) => ({ ...wish, design: light(wish.design) }),
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

/** The design on the table, where only records have been added to the one that was worked on; else that one. */
function newest(design: Design): Design {
  const now = useOpen.getState().design
  return sameForChecks(design, now) ? now : design
}

/** `sent`: what of a wish the worker needs. */
function connect<Wish, Result>(
  worker: Worker,
  take: ConstructorParameters<typeof Newest<Wish, Result>>[1],
  sent: (wish: Wish) => Wish,
) {
  const asked = new Newest<Wish, Result>(
    ({ seq, body }) => worker.postMessage({ seq, body: sent(body) }),
    take,
  )
  worker.onmessage = (e) => asked.receive(e.data)
  return asked
}
