import type { Answers } from '../../calc/answers'
import { keptAside } from '../../edit/benchrecord'
import { BENCH_STEPS } from '../../model/bench'
import { makingOf } from '../../model/buying'
import type { Design } from '../../model/design'
import type { BuiltAnalysed } from '../../rules/builtfindings'
import { BUILT_WORDS, builtWords, STEP_WORDS } from '../../words/bench'
import { sentence } from '../../words/findings'
import { figure, listed } from '../../words/names'
import { figures, words } from '../schedules/columns'
import type { Column, Schedule, ScheduleRow } from '../schedules/schedule'
import { type BenchCard, type BenchEnd, benchCards } from './card'
import { type BenchOrder, benchGroups } from './order'
import { benchProgress } from './progress'

const COLUMNS: readonly Column[] = [
  words('group', 'Group', 20, { band: true }),
  words('number', 'No.', 5),
  words('marker', 'Marker, both ends', 14, { below: 'number' }),
  words('from', 'From', 20),
  words('fromFitting', 'Fitting, from', 12, { below: 'from' }),
  words('to', 'To', 20),
  words('toFitting', 'Fitting, to', 12, { below: 'to' }),
  words('size', 'Size', 8),
  words('colour', 'Colour', 6, { below: 'size' }),
  figures('cutLength', 'Cut length', 'm', 6, { decimals: 2, below: 'size' }),
  ...BENCH_STEPS.map((step) => words(step, STEP_WORDS[step], 5, { box: true })),
  words('fromTorque', 'N·m, from', 6),
  words('toTorque', 'N·m, to', 6, { below: 'fromTorque' }),
  words('otherwise', 'Built otherwise, remarks', 16),
]

/**
 * Conductors in building order with a box for every step, to be ticked by hand; what is recorded already is ticked.
 * `built`: what the checks say as built, where something was built otherwise.
 */
export function benchList(
  design: Design,
  answers: Answers,
  order: BenchOrder = 'part',
  built: BuiltAnalysed | null = null,
): Schedule {
  const cards = benchCards(design, answers)
  const { finished, conductors, again } = benchProgress(cards)
  const aside = keptAside(design).map((a) => a.number)
  return {
    key: 'bench-list',
    title: 'Bench list',
    columns: COLUMNS,
    rows: benchGroups(design, cards, order).flatMap(({ title, cards: inside }) =>
      inside.filter((card) => card.steps.length > 0).map((card) => rowOf(design, title, card)),
    ),
    notes: [
      `Cut length: as drawn, and ${figure(makingOf(design).allowanceM, 'm')} at each end. Tick what is done at both ends. Write down what is built otherwise: size, length, terminal.`,
      'Torque: the figure of the maker of the part, N·m at each end; where a line is empty, look it up and write it down. A box or a line that is missing does not apply. Mains is for licensed persons only and is not in this list.',
      `Recorded so far: ${finished} of ${conductors} conductors finished.`,
      ...(built?.worse ?? []).map(
        (f) => `As built: ${sentence(f, built!.design).title}. ${sentence(f, built!.design).text}`,
      ),
      ...(again > 0 ? ['* Was done before the drawing changed: look at it again.'] : []),
      ...(aside.length > 0
        ? [
            `Recorded, but not in the drawing any more: ${listed(aside, 12)}. Look whether they are to come out.`,
          ]
        : []),
    ],
  }
}

function rowOf(design: Design, group: string, card: BenchCard): ScheduleRow {
  const { conductor, from, to } = card
  const boxes = BENCH_STEPS.map(
    (step) => [step, card.steps.find((s) => s.step === step)?.state ?? ''] as const,
  )
  return {
    key: conductor.id,
    name: card.number,
    cells: {
      group,
      number: card.number,
      // The number stands beside it.
      marker: card.marker.replace(`${card.number} `, ''),
      from: `${from.part}, ${from.terminal}`,
      fromFitting: from.fitting,
      to: `${to.part}, ${to.terminal}`,
      toFitting: to.fitting,
      size: card.size,
      colour: card.colour,
      cutLength: card.work === 'data' ? '' : card.cut,
      ...Object.fromEntries(boxes),
      fromTorque: torqueOf(from),
      toTorque: torqueOf(to),
      otherwise: otherwiseOf(design, card),
    },
    parts: [],
    conductors: [conductor.id],
  }
}

/** As recorded from the maker's sheet; a line to write on where nobody has; nothing where nothing is tightened. */
const torqueOf = ({ fitting, tightened, newtonMetres }: BenchEnd): string =>
  fitting === '' || tightened === false ? '' : newtonMetres === null ? TO_WRITE : String(newtonMetres)

const TO_WRITE = '_____'

/** "Size 2.5 mm², drawn 4 mm²; round the wheel arch", then what the designer remarks. */
function otherwiseOf(design: Design, { differences, note, conductor }: BenchCard): string {
  return [
    ...differences.map(
      ({ what, built, drawn }) =>
        `${BUILT_WORDS[what]} ${builtWords(design, what, built)}, drawn ${builtWords(design, what, drawn)}`,
    ),
    note ?? '',
    conductor.remark,
  ]
    .filter((text) => text !== '')
    .join('; ')
}
