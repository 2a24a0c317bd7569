import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Chemistry } from '../../../calc/handover/stores'
import type { Row } from '../book'
import type { Say } from '../say'

/** Part of its capacity that a battery is used for. Common practice, no source. */
const USABLE: Readonly<Record<Chemistry, number>> = { lfp: 0.8, agm: 0.5, gel: 0.5, flooded: 0.5 }

/** Wh that can be used of the full batteries; null: not known. */
export function usableWh({ stores, storedWh }: HandoverFacts): number | null {
  const shares = stores.flatMap((s) => (s.isStarting || s.chemistry === null ? [] : [USABLE[s.chemistry]]))
  return storedWh === null || shares.length === 0 ? null : storedWh * Math.min(...shares)
}

/** Days in which what only watches and shows empties full batteries; null: not known, or within a day. */
export function idleDays(facts: HandoverFacts): number | null {
  const usable = usableWh(facts)
  const { watchingW } = facts.readings
  if (usable === null || watchingW === null || !(watchingW > 0.05)) return null
  const days = usable / watchingW / 24
  return days < 1 ? null : days
}

/** Currents for which the time is told, A. */
const TOLD = [2, 5, 10, 20, 50, 100, 200] as const
const MOST_ROWS = 5

/** How long full batteries last at some currents below that of everything on. */
export function lastingRows(facts: HandoverFacts, { w, figure }: Say): Row[] {
  const { allOn } = facts.readings
  const usable = usableWh(facts)
  if (!allOn || usable === null || !(usable > 0)) return []
  const ampHours = usable / facts.design.settings.systemV
  return TOLD.filter((amps) => amps < allOn.batteryW / facts.design.settings.systemV)
    .slice(-MOST_ROWS)
    .map((amps) => ({
      label: w.readings.out(figure(amps, 'A')),
      value: w.readings.about(figure(Number((ampHours / amps).toPrecision(2)), 'h')),
    }))
}

/** What is lost, and how long batteries last. */
export function lastingLines(facts: HandoverFacts, { w, figure }: Say): string[] {
  const { allOn, watchingW } = facts.readings
  const r = w.readings
  if (!allOn) return [r.notKnown]
  const { drawnW, lostW, batteryW } = allOn
  const usable = usableWh(facts)
  const days = idleDays(facts)
  const percent = drawnW + lostW > 0 ? (100 * lostW) / (drawnW + lostW) : 0
  return [
    r.lossLine(
      figure(Math.round(drawnW), 'W'),
      figure(Math.round(lostW), 'W'),
      figure(Math.round(percent), '%'),
    ),
    ...(usable !== null && batteryW > 0
      ? [r.lasts(figure(Number((usable / batteryW).toPrecision(2)), ''))]
      : []),
    ...(days !== null && watchingW !== null
      ? [r.idle(figure(watchingW, 'W'), figure(Math.floor(days), ''))]
      : []),
    ...(usable !== null ? [r.shorter] : []),
  ]
}
