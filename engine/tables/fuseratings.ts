import type { SourceKey } from '../sources'
import type { Amps } from '../units'

/** Standard ratings of one form of protective device, smallest first. */
export interface RatingSeries {
  readonly title: string
  readonly amps: readonly Amps[]
  readonly source: SourceKey
  readonly confirmed: boolean
}

export const RATINGS = {
  blade: {
    title: 'blade fuse',
    amps: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    source: 'din-72581',
    confirmed: true,
  },
  'large-blade': {
    title: 'large blade fuse',
    amps: [20, 30, 40, 50, 60, 70, 80, 100, 120],
    source: 'din-72581',
    confirmed: true,
  },
  'bolt-in': {
    title: 'bolt-in fuse',
    amps: [40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300, 350, 400, 500],
    source: 'iso-8820-5',
    confirmed: false,
  },
  cartridge: {
    title: 'cartridge fuse',
    amps: [
      15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
      450, 500, 600,
    ],
    source: 'nec-240-6',
    confirmed: true,
  },
  breaker: {
    title: 'circuit breaker',
    amps: [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300],
    source: 'nec-240-6',
    confirmed: true,
  },
} as const satisfies Readonly<Record<string, RatingSeries>>

export type FuseForm = keyof typeof RATINGS

/** Smallest standard rating of at least so many amps; undefined beyond the series. */
export const nextRating = (form: FuseForm, atLeast: Amps): Amps | undefined =>
  RATINGS[form].amps.find((amps) => amps >= atLeast)

/** Colour of a blade fuse's body by rating, after DIN 72581-3 and ISO 8820: what the fuse chart prints. */
const BLADE_COLOURS: ReadonlyMap<Amps, string> = new Map([
  [1, 'black'],
  [2, 'grey'],
  [3, 'violet'],
  [4, 'pink'],
  [5, 'light brown'],
  [7.5, 'brown'],
  [10, 'red'],
  [15, 'blue'],
  [20, 'yellow'],
  [25, 'clear'],
  [30, 'green'],
  [35, 'blue-green'],
  [40, 'orange'],
])

const LARGE_BLADE_COLOURS: ReadonlyMap<Amps, string> = new Map([
  [20, 'yellow'],
  [30, 'light green'],
  [40, 'orange'],
  [50, 'red'],
  [60, 'light blue'],
  [70, 'brown'],
  [80, 'clear'],
  [100, 'violet'],
  [120, 'pink'],
])

/** Body colour of a blade fuse; null for other forms and ratings without one. */
export function fuseColour(form: FuseForm, amps: Amps): string | null {
  const colours = form === 'blade' ? BLADE_COLOURS : form === 'large-blade' ? LARGE_BLADE_COLOURS : null
  return colours?.get(amps) ?? null
}
