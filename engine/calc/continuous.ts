import type { Design } from '../model/design'
import type { Amps } from '../units'
import { envelopes } from './envelope'
import { valuesOf } from './fusefacts'
import type { Solved, State } from './solved'

/**
 * Greatest current of every branch, either way, with everything that is not continuous switched off, by branch id; A.
 * Over all positions of the contacts; Infinity and NaN as in the envelope. Devices of unknown size are left out: so
 * much flows for certain. One more envelope a position.
 */
export function continuousCurrents(design: Design, states: readonly State[]): Map<string, Amps> {
  const worst = new Map<string, Amps>()
  for (const { none } of states)
    for (const [id, amps] of lasting(design, none)) {
      const before = worst.get(id)
      if (before === undefined || Number.isNaN(amps) || amps > before) worst.set(id, amps)
    }
  return worst
}

function lasting(design: Design, { border, p }: Solved): Map<string, Amps> {
  const least = p.min.map((amps, d) => {
    const ref = border.devices.get(p.form.devices[d]!.id)
    return ref && valuesOf(design, ref.part)('continuous') === false ? 0 : amps
  })
  const { min, max } = envelopes({ ...p, min: least })
  return new Map(p.form.branches.map((b, e) => [b.id, Math.max(max[e]!, -min[e]!)]))
}
