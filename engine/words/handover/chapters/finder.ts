import type { HandoverFacts } from '../../../calc/handover/facts'
import type { FuseFind, FuseStep } from '../../../calc/handover/finder'
import { aheadOf, type Common, commonOf, type FindGroup, groupsOf } from '../../../calc/handover/findgroups'
import type { Handle } from '../../../calc/handover/handles'
import type { Piece } from '../book'
import type { Say } from '../say'
import { linesOf } from './fuselines'

/**
 * From a dead thing to its fuses, with the switches to look at first. What several hang on stands once, before them;
 * then the things by name, and what charges last.
 */
export function finderPieces(facts: HandoverFacts, say: Say): Piece[] {
  const { finds } = facts
  const { w, short } = say
  const byName = new Intl.Collator(w.locale, { numeric: true })
  const sorted = [...finds].sort((a, b) => byName.compare(short(a.thing.part), short(b.thing.part)))
  const common = commonOf(finds)
  const groups = groupsOf(finds, common)
  const toldBefore = new Set(groups.flatMap((g) => g.finds))
  const pieces = (of: readonly FuseFind[]): Piece[] =>
    of.map((find) => pieceOf(find, toldBefore.has(find) ? [] : aheadOf(find, common), common, say))
  const charging = sorted.filter((f) => f.thing.role === 'charging')
  return [
    { is: 'text', text: w.chapters.finder.lead },
    { is: 'list', items: w.finder.rules },
    ...allDead(common, facts, say),
    ...groups.map((group) => groupPiece(group, say)),
    ...pieces(sorted.filter((f) => f.thing.role !== 'charging')),
    ...(charging.length > 0 ? [{ is: 'heading' as const, text: w.readings.charging }] : []),
    ...pieces(charging),
  ]
}

/** What takes everything off at once. */
function allDead({ fuses, switches }: Common, { finds, stores }: HandoverFacts, say: Say): Piece[] {
  const { part } = say
  const { finder: f } = say.w
  if (fuses.length === 0 && switches.length === 0) return []
  const isLithium = stores.some((s) => !s.isStarting && s.chemistry === 'lfp')
  return [
    {
      is: 'find',
      shared: finds.map((f) => part(f.thing.part)),
      title: f.allDead,
      place: '',
      first: mustBeOn(switches, say),
      fuses: linesOf(fuses, say),
      next: f.next,
      note: isLithium ? `${f.mayBeEmpty} ${f.switchedItself}` : f.mayBeEmpty,
    },
  ]
}

function groupPiece(group: FindGroup, say: Say): Piece {
  const { w, part, list, short } = say
  return {
    is: 'find',
    shared: group.finds.map((f) => part(f.thing.part)),
    title: w.finder.group(part(group.block)),
    place: group.block.location.trim(),
    first: mustBeOn(group.switches, say),
    fuses: linesOf(group.fuses, say),
    next: w.finder.next,
    note: w.finder.together(list(group.finds.map((f) => short(f.thing.part)))),
  }
}

function pieceOf(find: FuseFind, ahead: readonly FuseStep[], common: Common, say: Say): Piece {
  const { thing, switches, fuses, works } = find
  const { w, part } = say
  const notes = [works ? '' : w.finder.notFed, fuses.length === 0 ? w.finder.noFuse : '']
  return {
    is: 'find',
    title: part(thing.part),
    place: thing.part.location.trim(),
    first: mustBeOn(
      switches.filter((h) => h.is !== 'breaker' && !common.switches.includes(h)),
      say,
    ),
    fuses: linesOf([...fuses.slice(0, 1), ...ahead], say),
    next: w.finder.next,
    note: notes.filter((n) => n !== '').join(' '),
  }
}

const mustBeOn = (handles: readonly Handle[], { w, at, list }: Say): string =>
  handles.length === 0 ? '' : w.finder.mustBeOn(list(handles.map((h) => at(h.part))))
