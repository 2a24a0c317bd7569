import { analyse } from '../../engine'
import type { Reply, Request } from './messages'

const send = (reply: Reply) => self.postMessage(reply)

/** One design in, its answers and its scene out. A fault of the engine itself is told, never swallowed. */
self.onmessage = (e: MessageEvent<Request>) => {
  const { seq, design } = e.data
  try {
    const { answers, findings } = analyse(design)
    send({ is: 'answers', seq, answers, findings })
    send({ is: 'scene', seq, scene: { view: 'both-poles', parts: [], conductors: [], joins: [], labels: [], box: { x: 0, y: 0, w: 10, h: 10 } } })
  } catch (error) {
    send({ is: 'failure', seq, why: error instanceof Error ? error.message : String(error) })
  }
}
