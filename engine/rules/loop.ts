import { shortedDevices } from './polarity'
import { found, type Rule } from './rule'

/**
 * J3: sources that feed each other in a ring across nets (a reversed battery makes one): no protection check is
 * sound. A source with both terminals joined makes a ring of its own, which J1 tells.
 */
export const sourceLoop: Rule = {
  id: 'J3',
  looksFor: 'sources that feed each other in a ring',
  check: (c) => {
    const parts = new Set<string>()
    for (const run of c.answers.runs.values())
      for (const end of [run.from, run.to])
        if ('notChecked' in end && end.notChecked === 'source-cycle')
          for (const part of end.parts) parts.add(part)
    if (parts.size === 0) return []
    for (const id of shortedDevices(c)) parts.delete(c.border.devices.get(id)?.part ?? '')
    if (parts.size === 0) return []
    const devices = [...parts]
    return [found('J3', 'danger', 'method', { parts: devices }, { devices })]
  },
}
