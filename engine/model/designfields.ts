import { OWN_RULES } from '../tables/ownrules'
import { RULE_SETS } from '../tables/rulesets'
import type { Settings } from './design'
import type { CellField } from './fields'

const RULE_OPTIONS: Readonly<Record<string, string>> = {
  ...Object.fromEntries(RULE_SETS.map((set) => [set.key, set.title])),
  [OWN_RULES]: 'Own figures',
}

/** Design settings, declared like the fields of a part. Keys are the keys of the model. */
export const DESIGN_FIELDS: Readonly<Partial<Record<keyof Settings, CellField>>> = {
  name: { type: 'text', label: 'Title', about: 'Name of the design, as in the title block.', initial: '' },
  vehicle: { type: 'text', label: 'Vehicle', about: 'Make, plate or whatever tells it apart.', initial: '' },
  customer: { type: 'text', label: 'Customer', about: 'Whom the drawing is for.', initial: '' },
  designer: { type: 'text', label: 'Drawn by', about: 'Who answers for the drawing.', initial: '' },
  revision: { type: 'text', label: 'Revision', about: 'Letter or number of this revision.', initial: 'A' },
  date: { type: 'text', label: 'Date', about: 'Date of this revision.', initial: '', form: 'date' },
  systemV: {
    type: 'choice',
    label: 'System voltage',
    about: 'Nominal voltage of the system.',
    options: { 12: '12 V', 24: '24 V', 48: '48 V' },
    initial: '12',
    group: 'Checks',
  },
  ruleSet: {
    type: 'choice',
    label: 'Rule set',
    about: 'Tables and allowances that the checks use. Local codes and a licensed person have the last word.',
    options: RULE_OPTIONS,
    initial: '',
    group: 'Checks',
  },
  ambientC: {
    type: 'number',
    label: 'Ambient',
    about: 'Highest temperature around the conductors.',
    unit: '°C',
    initial: 30,
    min: -40,
    max: 80,
    group: 'Checks',
  },
  coldestC: {
    type: 'number',
    label: 'Coldest',
    about: 'Lowest temperature that the PV array is expected to see.',
    unit: '°C',
    initial: 0,
    min: -60,
    max: 40,
    group: 'Checks',
  },
}
