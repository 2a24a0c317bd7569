import type { Design } from '../model/design'
import type { Amps } from '../units'
import { envelopes } from './envelope'
import { valuesOf } from './fusefacts'
import type { State } from './solved'

/**
 * Greatest current of every branch, either way, with everything that is not continuous switched off, by branch id; A.
 * Over all positions of the contacts; Infinity and NaN as in the envelope. One more envelope a position.
 */
export function continuousCurrents(design: Design, states: readonly State[]): Map<string, Amps> {
  const worst = new Map<string, Amps>()
  for (const { any } of states) {
    const { p } = any
    const least = p.min.map((amps, d) => {
      const ref = any.border.devices.get(p.form.devices[d]!.id)
      return ref && valuesOf(design, ref.part)('continuous') === false ? 0 : amps
    })
    const { min, max } = envelopes({ ...p, min: least })
    p.form.branches.forEach((b, e) => {
      const amps = Math.max(max[e]!, -min[e]!)
      const before = worst.get(b.id)
      if (before === undefined || Number.isNaN(amps) || amps > before) worst.set(b.id, amps)
    })
  }
  return worst
}
