import type { DeviceFault } from '../calc/faultanswers'
import { type FuseFacts, fuseFacts } from '../calc/fusefacts'
import type { PartId } from '../model/design'
import { above } from '../units'
import { found, type Rule } from './rule'

/**
 * K7: in a very large meshed network only short circuits at a device's own ends are tried. What these drive through it may
 * be too much already, and K1 tells; where it is not, more may flow in another one, and the device is not checked.
 */
export const untriedShorts: Rule = {
  id: 'K7',
  looksFor: 'breaking capacities for which not every short circuit was tried',
  check: ({ answers, design, border }) => {
    const facts = fuseFacts(design, border)
    const parts = new Set<PartId>()
    for (const [id, { part, greatest }] of answers.faults.devices) {
      const of = facts.get(id)
      if (isWhole(greatest) || !of || of.ratingA === null || failsAlready(greatest, of)) continue
      parts.add(part)
    }
    if (parts.size === 0) return []
    const devices = [...parts]
    return [found('K7', 'not-checked', 'method', { parts: devices }, { devices })]
  },
}

const failsAlready = (greatest: DeviceFault['greatest'], { breakingA }: FuseFacts): boolean =>
  'value' in greatest && breakingA !== null && above(greatest.value.amps, breakingA)

/** Is it the greatest over all short circuits? What is not checked at all is told by other rules. */
export const isWhole = (greatest: DeviceFault['greatest']): boolean =>
  !('value' in greatest) || greatest.value.everyPair
