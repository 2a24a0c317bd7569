import type { EnvelopeResult } from '../../engine/calc/envelope'
import type { NetworkForm } from '../../engine/calc/form'
import { currentsLp, extremeOf } from '../reference/currents'

/** Every worst case as a linear program: how long that takes, ms, and how far the envelope is off at most, as a share. */
export function programmed(
  form: NetworkForm,
  r: EnvelopeResult,
): { readonly ms: number; readonly off: number } {
  const start = performance.now()
  const lp = currentsLp(form)
  let off = 0
  form.branches.forEach((_, e) => {
    for (const side of ['min', 'max'] as const) {
      const want = extremeOf(lp, form, e, side)
      off = Math.max(off, Math.abs(r[side][e]! - want) / Math.max(1, Math.abs(want)))
    }
  })
  lp.dispose()
  return { ms: performance.now() - start, off }
}
