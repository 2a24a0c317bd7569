import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Part } from '../../../model/design'
import type { Piece } from '../book'
import type { Say } from '../say'

/** Capacitors of theirs hold a charge for minutes. Common practice, no source. */
const HOLDING = ['inverter', 'inverter-charger']

/** What to switch off in an emergency, in which order, and what stays live. */
export function emergencyPieces({ design, isolation: i, stores, finds }: HandoverFacts, say: Say): Piece[] {
  const { w, at, part, list } = say
  const e = w.emergency
  const names = (parts: readonly Part[]): string => list(parts.map(part))
  const steps = [
    ...i.engines.map((p) => e.engine(part(p))),
    ...i.mains.map((p) => e.mains(at(p))),
    ...i.batteries.map((h) => e.battery(at(h.part))),
    ...i.arrays.map((h) => e.array(at(h.part))),
  ]
  const things = new Set(finds.flatMap((f) => (f.thing.role === 'charging' ? [] : [f.thing.part.id])))
  const joined = i.stillLive.filter((p) => !things.has(p.id))
  const holding = design.parts.filter((p) => HOLDING.includes(p.kind))
  const told = (parts: readonly Part[], words: (names: string) => string): string[] =>
    parts.length > 0 ? [words(names(parts))] : []
  const live = [
    ...(stores.length > 0 ? [e.posts(list(stores.map((s) => at(s.part))))] : []),
    ...told(i.unswitched, e.unswitched),
    ...told(
      i.stillOn.map((t) => t.part),
      e.goOn,
    ),
    ...(i.lastFuses.length > 0 ? [e.lastFuse(list(i.lastFuses.map((f) => at(f.part))))] : []),
    ...told(i.runOn, e.runOn),
    ...told(i.sunFed, e.sunFed),
    ...told(i.lightSources, e.light),
    ...told(joined, e.joined),
    ...told(holding, e.holds),
  ]
  return [
    { is: 'text', text: w.chapters.emergency.lead, strong: true },
    { is: 'text', text: e.gas },
    ...(i.batteries.length === 0
      ? [{ is: 'text' as const, text: e.noBatterySwitch, strong: true as const }]
      : []),
    ...(steps.length > 0
      ? ([
          { is: 'heading', text: e.first },
          { is: 'list', items: steps, numbered: true },
        ] as const)
      : []),
    { is: 'heading', text: e.staysLive },
    { is: 'list', items: live },
    ...(i.batteries.length > 0 && i.arrays.length > 0 ? [{ is: 'text' as const, text: e.calm }] : []),
    { is: 'text', text: e.practise, strong: true },
  ]
}
