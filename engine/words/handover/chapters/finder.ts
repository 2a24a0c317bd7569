import type { HandoverFacts } from '../../../calc/handover/facts'
import type { FuseFind, FuseReason, FuseStep } from '../../../calc/handover/finder'
import type { FuseSpot } from '../../../calc/handover/fuses'
import type { Handle } from '../../../calc/handover/handles'
import type { FuseLine, Piece } from '../book'
import type { Say } from '../say'

/** From a dead thing to its fuses: by name, with the switches to look at first. */
export function finderPieces(facts: HandoverFacts, say: Say): Piece[] {
  const { finds } = facts
  const { w, short } = say
  const byName = new Intl.Collator(w.locale, { numeric: true })
  const sorted = [...finds].sort((a, b) => byName.compare(short(a.thing.part), short(b.thing.part)))
  const common = commonSwitches(finds)
  return [
    { is: 'text', text: w.chapters.finder.lead },
    { is: 'list', items: w.finder.rules },
    ...allDead(facts, say),
    ...sorted.map((find) => pieceOf(find, common, say)),
  ]
}

/** Switches that take off all that works: they are told once, where everything is dead. */
function commonSwitches(finds: readonly FuseFind[]): ReadonlySet<Handle> {
  const [first, ...others] = finds.filter((f) => f.works && f.thing.role === 'load')
  if (!first || others.length === 0) return new Set()
  return new Set(first.switches.filter((h) => others.every((f) => f.switches.includes(h))))
}

/** What takes everything off at once. */
function allDead({ finds, stores }: HandoverFacts, say: Say): Piece[] {
  const working = finds.filter((f) => f.works && f.thing.role === 'load')
  const [first, ...others] = working
  if (!first || others.length === 0) return []
  const fuses = first.fuses.filter(({ fuse, why }) =>
    others.every((f) => f.fuses.some((s) => s.fuse.id === fuse.id && s.why === why)),
  )
  if (fuses.length === 0 && commonSwitches(finds).size === 0) return []
  return [
    {
      is: 'find',
      title: say.w.finder.allDead,
      place: '',
      first: mustBeOn([...commonSwitches(finds)], say),
      fuses: linesOf(fuses, say),
      next: say.w.finder.next,
      note: stores.some((s) => !s.isStarting && s.chemistry === 'lfp')
        ? `${say.w.finder.mayBeEmpty} ${say.w.finder.switchedItself}`
        : say.w.finder.mayBeEmpty,
    },
  ]
}

function pieceOf({ thing, switches, fuses, works }: FuseFind, common: ReadonlySet<Handle>, say: Say): Piece {
  const { w, part } = say
  const notes = [works ? '' : w.finder.notFed, fuses.length === 0 ? w.finder.noFuse : '']
  return {
    is: 'find',
    title: part(thing.part),
    place: thing.part.location.trim(),
    first: mustBeOn(
      switches.filter((h) => h.is !== 'breaker' && !common.has(h)),
      say,
    ),
    fuses: linesOf(fuses, say),
    next: w.finder.next,
    note: notes.filter((n) => n !== '').join(' '),
  }
}

const mustBeOn = (handles: readonly Handle[], { w, at, list }: Say): string =>
  handles.length === 0 ? '' : w.finder.mustBeOn(list(handles.map((h) => at(h.part))))

/** One line a fuse; those of which one is enough stand together in one. */
function linesOf(steps: readonly FuseStep[], say: Say): FuseLine[] {
  const several = steps.filter((s) => s.why === 'one of several')
  const lines: FuseLine[] = []
  for (const step of steps) {
    if (step.why !== 'one of several') lines.push(lineOf(step.fuse, step.why, say))
    else if (step === several[0]) lines.push(severalOf(several, say))
  }
  return lines
}

function lineOf(fuse: FuseSpot, why: FuseReason, say: Say): FuseLine {
  const { w, part, figure } = say
  const f = w.finder
  const name = part(fuse.part)
  const remarks = [
    why === 'feeds the switching' ? f.switching : '',
    isPluggedIn(fuse) || fuse.isBreaker ? '' : f.bolted,
  ]
  return {
    rating: fuse.ratingA === null ? f.noRating : figure(fuse.ratingA, 'A'),
    colour: w.colours[fuse.colour] ?? fuse.colour,
    text: fuse.isBreaker ? f.breaker(name) : fuse.way === null ? name : f.fuse(name, fuse.way, fuse.label),
    place: fuse.part.location.trim(),
    remark: remarks.filter((r) => r !== '').join(', '),
  }
}

function severalOf(steps: readonly FuseStep[], say: Say): FuseLine {
  const { w, at, figure, list } = say
  const ratings = [...new Set(steps.map(({ fuse }) => fuse.ratingA))]
  const only = ratings.length === 1 ? ratings[0]! : null
  const [first] = steps
  if (steps.length === 1 && first) return lineOf(first.fuse, 'in the way', say)
  return {
    rating: only === null ? '' : figure(only, 'A'),
    colour: '',
    text: w.finder.several(list(steps.map(({ fuse }) => at(fuse.part)))),
    place: '',
    remark: steps.every(({ fuse }) => isPluggedIn(fuse) || fuse.isBreaker) ? '' : w.finder.bolted,
  }
}

const PLUGGED = ['fuse-block', 'fuse-blade', 'fuse-large-blade']

const isPluggedIn = ({ part }: FuseSpot): boolean => PLUGGED.includes(part.kind)
