import type { Browser, Page } from 'playwright'

/** Work of each frame, ms. */
export interface FrameWork {
  /** Of the page's own thread: script, style, layout, paint. */
  readonly page: readonly number[]
  /** Of the threads that turn paint into pixels. */
  readonly pixels: readonly number[]
}

interface TraceEvent {
  readonly name: string
  readonly ph: string
  readonly pid: number
  readonly tid: number
  readonly ts: number
  readonly dur?: number
  readonly args?: { readonly name?: string }
}

const CATEGORIES = ['devtools.timeline', 'disabled-by-default-devtools.timeline', 'blink.user_timing']
const MARK = 'step-done'

/** Traces `steps` steps of something that goes on, and a frame after each. */
export async function workOf(
  browser: Browser,
  page: Page,
  steps: number,
  step: (k: number) => Promise<void>,
): Promise<FrameWork> {
  await browser.startTracing(page, { categories: CATEGORIES })
  await frameDone(page)
  for (let k = 0; k < steps; k++) {
    await step(k)
    await frameDone(page)
  }
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString()) as {
    traceEvents: readonly TraceEvent[]
  }
  return worked(traceEvents)
}

const frameDone = (page: Page): Promise<void> =>
  page.evaluate(
    (mark) =>
      new Promise<void>((resolve) =>
        requestAnimationFrame(() =>
          setTimeout(() => {
            performance.mark(mark)
            resolve()
          }),
        ),
      ),
    MARK,
  )

/** Sums tasks between marks, on the thread that set the marks, and on the threads of its process that make pixels. */
function worked(events: readonly TraceEvent[]): FrameWork {
  const marks = events.filter((e) => e.name === MARK).sort((a, b) => a.ts - b.ts)
  const [first] = marks
  if (!first) throw new Error('The trace holds no marks.')
  const sums = (of: readonly TraceEvent[]): number[] =>
    marks.slice(1).map((to, k) => {
      const from = marks[k]!.ts
      return of.reduce((sum, e) => sum + (e.ts >= from && e.ts < to.ts ? e.dur! / 1000 : 0), 0)
    })
  const done = events.filter((e) => e.ph === 'X' && e.dur !== undefined && e.pid === first.pid)
  return {
    page: sums(done.filter((e) => e.name === 'RunTask' && e.tid === first.tid)),
    pixels: sums(done.filter((e) => e.name === 'RasterTask')),
  }
}

/** The value that this part, 0 to 1, of the values do not pass. */
export const quantile = (values: readonly number[], part: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(part * values.length))] ??
  Number.NaN
