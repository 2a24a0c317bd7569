import { shortedDevices } from './polarity'
import { found, type Rule } from './rule'

/**
 * J1: both terminals of a device lie in one net: a short circuit across it, closed through whatever joins them.
 * Where a source is shorted, what stands beside it in the same net is shorted by the same join and is not listed.
 */
export const shortCircuit: Rule = {
  id: 'J1',
  looksFor: 'devices with both terminals joined to each other',
  check: (c) => {
    const shorted = [...shortedDevices(c)].flatMap((id) => {
      const ref = c.border.devices.get(id)
      const net = c.p.net[c.p.positive[c.p.deviceIndex.get(id)!]!]!
      return ref ? [{ ref, net, feeds: ref.device.sustainedFaultA !== 0 }] : []
    })
    const fed = new Set(shorted.filter((s) => s.feeds).map((s) => s.net))
    return shorted
      .filter((s) => s.feeds || !fed.has(s.net))
      .map(({ ref, feeds }) =>
        found(
          'J1',
          feeds ? 'danger' : 'warning',
          'method',
          { parts: [ref.part] },
          { part: ref.part, source: feeds },
          { about: ref.device.key },
        ),
      )
  },
}
