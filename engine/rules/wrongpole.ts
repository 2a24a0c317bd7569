import { exchanged } from './exchange'
import { reversedDevices } from './polarity'
import { found, type Rule } from './rule'

/** J7: a load joined the wrong way round: it may be destroyed, and its current counts the wrong way in every figure. */
export const wrongPole: Rule = {
  id: 'J7',
  looksFor: 'loads joined the wrong way round',
  check: (c) =>
    [...reversedDevices(c)].flatMap((id) => {
      const ref = c.border.devices.get(id)
      if (!ref) return []
      const { positive, negative, key } = ref.device
      const fix = exchanged(c, ref.part, positive, negative)
      // The coil of a relay works either way round, unless a diode stands across it.
      const level = key === 'coil' ? 'warning' : 'danger'
      return [
        found(
          'J7',
          level,
          'method',
          { parts: [ref.part] },
          { part: ref.part, coil: key === 'coil' },
          { about: key, ...(fix ? { fix } : {}) },
        ),
      ]
    }),
}
