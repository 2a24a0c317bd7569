import type { Answers } from '../../calc/answers'
import { makingOf } from '../../model/buying'
import type { Design } from '../../model/design'
import type { Making } from '../../tables/making'
import { type Cable, cablesOf, colourWords, copperKg } from './cable'
import { figures, words } from './columns'
import { cableName } from './cutlist'
import { NO_SIZE } from './lug'
import { type Column, rounded, type Schedule, type ScheduleCell, type ScheduleRow } from './schedule'

const COLUMNS = [
  words('size', 'Size', 10),
  words('colour', 'Colour', 16),
  figures('insulation', 'Insulation', '°C', 6),
  figures('pieces', 'Pieces', '', 5),
  figures('length', 'Drawn', 'm', 7, { decimals: 2 }),
  figures('cut', 'Cut', 'm', 7, { decimals: 2 }),
  figures('stock', 'Stock length', 'm', 6),
  figures('needed', 'Stock lengths', '', 6),
  figures('offcut', 'Left over', 'm', 7, { decimals: 2 }),
  figures('longest', 'Longest offcut', 'm', 7, { decimals: 2 }),
  figures('copper', 'Copper', 'kg', 7, { decimals: 2 }),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** What to buy of each cable, and what is left over of it. */
export function cableStock(
  design: Design,
  answers: Answers,
  making: Making = makingOf(design),
): Schedule<Key> {
  const cables = cablesOf(design, answers, making)
  const kg = rounded(
    cables.reduce((sum, c) => sum + massOf(c), 0),
    2,
  )
  const late = cables.flatMap((c) => c.unmeasured.map((u) => u.number))
  return {
    key: 'cable',
    title: 'Cable to buy',
    columns: COLUMNS,
    rows: cables.map(rowOf),
    notes: [
      `Copper of all conductors that are counted: ${kg.toFixed(2)} kg, from nominal section × drawn length × 8.89 g/cm³ (IEC 60028, from memory).`,
      'Stock lengths are those of the workshop, or, where it has stated none, common practice with no source. Left over: what remains of the stock lengths that are begun.',
      ...(late.length === 0 ? [] : [`Not counted, as size or length is not known: ${late.join(', ')}.`]),
    ],
  }
}

function rowOf(cable: Cable): ScheduleRow<Key> {
  const { cuts, offcutsM } = cable.plan
  const own = cuts.filter((c) => c.from === null)
  const known = (value: ScheduleCell): ScheduleCell => (cable.size === null ? NO_SIZE : value)
  return {
    key: cable.key,
    name: cableName(cable),
    cells: {
      size: known(cable.size?.name ?? ''),
      colour: colourWords(cable.colour),
      insulation: cable.insulationC ?? { notKnown: 'the rule set is not known here' },
      pieces: cuts.length + cable.unmeasured.length,
      length: known(
        rounded(
          cuts.reduce((sum, c) => sum + c.item.lengthM!, 0),
          2,
        ),
      ),
      cut: known(
        rounded(
          cuts.reduce((sum, c) => sum + c.lengthM, 0),
          2,
        ),
      ),
      stock: known(cable.stockM ?? ''),
      needed: known(neededWords(offcutsM.length, own.length)),
      offcut: known(
        rounded(
          offcutsM.reduce((sum, m) => sum + m, 0),
          2,
        ),
      ),
      longest: known(rounded(Math.max(0, ...offcutsM), 2)),
      copper: known(rounded(massOf(cable), 2)),
    },
    parts: [],
    conductors: [...cuts.map((c) => c.item.id), ...cable.unmeasured.map((c) => c.id)],
  }
}

const neededWords = (whole: number, own: number): ScheduleCell =>
  own === 0 ? whole : `${whole} and ${own} longer`

const massOf = ({ size, plan }: Cable): number =>
  size === null ? 0 : plan.cuts.reduce((sum, c) => sum + copperKg(size, c.item.lengthM!), 0)
