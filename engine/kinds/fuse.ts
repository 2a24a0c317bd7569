import type { Electrical, SymbolDrawing } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import type { Amps, Volts } from '../units'
import { captions, figure, known } from './caption'
import { line, rect } from './draw'
import { choice, flag, number } from './field'
import { fastened, fittingField } from './fitting'
import { fuseOhms } from './resistance'
import { inLine } from './terminal'

/** What the kinds of fuse share; each states its classes and ratings. */

interface FuseClass<K extends string> {
  readonly classes: Readonly<Record<K, string>>
  readonly usual: NoInfer<K>
  readonly ratings: readonly Amps[]
  readonly voltageV: Volts | null
  readonly breakingKA: number | null
  readonly fitting: FittingKey
}

/** Beside the rating of a single fuse or breaker. */
export const ratingLock = flag(
  'Rating locked',
  'The rating is the designer\'s own choice: "Size it" leaves it as it is.',
)

export const fuseFields = <K extends string>(f: FuseClass<K>) => ({
  ratingA: number('Rating', 'A', 'Rated current of the fuse that is fitted.', {
    required: true,
    standard: f.ratings,
  }),
  ratingLocked: ratingLock,
  class: choice('Class', 'Form and standard of the fuse: decides how fast it clears.', f.classes, f.usual),
  ...breakingFields(f),
  fitting: fittingField(f.fitting),
})

export const breakingFields = (f: { voltageV: Volts | null; breakingKA: number | null }) => ({
  voltageV: number('Voltage rating', 'V', 'Highest direct voltage at which it can interrupt.', {
    required: true,
    initial: f.voltageV,
    standard: [32, 58, 70, 80, 125, 150, 250, 500, 1000],
  }),
  breakingKA: number(
    'Breaking capacity',
    'kA',
    'Largest fault current that it can interrupt, at the voltage stated beside it.',
    {
      required: true,
      initial: f.breakingKA,
      standard: [1, 2, 2.5, 3, 5, 6, 10, 20, 50],
    },
  ),
  breakingV: number(
    'Breaking capacity holds up to',
    'V',
    'DC voltage at which the maker states that breaking capacity; often less than the voltage rating.',
    {
      required: true,
      // The standard of a class that comes with a breaking capacity states it at the voltage rating of the class.
      initial: f.breakingKA === null ? null : f.voltageV,
      standard: [14, 16, 32, 58, 70, 80, 125, 150, 250, 500, 1000],
    },
  ),
  fullDuty: flag('Rated for continuous duty', 'May carry its full rating for ever, not four fifths of it.'),
  holdsTimes: number(
    'Surely holds at',
    '×',
    'One point of its curve from the data sheet: a multiple of its rating that it bears. Needed where no limits of its class are published.',
    { min: 1, group: 'Curve' },
  ),
  holdsS: number('For', 's', 'Time for which it surely bears that current, from the data sheet.', {
    group: 'Curve',
  }),
  clearsTimes: number(
    'Surely clears at',
    '×',
    'One point of its curve from the data sheet: a multiple of its rating. Needed where no limits of its class are published.',
    { min: 1, group: 'Curve' },
  ),
  clearsS: number('Within', 's', 'Longest time in which it clears that current, from the data sheet.', {
    group: 'Curve',
  }),
})

const W = 15
const H = 5

/** A protective device between terminals 1 and 2. */
export const fuseModel = (ratingA: Amps | null): Electrical => ({
  merges: [],
  branches: [{ key: 'link', from: '1', to: '2', ohms: fuseOhms(ratingA), kind: 'fuse', ratingA }],
  devices: [],
})

interface Ratings {
  readonly ratingA: Amps | null
  readonly voltageV: Volts | null
  readonly breakingKA: number | null
  readonly breakingV: Volts | null
}

export const fuseCaption = (v: Ratings): readonly string[] =>
  captions(figure(v.ratingA, 'A'), [known(v.voltageV, 'V'), capacity(v)])

/** "5 kA"; "5 kA at 32 V" where that is not the voltage rating. */
const capacity = ({ breakingKA, breakingV, voltageV }: Ratings): string =>
  breakingKA === null || breakingV === null || breakingV === voltageV
    ? known(breakingKA, 'kA')
    : `${figure(breakingKA, 'kA')} at ${figure(breakingV, 'V')}`

/** Terminals, model, symbol and captions of a fuse in a line; `more` marks its form. */
export const fuseParts = (more: readonly Mark[] = []) => ({
  group: 'protection' as const,
  letter: 'F',
  terminals: (v: { readonly fitting: FittingKey }) => inLine(W, H / 2, undefined, fastened(v.fitting)),
  electrical: (v: Ratings) => fuseModel(v.ratingA),
  symbol: (): SymbolDrawing => ({
    w: W,
    h: H,
    marks: [line([0, H / 2, W, H / 2]), rect(3.75, 1.25, 7.5, 2.5), ...more],
  }),
  caption: fuseCaption,
})
