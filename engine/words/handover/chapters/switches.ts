import type { HandoverFacts } from '../../../calc/handover/facts'
import type { Handle } from '../../../calc/handover/handles'
import type { SwitchEffect } from '../../../calc/handover/switches'
import type { Thing } from '../../../calc/handover/things'
import type { Piece } from '../book'
import type { Say } from '../say'
import { offBefore } from './plugs'

/** What each switch, breaker, plug and self-acting contact takes off. */
export function switchPieces(facts: HandoverFacts, say: Say): Piece[] {
  const { switches, readings, finds, isolation } = facts
  const { w, list, short } = say
  const groups = (['hand', 'breaker', 'plug', 'itself'] as const).flatMap((is): Piece[] => {
    const of = switches.filter((s) => s.handle.is === is)
    return of.length === 0
      ? []
      : [{ is: 'heading', text: w.switches[is] }, ...of.map((s) => entryOf(facts, s, say))]
  })
  const always = readings.always.length > 0 && finds.length > 0
  return [
    { is: 'text', text: w.chapters.switches.lead },
    ...(groups.length > 0 ? groups : [{ is: 'text' as const, text: w.switches.none }]),
    ...(always
      ? ([
          { is: 'heading', text: w.switches.always },
          {
            is: 'text',
            text: (isolation.batteries.length > 0 ? w.switches.alwaysLead : w.switches.alwaysNone)(
              list(readings.always.map(short)),
            ),
          },
        ] as const)
      : []),
  ]
}

function entryOf(facts: HandoverFacts, { handle, off, on }: SwitchEffect, say: Say): Piece {
  const { w, part, at } = say
  const s = w.switches
  const named = (things: readonly Thing[]): string => say.list(things.map((t) => say.short(t.part)))
  const before = handle.is === 'plug' ? offBefore(facts, handle) : null
  const lines = [
    ...(off.length > 0 ? [opens(handle, say)(named(off))] : []),
    ...(on.length > 0 ? [s.goesOn(named(on))] : []),
    ...(handle.is === 'plug' ? [s.notUnderLoad] : []),
    ...(before ? [s.before(at(before.part))] : []),
  ]
  return {
    is: 'entry',
    title: part(handle.part),
    place: handle.part.location.trim(),
    lines: lines.length > 0 ? lines : [s.nothing],
  }
}

const opens = ({ is }: Handle, { w: { switches: s } }: Say) =>
  is === 'plug' ? s.drawn : is === 'itself' ? s.opens : s.off
