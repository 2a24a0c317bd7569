import { prepare } from '../calc/prepare'
import { found, type Rule } from './rule'

/** J1: both terminals of a device lie in one net: a short circuit across it, closed through whatever joins them. */
export const shortCircuit: Rule = {
  id: 'J1',
  looksFor: 'devices with both terminals joined to each other',
  check: ({ border }) => {
    const p = prepare(border.form)
    return border.form.devices.flatMap((d, i) => {
      if (p.net[p.positive[i]!] !== p.net[p.negative[i]!]) return []
      const ref = border.devices.get(d.id)
      if (!ref) return []
      const level = ref.role === 'battery' || d.sustainedFault !== 0 ? 'danger' : 'warning'
      return [
        found(
          'J1',
          level,
          'method',
          { parts: [ref.part] },
          { part: ref.part, source: d.sustainedFault !== 0 },
          {
            about: ref.device.key,
          },
        ),
      ]
    })
  },
}
