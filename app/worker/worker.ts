import type { Reply, Request } from './messages'

onmessage = (e: MessageEvent<Request>) => {
  const { seq } = e.data
  postMessage({ is: 'failure', seq, why: 'no engine yet' } satisfies Reply)
}
