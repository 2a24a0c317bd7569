import { useLatest } from '../../store/latest'
import { useOpen } from '../../store/open'
import { lookAt, select, showFinding, turnLens } from '../../store/view'

/** One stop of the look round: where it points, and what it says. */
export interface Stop {
  readonly title: string
  readonly text: string
  /** The first of these that is on the page; none: in the middle of the sheet. */
  readonly points: readonly string[]
  /** Puts the table as the stop wants it. */
  readonly before?: () => void
}

/** The busiest conductor of the design: the one with the greatest worst case. */
function busiest(): string | undefined {
  const { answers } = useLatest.getState()
  const { conductors } = useOpen.getState().design
  const amps = (id: string) => {
    const design = answers?.runs.get(id)?.design
    return design && 'value' in design && typeof design.value === 'number' ? design.value : 0
  }
  return [...conductors].sort((a, b) => amps(b.id) - amps(a.id))[0]?.id
}

/** Every stop, in the order of the walk. Short: a person reads it standing. */
export const STOPS: readonly Stop[] = [
  {
    title: 'The drawing',
    text: 'One line stands for a feed and its return. Drag from a terminal to a terminal to join them; drag a part and its conductors follow. Nothing here is lost: every step can be undone.',
    points: ['.sheet'],
  },
  {
    title: 'What a conductor can carry',
    text: 'This one has the greatest worst-case current of the design. Its card says size, ampacity with its factors, drop, fault currents and what protects it from each end. “Why?” opens how each figure came about.',
    points: ['.card'],
    before: () => {
      const id = busiest()
      if (!id) return
      select([], [id])
      lookAt([], [id])
    },
  },
  {
    title: 'What the checks found',
    text: 'They run while you draw. Each finding says what, where, by how much and what to do; some offer the mend. What could not be checked says so, and never counts as passed.',
    points: ['.findings'],
    before: () => {
      const [first] = useLatest.getState().findings
      if (first) showFinding(first.key, first.parts, first.conductors)
    },
  },
  {
    title: 'Four lenses',
    text: 'Line weight by current, what guards what, what the shunts see, and where volts are lost. This is the lens of currents.',
    points: ['.top .lenses'],
    before: () => turnLens('current'),
  },
  {
    title: 'Try it',
    text: 'Flip switches, turn loads on, move the sun: currents run, and each meter shows what it would show. It changes nothing in the design.',
    points: ['.top button[aria-label="Try it"]'],
  },
  {
    title: 'Size it',
    text: 'Chooses conductors and fuses by the rule set, least copper first, with a reason for each. You see the list before anything is changed.',
    points: ['.top button[aria-label="Size it"]'],
  },
  {
    title: 'Parts',
    text: 'Drag one onto the sheet, or press P and type its name. Every figure of a part can be changed in its card.',
    points: ['.shelf', '.top'],
  },
  {
    title: 'The rest of the job',
    text: 'Schedules, bench, commissioning, handover and revisions, all made from this one drawing: they cannot be out of step with it.',
    points: ['.rail'],
  },
  {
    title: 'Your own design',
    text: 'This is a demo: change what you like, it stays as it came. Begin an empty sheet, open a file, or take another demo from here.',
    points: ['.top [aria-label="Files"]', '.top'],
  },
]
