import { found, type Rule } from './rule'

/** C2: a battery without a stated limit leaves worst-case currents without a bound. */
export const noLimit: Rule = {
  id: 'C2',
  looksFor: 'currents without a bound, because a limit is not stated',
  check: ({ answers, border }) => {
    const open = [...answers.runs].filter(
      ([, run]) => 'value' in run.design && run.design.value === 'unlimited',
    )
    if (open.length === 0) return []
    const parts = new Map<string, { charge: boolean; discharge: boolean }>()
    for (const { part, device } of border.devices.values()) {
      if (device.minA !== 'unlimited' && device.maxA !== 'unlimited') continue
      parts.set(part, { charge: device.minA === 'unlimited', discharge: device.maxA === 'unlimited' })
    }
    const conductors = open.map(([id]) => id)
    return [...parts].map(([part, lacks]) =>
      found('C2', 'not-checked', 'method', { parts: [part] }, { part, conductors, ...lacks }),
    )
  },
}
