import type { Numbered, Outcome } from './newest'
import type { PrintWish } from './print.worker'

/** Makes the PDF in a worker of its own, loaded when first asked for. Rejects with what went wrong. */
export function printPdf(wish: PrintWish): Promise<Uint8Array> {
  const worker = new Worker(new URL('./print.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<Uint8Array>((resolve, reject) => {
    worker.onmessage = ({ data: { body } }: MessageEvent<Numbered<Outcome<Uint8Array>>>) =>
      'done' in body ? resolve(body.done) : reject(new Error(body.failed))
    worker.onerror = (e) => reject(new Error(e.message || 'The page could not load what makes the PDF.'))
    worker.postMessage({ seq: 1, body: wish })
  }).finally(() => worker.terminate())
}
