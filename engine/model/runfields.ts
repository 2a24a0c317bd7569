import { COLOURS } from '../tables/colours'
import type { OwnConductor } from '../tables/ownsizes'
import { SIZES } from '../tables/sizes'
import { SURROUNDS } from '../tables/surround'
import type { CellField } from './fields'
import { RUN_LIMITS } from './runlimits'
import { sizesIn } from './sizes'

const SIZE_OPTIONS: Readonly<Record<string, string>> = {
  '': 'not chosen yet',
  ...Object.fromEntries(SIZES.map((s) => [s.key, s.confirmed ? s.name : `${s.name} (not confirmed)`])),
}

const COLOUR_OPTIONS: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(COLOURS).map(([letters, name]) => [letters, `${letters} ${name}`]),
)

/** Fields of a conductor, declared like those of a part. Keys are the keys of the model. */
export const RUN_FIELDS = {
  size: {
    type: 'choice',
    label: 'Size',
    about: 'Cross-section from the catalogue.',
    options: SIZE_OPTIONS,
    initial: '',
    required: true,
  },
  lengthM: {
    type: 'number',
    label: 'Length',
    about: 'One way, along its route. Left empty, drop and the place of its protection are not checked.',
    unit: 'm',
    initial: null,
    min: 0.01,
    max: RUN_LIMITS.longestM,
    required: true,
  },
  colour: {
    type: 'choice',
    label: 'Colour',
    about: 'Letters after IEC 60757.',
    options: COLOUR_OPTIONS,
    initial: 'BK',
  },
  insulationC: {
    type: 'number',
    label: 'Insulation, highest',
    about: 'Highest continuous temperature. Empty: the usual one of the rule set.',
    unit: '°C',
    initial: null,
    min: RUN_LIMITS.insulationC[0],
    max: RUN_LIMITS.insulationC[1],
    standard: [60, 75, 90, 105, 125, 150],
  },
  bunched: {
    type: 'number',
    label: 'Bunched with',
    about: 'Loaded conductors that run together, this one counted.',
    unit: '',
    initial: 1,
    min: 1,
    max: RUN_LIMITS.mostBunched,
    whole: true,
  },
  sheathed: {
    type: 'flag',
    label: 'Sheathed throughout',
    about: 'In a sheath, conduit or enclosure along its whole length.',
    initial: false,
  },
  surround: {
    type: 'choice',
    label: 'Around it',
    about:
      'What keeps its heat in, and lowers what it bears. Until it is set here, a conductor that is sheathed throughout counts as in a conduit.',
    options: SURROUNDS,
    initial: 'free',
  },
  engineSpace: {
    type: 'flag',
    label: 'Engine space',
    about: 'Runs through an engine space.',
    initial: false,
  },
  number: { type: 'text', label: 'Number', about: 'Printed on the conductor at both ends.', initial: '' },
  remark: { type: 'text', label: 'Remark', about: 'Printed in the schedules.', initial: '', lines: 2 },
} as const satisfies Readonly<Record<string, CellField>>

/** The field of the size with the designer's own conductors; a size that is not known stays chosen, and says so. */
export function withOwnSizes(own: readonly OwnConductor[] = [], size: string | null): CellField {
  const added = sizesIn({ ownConductors: own }).filter((s) => s.own)
  const options = { ...RUN_FIELDS.size.options, ...Object.fromEntries(added.map((s) => [s.key, s.name])) }
  const unknown = size !== null && !(size in options) ? { [size]: `${size} (size not known)` } : {}
  return { ...RUN_FIELDS.size, options: { ...options, ...unknown } }
}
