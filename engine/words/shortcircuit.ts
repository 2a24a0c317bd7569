import type { EndFault } from '../calc/faultanswers'
import type { Design } from '../model/design'
import { figure, partName } from './names'
import { whyNot } from './why'

/** Of which devices it hangs how long a short circuit at one end of a conductor lasts, and what the figures stand on. */
export function whyShortCircuit({ clearing }: EndFault, design: Design): string[] {
  return [
    ...clearing.map(({ part, amps, within }) => {
      const name = partName(design, part)
      if (!('value' in within))
        return `${name} sees ${figure(amps, 'A')} of the least. ${whyNot(within, design)}`
      if (within.value === null) return `${name} sees ${figure(amps, 'A')} of the least and need not clear it`
      return `${name} sees ${figure(amps, 'A')} of the least and clears it within ${figure(within.value, 's')}`
    }),
    'Greatest: cold copper, full batteries, all sources feeding, neither return nor fuses nor contacts in the way',
    'Least: hot copper, batteries at cut-off, with the return in the way',
  ]
}
