import type { Numbered, Outcome } from './newest'

/** The worker's side: one wish in, one outcome out. A fault of the engine is told, never swallowed. */
export function serve<Wish, Result>(answer: (wish: Wish) => Result): void {
  self.onmessage = ({ data: { seq, body } }: MessageEvent<Numbered<Wish>>) => {
    const reply = (outcome: Outcome<Result>) => self.postMessage({ seq, body: outcome })
    try {
      reply({ done: answer(body) })
    } catch (error) {
      reply({ failed: error instanceof Error ? error.message : String(error) })
    }
  }
}
