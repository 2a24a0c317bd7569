import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Handle } from '../../../calc/handover/handles'

/** The switch or breaker that stops the current of a plug and the least beside it; null: none does. */
export function offBefore({ switches }: HandoverFacts, plug: Handle): Handle | null {
  const stops = switches.find((s) => s.handle === plug)?.off ?? []
  if (stops.length === 0) return null
  const able = switches.filter(
    ({ handle, off }) =>
      (handle.is === 'hand' || handle.is === 'breaker') &&
      stops.every((t) => off.some((o) => o.part.id === t.part.id)),
  )
  return able.sort((a, b) => a.off.length - b.off.length)[0]?.handle ?? null
}
