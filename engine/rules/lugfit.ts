import { plainTerminalsIn } from '../edit/terminal'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { lugRange } from '../tables/lugranges'
import { found, type Rule } from './rule'

/** J9: no lug in common sale joins a conductor of this size to a stud or blade of this size. */
export const lugFit: Rule = {
  id: 'J9',
  looksFor: 'conductors too thick or too thin for a lug that fits the terminal',
  check: ({ design, border }) =>
    [...border.conductors.values()].flatMap((c) => {
      const mm2 = sizeIn(design, c.size)?.sectionMm2
      if (mm2 === undefined) return []
      const looped = c.from.part === c.to.part && c.from.terminal === c.to.terminal
      return (looped ? [c.from] : [c.from, c.to]).flatMap((end) => {
        const part = partById(design, end.part)
        const terminal = part && plainTerminalsIn(part)?.find((t) => t.key === end.terminal)
        const range = terminal?.stud === undefined ? undefined : lugRange(terminal.stud)
        if (!terminal || !range || (mm2 >= range.leastMm2 && mm2 <= range.mostMm2)) return []
        const limit = mm2 > range.mostMm2 ? range.mostMm2 : range.leastMm2
        return [
          found(
            'J9',
            'warning',
            range.source,
            { conductors: [c.id], parts: [end.part] },
            {
              conductor: c.id,
              part: end.part,
              terminal: terminal.name,
              stud: terminal.stud!,
              thick: mm2 > range.mostMm2,
            },
            {
              about: `${end === c.from ? 'from' : 'to'} ${end.terminal}`,
              actual: { value: mm2, unit: 'mm²' },
              limit: { value: limit, unit: 'mm²' },
            },
          ),
        ]
      })
    }),
}
