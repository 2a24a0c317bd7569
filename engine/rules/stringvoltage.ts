import { coldVoltage } from '../calc/coldvoltage'
import type { Prepared } from '../calc/prepare'
import type { Volts } from '../units'
import { numberOf } from './ratings'
import { type Case, found, type Rule } from './rule'

/** V1: the cold open-circuit voltage of a string is more than its controller takes: the input is destroyed. */
export const stringVoltage: Rule = {
  id: 'V1',
  looksFor: 'PV strings whose cold open-circuit voltage is too high for the controller',
  check: (c) => {
    const { p } = c
    const arrays = arraysOf(c, p)
    if (arrays.length === 0) return []
    return c.design.parts.flatMap((part) => {
      const limit = part.kind === 'solar-controller' ? numberOf(part, 'pvMaxV') : null
      const input = c.border.devices.get(`${part.id}/input`)
      if (limit === null || !input) return []
      const netOf = (terminal: string): number | undefined => {
        const node = c.border.nodeOf.get(`${part.id}/${terminal}`)
        const index = node === undefined ? undefined : p.nodeIndex.get(node)
        return index === undefined ? undefined : p.net[index]
      }
      const from = netOf(input.device.negative)
      const to = netOf(input.device.positive)
      if (from === undefined || to === undefined) return []
      const { coldestC } = c.design.settings
      const about = { controller: part.id, coldest: coldestC }
      const volts = highest(arrays, from, to)
      if (volts !== null && Number.isNaN(volts))
        return [found('V1', 'not-checked', 'iec-62548', { parts: [part.id] }, about)]
      if (volts === null || volts <= limit) return []
      return [
        found('V1', 'danger', 'iec-62548', { parts: [part.id] }, about, {
          actual: { value: volts, unit: 'V' },
          limit: { value: limit, unit: 'V' },
        }),
      ]
    })
  },
}

interface ArrayEdge {
  readonly low: number
  readonly high: number
  readonly volts: Volts
}

function arraysOf(c: Case, p: Prepared): ArrayEdge[] {
  return c.design.parts.flatMap((part) => {
    const d = part.kind === 'pv-array' ? p.deviceIndex.get(`${part.id}/array`) : undefined
    if (d === undefined) return []
    const volts = coldVoltage(part, c.design.settings.coldestC) ?? Number.NaN
    return [{ low: p.net[p.negative[d]!]!, high: p.net[p.positive[d]!]!, volts }]
  })
}

/** Highest sum of array voltages on a way from one net up to another; each array once. NaN: one is not known. */
function highest(arrays: readonly ArrayEdge[], from: number, to: number): Volts | null {
  if (from === to) return 0
  let best: Volts | null = null
  arrays.forEach((a, i) => {
    if (a.low !== from) return
    const rest = highest(
      arrays.filter((_, j) => j !== i),
      a.high,
      to,
    )
    if (rest !== null && (best === null || !(a.volts + rest <= best))) best = a.volts + rest
  })
  return best
}
