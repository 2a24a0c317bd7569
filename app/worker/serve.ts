import type { Numbered, Outcome } from './newest'

/** The worker's side: one wish in, one outcome out. A fault of the engine is told, never swallowed. */
export function serve<Wish, Result>(answer: (wish: Wish) => Result | Promise<Result>): void {
  self.onmessage = async ({ data: { seq, body } }: MessageEvent<Numbered<Wish>>) => {
    const reply = (outcome: Outcome<Result>) => self.postMessage({ seq, body: outcome })
    try {
      reply({ done: await answer(body) })
    } catch (error) {
      reply({ failed: error instanceof Error ? error.message : String(error) })
    }
  }
}
