import type { Design, SceneView } from '../../engine'
import { useLatest } from '../store/latest'
import type { Reply, Request } from './messages'

/** One request is under way at most; while it is, only the newest wish waits. */
export class Client {
  private seq = 0
  private current: Request | null = null
  private waiting: Request | null = null

  constructor(private readonly post: (request: Request) => void) {}

  ask(design: Design, view: SceneView): void {
    const request = { seq: ++this.seq, design, view }
    if (this.current) this.waiting = request
    else this.send(request)
  }

  receive(reply: Reply): void {
    const request = this.current
    if (!request || reply.seq !== request.seq) return
    const { design } = request
    if (reply.is === 'answers')
      useLatest.setState({
        answers: reply.answers,
        findings: reply.findings,
        checked: design,
        failure: null,
      })
    else if (reply.is === 'scene') useLatest.setState({ scene: reply.scene, laidOut: design })
    else useLatest.setState({ failure: reply.why })
    if (reply.is !== 'answers') this.next()
  }

  private next(): void {
    this.current = null
    const next = this.waiting
    this.waiting = null
    if (next) this.send(next)
  }

  private send(request: Request): void {
    this.current = request
    this.post(request)
  }
}

export function startClient(): Client {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })
  const client = new Client((request) => worker.postMessage(request))
  worker.onmessage = (e: MessageEvent<Reply>) => client.receive(e.data)
  return client
}
