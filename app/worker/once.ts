import type { Numbered, Outcome } from './newest'

/** Asks a worker one thing and ends it. Rejects with what went wrong. */
export function askOnce<Wish, Result>(worker: Worker, wish: Wish): Promise<Result> {
  return new Promise<Result>((resolve, reject) => {
    worker.onmessage = ({ data: { body } }: MessageEvent<Numbered<Outcome<Result>>>) =>
      'done' in body ? resolve(body.done) : reject(new Error(body.failed))
    worker.onerror = (e) => reject(new Error(e.message || 'The page could not load what does this work.'))
    worker.postMessage({ seq: 1, body: wish })
  }).finally(() => worker.terminate())
}
