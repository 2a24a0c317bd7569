import type { Attempt } from './attempt'
import type { Seen } from './contacts'
import type { Plan } from './plan'

/** What contacts see of an operating point. */
export function seenOf({ border, all, devices }: Plan, { p, feeds, flow, stretch, volts }: Attempt): Seen {
  const node = (terminal: string): number => p.nodeIndex.get(border.nodeOf.get(terminal) ?? terminal) ?? -1
  const index = (device: string): number => all.deviceIndex.get(device)!
  return {
    between: (high, low) => {
      const u = node(high)
      const v = node(low)
      return u === -1 || v === -1 || flow.group[u] !== flow.group[v] ? 0 : flow.voltage[u]! - flow.voltage[v]!
    },
    across: (device) => volts(index(device)),
    restV: (device) => feeds.restV(index(device)),
    charged: (terminal) => {
      const at = node(terminal)
      const here = (d: number): boolean => at !== -1 && p.net[p.positive[d]!] === p.net[at]
      const stored = devices.reduce((sum, x, d) => {
        return x.is === 'battery' && here(d) && !stretch.has(d) ? sum - flow.deviceAmps[d]! : sum
      }, 0)
      const given = devices.some((x, d) => x.device.role === 'source' && here(d) && flow.deviceAmps[d]! > 0)
      return stored > 0 && given
    },
  }
}
