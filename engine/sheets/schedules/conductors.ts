import type { Answers, RunAnswer } from '../../calc/answers'
import { allowanceSource, makingOf } from '../../model/buying'
import type { Conductor, ConductorId, Design } from '../../model/design'
import { conductorById } from '../../model/lookup'
import { ruleSetOf } from '../../model/rules'
import { statedInsulationC } from '../../model/sizes'
import { AMBIENT } from '../../tables/ampacity'
import type { Making } from '../../tables/making'
import { figure } from '../../words/names'
import { factorWords, whyNot } from '../../words/why'
import { type Nature, natureIn } from '../nature'
import { carriesNone, runWords } from '../runwords'
import { ampsCell } from './amount'
import { figures, words } from './columns'
import { endOf } from './ends'
import { lugAt, lugCell, NO_LENGTH, sizeOf, sleeveOver } from './lug'
import { type Column, natural, rounded, type Schedule, type ScheduleCell } from './schedule'

const COLUMNS = [
  words('number', 'No.', 5),
  words('marker', 'Marker', 14, { below: 'number' }),
  words('from', 'From part', 20),
  words('fromTerminal', 'From terminal', 16, { below: 'from' }),
  words('fromLug', 'Fitting, from', 12, { below: 'from' }),
  words('to', 'To part', 20),
  words('toTerminal', 'To terminal', 16, { below: 'to' }),
  words('toLug', 'Fitting, to', 12, { below: 'to' }),
  words('size', 'Size', 8),
  words('colour', 'Colour', 6, { below: 'size' }),
  figures('length', 'Length', 'm', 6, { decimals: 2 }),
  figures('cut', 'Cut length', 'm', 6, { decimals: 2, below: 'length' }),
  figures('sleeve', 'Sleeve over', 'mm', 6, { decimals: 1, below: 'size' }),
  figures('current', 'Worst case', 'A', 6),
  figures('bears', 'Bears', 'A', 6, { below: 'current' }),
  figures('drop', 'Drop', 'V', 5, { decimals: 2, below: 'current' }),
  words('protection', 'Protection', 16),
  words('remark', 'Remark', 20, { below: 'protection' }),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Every conductor of the design once, in the order of their numbers. O(conductors × ends of the answers). */
export function conductorSchedule(
  design: Design,
  answers: Answers,
  making: Making = makingOf(design),
): Schedule<Key> {
  const natureOf = natureIn(design, answers)
  const drops = greatestDrops(answers)
  return {
    key: 'conductors',
    title: 'Conductors',
    columns: COLUMNS,
    rows: [...design.conductors]
      .sort((a, b) => natural(a.number, b.number))
      .map((c) => ({
        key: c.id,
        name: c.number,
        cells: cellsOf(design, answers, making, c, natureOf(c), drops.get(c.id)),
        parts: [],
        conductors: [c.id],
      })),
    notes: [
      `Length is one way, as drawn. Cut length adds ${figure(making.allowanceM, 'm')} at each end for making up (${allowanceSource(design)}); trim to fit: what stands ahead of a fuse is not to be longer than drawn.`,
      'Worst case is the greatest current that the conductor can ever have to carry. Drop is what it takes of the worst-case voltage drop of the load that loses most in it; empty where no load hangs on it.',
      'Bears: the greatest current for good, as laid and in the surroundings of the design.',
      'Sleeve over: diameter over the insulation that a sleeve has to pass; barrels of lugs are thicker.',
      'Colours by the letters of IEC 60757. Data leads and mains have no lugs here: mains is for licensed persons only.',
    ],
  }
}

function cellsOf(
  design: Design,
  answers: Answers,
  making: Making,
  c: Conductor,
  nature: Nature,
  drop: number | undefined,
): Record<Key, ScheduleCell> {
  const [from, to] = [endOf(design, c.from), endOf(design, c.to)]
  const size = sizeOf(design, c)
  const run = answers.runs.get(c.id)
  const powered = run !== undefined && !carriesNone(run)
  return {
    number: c.number,
    marker: `${c.number} ${from.short} / ${to.short}`,
    from: from.part,
    fromTerminal: from.terminal,
    fromLug: lugCell(lugAt(design, c, from, nature)),
    to: to.part,
    toTerminal: to.terminal,
    toLug: lugCell(lugAt(design, c, to, nature)),
    size: 'notKnown' in size ? size : size.name,
    colour: c.colour,
    length: c.lengthM === null ? NO_LENGTH : rounded(c.lengthM, 2),
    cut: c.lengthM === null ? NO_LENGTH : cutLength(c.lengthM, making),
    sleeve: sleeveOver(design, c, nature) ?? '',
    current: powered ? ampsCell(run.design, design) : '',
    bears: bearsCell(run, design),
    drop: drop === undefined ? '' : rounded(drop, 2),
    protection: !powered
      ? ''
      : 'value' in run.verdict
        ? runWords(design, c, answers).protection
        : { notKnown: whyNot(run.verdict, design) },
    remark: remarkOf(design, c, nature, powered ? run : undefined),
  }
}

/** Length to be cut from stock, m. */
export const cutLength = (lengthM: number, { allowanceM }: Making): number =>
  rounded(lengthM + 2 * allowanceM, 2)

/** Insulation that a conductor is to have, °C: its own, or that of the rule set. */
export const insulationOf = (design: Design, c: Conductor): number | null =>
  statedInsulationC(design, c) ?? ruleSetOf(design)?.insulationC ?? null

function remarkOf(design: Design, c: Conductor, nature: Nature, run: RunAnswer | undefined): string {
  const feed = c.returnOf === null ? undefined : conductorById(design, c.returnOf)
  return [
    c.remark,
    ...(c.designCurrent ? [`own current: ${c.designCurrent.reason}`] : []),
    ...(nature === 'data' ? ['data lead'] : []),
    ...(nature === 'mains' ? ['mains: licensed persons only'] : []),
    ...(feed ? [`return of ${feed.number}`] : []),
    ...(c.insulationC === null ? [] : [`insulation for ${c.insulationC} °C`]),
    ...(c.sheathed ? ['in a sheath throughout'] : []),
    ...(c.engineSpace ? ['through an engine space'] : []),
    ...loweredTo(run),
  ]
    .filter((s) => s !== '')
    .join('; ')
}

function bearsCell(run: RunAnswer | undefined, design: Design): ScheduleCell {
  if (!run || carriesNone(run)) return ''
  return 'value' in run.ampacity
    ? rounded(run.ampacity.value.amps, 1)
    : { notKnown: whyNot(run.ampacity, design) }
}

/** What lowers what it bears, besides the surroundings, which are the same for all. */
function loweredTo(run: RunAnswer | undefined): string[] {
  if (!run || !('value' in run.ampacity)) return []
  const { amps, factors } = run.ampacity.value
  if (factors.every((f) => f.name === AMBIENT)) return []
  return [`bears ${figure(amps, 'A')} (${factorWords(run.ampacity.value)})`]
}

/** What each conductor takes, V, of the worst drop of the load that loses most in it. */
function greatestDrops({ drops }: Answers): Map<ConductorId, number> {
  const found = new Map<ConductorId, number>()
  for (const { drop } of drops.values()) {
    if (!('value' in drop)) continue
    for (const { conductor, volts } of drop.value.conductors)
      found.set(conductor, Math.max(found.get(conductor) ?? 0, volts))
  }
  return found
}
