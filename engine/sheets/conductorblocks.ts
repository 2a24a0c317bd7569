import type { Answers } from '../calc/answers'
import type { Conductor, Design } from '../model/design'
import { partById } from '../model/lookup'
import type { Millimetres } from '../units'
import { type FlowBlock, heading, listBlocks, paragraph, small } from './flow'
import type { Places } from './places'
import { runWords } from './runwords'

/** Conductors that stand on the drawing with their number alone, with everything else that would stand there. */
export function conductorBlocks(
  design: Design,
  answers: Answers | null,
  conductors: readonly Conductor[],
  places: Places,
  width: Millimetres,
): FlowBlock[] {
  if (conductors.length === 0) return []
  return listBlocks(
    [
      heading('Conductors by number', width),
      paragraph('On the drawing there was room for the numbers of these alone.', width, { after: 2 }),
    ],
    conductors.map((c) => {
      const w = runWords(design, c, answers)
      const ends = [c.from, c.to].map(
        ({ part, terminal }) => `${partById(design, part)?.designation ?? part}:${terminal}`,
      )
      const words = [w.size, w.colour, w.length, w.laid, w.current, w.protection, ends.join(' to ')]
      const at = places.get(c.id)?.join(' ') ?? ''
      return small([...words, at].filter((s) => s !== '').join(' · '), width, { lead: c.number, indent: 12 })
    }),
  )
}
