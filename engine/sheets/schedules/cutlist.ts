import type { Answers } from '../../calc/answers'
import { allowanceSource, makingOf } from '../../model/buying'
import type { Conductor, Design } from '../../model/design'
import type { Making } from '../../tables/making'
import { figure } from '../../words/names'
import { natureIn } from '../nature'
import { type Cable, cablesOf, colourWords } from './cable'
import { figures, words } from './columns'
import { endOf } from './ends'
import { lugAt, lugCell, NO_LENGTH, NO_SIZE, sizeOf } from './lug'
import { type Column, rounded, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('cable', 'Cable', 20, { band: true }),
  words('number', 'No.', 5),
  figures('cut', 'Cut length', 'm', 7, { decimals: 2 }),
  words('stock', 'From stock', 8),
  figures('length', 'Length', 'm', 7, { decimals: 2 }),
  words('laid', 'Laid', 7),
  words('marker', 'Marker, both ends', 18),
  words('fromLug', 'Fitting, from', 14),
  words('toLug', 'Fitting, to', 14),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Every conductor that is cut here, by cable, the longest piece first, with the stock length that it comes from. */
export function cutList(design: Design, answers: Answers, making: Making = makingOf(design)): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const row = (cable: Cable, c: Conductor, cut: ScheduleCell, stock: ScheduleCell): ScheduleRow<Key> => {
    const [from, to] = [endOf(design, c.from), endOf(design, c.to)]
    return {
      key: c.id,
      name: c.number,
      cells: {
        cable: cableTitle(cable),
        number: c.number,
        cut,
        stock,
        length: c.lengthM === null ? NO_LENGTH : rounded(c.lengthM, 2),
        laid: c.sheathed ? 'in a sheath' : '',
        marker: `${c.number} ${from.short} / ${to.short}`,
        fromLug: lugCell(lugAt(design, c, from, natureOf(c))),
        toLug: lugCell(lugAt(design, c, to, natureOf(c))),
      },
      parts: [],
      conductors: [c.id],
    }
  }
  return {
    key: 'cut-list',
    title: 'Cut list',
    columns: COLUMNS,
    rows: cablesOf(design, answers, making).flatMap((cable) => [
      ...cable.plan.cuts.map((cut) =>
        row(cable, cut.item, cut.lengthM, cut.from === null ? 'own length' : `length ${cut.from}`),
      ),
      ...cable.unmeasured.map((c) => {
        const size = sizeOf(design, c)
        const reason = 'notKnown' in size ? size : NO_LENGTH
        return row(cable, c, reason, reason)
      }),
    ]),
    notes: [
      `Cut length: as drawn, and ${figure(making.allowanceM, 'm')} at each end for making up (${allowanceSource(design)}).`,
      'From stock: number of the stock length of this cable that the piece is cut from, the longest piece first. “own length”: longer than a stock length.',
      'Data leads come made up and are not cut here; mains is for licensed persons only.',
    ],
  }
}

/** "16 mm² · RD red, insulation for 70 °C or hotter". */
const cableTitle = (cable: Cable): string =>
  [cableName(cable), insulationWords(cable)].filter((s) => s !== '').join(', ')

/** "16 mm² · RD red". */
export const cableName = ({ size, colour }: Cable): string =>
  `${size?.name ?? NO_SIZE.notKnown} · ${colourWords(colour)}`

export const insulationWords = ({ insulationC }: Cable): string =>
  insulationC === null ? '' : `insulation for ${insulationC} °C or hotter`
