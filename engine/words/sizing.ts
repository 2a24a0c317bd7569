import type { Guard } from '../calc/answers'
import type {
  Kept,
  NoSize,
  RatingChoice,
  RatingReason,
  RunChoice,
  Sized,
  SizeReason,
  SizingChoice,
} from '../calc/sizing/sizing'
import { kindOf } from '../kinds/all'
import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { sizeIn } from '../model/sizes'
import { conductorName, figure, listed, partName } from './names'
import { whyNot } from './why'

/** "16 mm²"; the key itself for a size that is not in the catalogue. */
export const sizeName = (design: Design, key: string | null): string =>
  key === null ? 'no size' : (sizeIn(design, key)?.name ?? key)

const percent = (x: number): string => `${Number(x.toFixed(1))} %`

/** "4.1 % of 3 %", with so many digits that they differ. */
function beyond(actual: number, limit: number): string {
  const digits = [1, 2, 3].find((d) => Number(actual.toFixed(d)) > limit) ?? 4
  return `${Number(actual.toFixed(digits))} % of ${Number(limit.toFixed(4))} %`
}

/** Never less than it is. */
const atLeastMm2 = (mm2: number): string => `${Math.ceil(100 * mm2 - 1e-6) / 100} mm²`

/** What is chosen, and what was there: "W7: 16 mm² instead of 10 mm²". */
export function choiceWords(choice: SizingChoice, design: Design): string {
  if ('conductor' in choice) {
    const was =
      choice.from === choice.to
        ? ''
        : choice.from === null
          ? ''
          : ` instead of ${sizeName(design, choice.from)}`
    return `${conductorName(design, choice.conductor)}: ${sizeName(design, choice.to)}${was}`
  }
  const was =
    choice.from === null || choice.from === choice.to ? '' : ` instead of ${figure(choice.from, 'A')}`
  return `${wayName(choice.part, choice.way, design)}: ${figure(choice.to, 'A')}${was}`
}

/** Why it is no smaller: "10 mm² carries it, but the drop at E1 Fridge would be 4.1 % of 3 % allowed." */
export const whyChosen = (choice: SizingChoice, design: Design): string =>
  'conductor' in choice ? whySize(choice, design) : whyRating(choice, design)

function whySize({ because }: RunChoice, design: Design): string {
  switch (because.key) {
    case 'thinnest':
      return 'The thinnest standard size that has a current in the table.'
    case 'least':
      return `The rule set lets no conductor be thinner than ${figure(because.leastMm2, 'mm²')}.`
    case 'lug':
      return `Lugs for its terminals start at ${figure(because.leastMm2, 'mm²')}.`
    case 'drop':
      return `${sizeName(design, because.thinner)} carries it, but the drop at ${partName(design, because.part)} would be ${beyond(because.percent, because.limitPercent)}.`
    case 'heat':
      return `${sizeName(design, because.thinner)} carries it, but a short circuit of ${figure(because.faultA, 'A')} lasts ${figure(because.seconds, 's')} until ${partName(design, because.part)} has cleared it; that takes ${atLeastMm2(because.leastMm2)}.`
    case 'bond':
      return `${sizeName(design, because.thinner)} carries it, but a bond to the frame is as thick as the lead of the battery, ${conductorName(design, because.lead)}: ${atLeastMm2(because.leastMm2)}.`
    case 'settled':
      return `${sizeName(design, because.thinner)} would change how current divides in the mesh beyond what it may.`
    default:
      return `${sizeName(design, because.thinner)} bears ${figure(because.carriesA, 'A')} here, and ${NEEDS[because.key]} asks for ${figure(because.neededA, 'A')}${guarded(because.guards, design)}.`
  }
}

const NEEDS: Readonly<Record<Extract<SizeReason, { neededA: number }>['key'], string>> = {
  current: 'its worst-case current',
  array: 'the array for hours (1.56 times its short-circuit current)',
  device: 'what its protective devices let through',
  return: 'what can last in this return before a fuse blows',
  ahead: 'what the devices behind it let through',
}

function guarded(guards: readonly Guard[], design: Design): string {
  const names = [...new Set(guards.map((g) => `${partName(design, g.part)} ${figure(g.amps, 'A')}`))]
  return names.length === 0 ? '' : ` (${listed(names)})`
}

function whyRating({ because }: RatingChoice, design: Design): string {
  return RATING_WORDS[because.key](because as never, design)
}

const RATING_WORDS: {
  readonly [K in RatingReason['key']]: (because: Extract<RatingReason, { key: K }>, design: Design) => string
} = {
  smallest: ({ loadA }) =>
    `The smallest standard rating of its form; it may have to carry ${figure(loadA, 'A')}.`,
  load: ({ loadA }) => `The smallest standard rating that carries ${figure(loadA, 'A')}.`,
  lasting: ({ lastingA, share }) =>
    `${figure(lastingA, 'A')} may run for hours, and a device carries ${percent(100 * share)} of its rating for so long.`,
  inrush: ({ part, peakA, lastsS }, design) =>
    `It holds ${figure(peakA, 'A')} for ${figure(lastsS, 's')} while ${partName(design, part)} starts; the next smaller one may open.`,
  tight: ({ loadA, neededA }) =>
    `It carries ${figure(loadA, 'A')}. ${figure(neededA, 'A')} would be better for hours, but no standard conductor bears what that lets through.`,
}

/** Why there is no choice, and what would help. */
export function noSizeWords(no: NoSize, design: Design): string {
  switch (no.key) {
    case 'drop': {
      const where = partName(design, no.part)
      if (no.fixedPercent > no.limitPercent)
        return `The drop at ${where} cannot be kept to ${percent(no.limitPercent)}: conductors that are not to be changed take ${percent(no.fixedPercent)} alone. Unlock them, or select them too.`
      return `No standard size holds ${percent(no.limitPercent)} at ${figure(no.lengthM, 'm')}: the drop at ${where} would still be ${percent(no.percent)}. Shorten the run, or raise the voltage.`
    }
    case 'ampacity':
      return `No standard size carries ${conductorName(design, no.conductor)}: it needs ${figure(no.neededA, 'A')}, and ${sizeName(design, no.thickest)} carries ${figure(no.carriesA, 'A')} here. Divide the load, loosen the bunch, or take hotter-rated insulation.`
    case 'rating':
      return `No standard rating will do for ${wayName(no.part, no.way, design)}: it needs ${figure(no.neededA, 'A')}, and the largest that fits is ${figure(no.largestA, 'A')}. Divide the load, or take another form of fuse.`
    case 'unsettled':
      return `Sizes of ${listed(no.conductors.map((id) => conductorName(design, id)))} keep changing with each other. Lock one of them.`
  }
}

/** What was left as it is, those with one reason together: "W4, W5 and W6 are left as they are. …" */
export function keptWords(kept: readonly Kept[], design: Design): readonly string[] {
  const byReason = new Map<string, string[]>()
  for (const k of kept) {
    const why = whyKept(k, design)
    byReason.set(why, [...(byReason.get(why) ?? []), keptName(k, design)])
  }
  return [...byReason].map(([why, names]) =>
    names.length === 1
      ? `${names[0]} is left as it is. ${why}`
      : `${listed(names)} are left as they are. ${why}`,
  )
}

const keptName = ({ conductor, part, way }: Kept, design: Design): string =>
  conductor === undefined ? wayName(part ?? '', way ?? '', design) : conductorName(design, conductor)

function whyKept({ conductor, because }: Kept, design: Design): string {
  if ('notChecked' in because) return whyNot(because, design)
  return because.key === 'locked' && conductor === undefined ? 'The rating is locked.' : KEPT[because.key]
}

const KEPT = {
  locked: 'The size is locked.',
  'no-limit': 'Nothing stated limits the current.',
  'no-standard-sizes': 'The rule set has no current for any standard size in that place.',
} as const

/** "11.2 kg of copper, 5.3 kg less than now." */
export function copperWords({ copperBeforeKg, copperAfterKg }: Sized): string {
  if (copperAfterKg === null) return 'Some conductors have no size, so the copper cannot be added up.'
  const after = `${kilograms(copperAfterKg)} of copper`
  if (copperBeforeKg === null) return `${after}.`
  const more = copperAfterKg - copperBeforeKg
  if (Math.abs(more) < 0.005) return `${after}, as much as now.`
  return `${after}, ${kilograms(Math.abs(more))} ${more < 0 ? 'less' : 'more'} than now.`
}

const kilograms = (kg: number): string => (kg < 0.1 ? `${Math.round(1000 * kg)} g` : figure(kg, 'kg'))

/** "F2 Loads block, way 3 (pump)", or the part alone. */
function wayName(id: string, way: string, design: Design): string {
  const part = partById(design, id)
  const row = part && kindOf(part.kind)?.fields.ways ? `, way ${way}` : ''
  return `${partName(design, id)}${row}`
}
