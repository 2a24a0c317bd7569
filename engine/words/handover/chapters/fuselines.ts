import type { FuseReason, FuseStep } from '../../../calc/handover/finder'
import type { FuseSpot } from '../../../calc/handover/fuses'
import type { FuseLine } from '../book'
import type { Say } from '../say'

/** One line a fuse; those of which one is enough stand together in one. */
export function linesOf(steps: readonly FuseStep[], say: Say): FuseLine[] {
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
  const byName = new Intl.Collator(w.locale, { numeric: true })
  return {
    rating: only === null ? '' : figure(only, 'A'),
    colour: '',
    text: w.finder.several(list(steps.map(({ fuse }) => at(fuse.part)).sort(byName.compare))),
    place: '',
    remark: steps.every(({ fuse }) => isPluggedIn(fuse) || fuse.isBreaker) ? '' : w.finder.bolted,
  }
}

const PLUGGED = ['fuse-block', 'fuse-blade', 'fuse-large-blade']

const isPluggedIn = ({ part }: FuseSpot): boolean => PLUGGED.includes(part.kind)
