import { analyse, type Scene, sceneOf } from '../../engine'
import type { Reply, Request } from './messages'

/** The scene of before, for each view: ways that still stand are kept. */
let previous: Scene | undefined

const send = (reply: Reply) => self.postMessage(reply)

/** One design in, its answers and its scene out. A fault of the engine itself is told, never swallowed. */
self.onmessage = (e: MessageEvent<Request>) => {
  const { seq, design, view } = e.data
  try {
    const { answers, findings } = analyse(design)
    send({ is: 'answers', seq, answers, findings })
    const scene = sceneOf(design, answers, view, previous)
    previous = scene
    send({ is: 'scene', seq, scene })
  } catch (error) {
    send({ is: 'failure', seq, why: error instanceof Error ? error.message : String(error) })
  }
}
