import { OWN_BOUNDS, type OwnRules } from '../tables/ownrules'
import { OWN_CONDUCTOR_BOUNDS } from '../tables/ownsizes'
import { RULE_SETS } from '../tables/rulesets'
import type { CellField, NumberField, RowsField, Unit } from './fields'

const FIGURES: Readonly<Record<keyof typeof OWN_BOUNDS, readonly [label: string, unit: Unit]>> = {
  insulationC: ['Insulation, usual', '°C'],
  devicePercent: ['Device, of ampacity', '%'],
  nearSourceM: ['Ahead of first device', 'm'],
  nearSourceSheathedM: ['The same, sheathed', 'm'],
  dropCriticalPercent: ['Drop, critical', '%'],
  dropGeneralPercent: ['Drop, general', '%'],
  conduitPercent: ['Current in a conduit', '%'],
  thermalPercent: ['In thermal insulation', '%'],
}

const figures = Object.fromEntries(
  Object.entries(FIGURES).map(([key, [label, unit]]): [string, NumberField] => {
    const [min, max] = OWN_BOUNDS[key as keyof typeof OWN_BOUNDS]
    const about = 'Empty: as in the rule set it is based on.'
    return [key, { type: 'number', label, about, unit, initial: null, min, max }]
  }),
) as Readonly<Record<keyof typeof OWN_BOUNDS, NumberField>>

/** The designer's own rules, declared like the fields of a part. Keys are the keys of the model. */
export const OWN_RULE_FIELDS: Readonly<Record<keyof OwnRules, CellField>> = {
  title: {
    type: 'text',
    label: 'Called',
    about: 'Printed wherever results name their rule set.',
    initial: '',
  },
  basedOn: {
    type: 'choice',
    label: 'Based on',
    about: 'Everything that is not stated here comes from this rule set.',
    options: Object.fromEntries(RULE_SETS.map((r) => [r.key, r.title])),
    initial: '',
  },
  ...figures,
}

const figure = (
  key: keyof typeof OWN_CONDUCTOR_BOUNDS,
  label: string,
  about: string,
  unit: 'mm²' | 'Ω/km' | 'A' | '°C',
): NumberField => {
  const [min, max] = OWN_CONDUCTOR_BOUNDS[key]
  return { type: 'number', label: `${label}, ${unit}`, about, unit: '', initial: null, min, max }
}

/** The designer's own conductors as a table. */
export const OWN_CONDUCTOR_TABLE: RowsField = {
  type: 'rows',
  label: 'Own conductors',
  about:
    "Cable at hand that the built-in sizes lack. Marked as the designer's own figure wherever it is printed.",
  each: 'row',
  min: 0,
  max: 99,
  initial: 0,
  columns: {
    name: { type: 'text', label: 'Name', about: 'As it is sold or marked.', initial: '' },
    sectionMm2: figure('sectionMm2', 'Copper', 'True cross-section.', 'mm²'),
    ohmsPerKm: figure('ohmsPerKm', 'At 20 °C', 'Empty: worked out from the section.', 'Ω/km'),
    amps: figure(
      'amps',
      'Bears',
      'Alone in free air, at the reference of the rule set. Empty: by section.',
      'A',
    ),
    insulationC: figure('insulationC', 'Insulation', 'Empty: the usual one of the rule set.', '°C'),
    offered: { type: 'flag', label: 'Offer when sizing', about: 'Sizing may choose it.', initial: false },
  },
}
