import type { Design } from '../../model/design'
import { words } from '../schedules/columns'
import type { Column, Schedule } from '../schedules/schedule'
import { LABEL_KINDS } from './label'
import { labelsOf } from './labels'

const COLUMNS = [
  words('kind', 'Kind', 18, { band: true }),
  words('place', 'Where', 24),
  words('line1', 'Line 1', 16),
  words('line2', 'Line 2', 24),
  words('line3', 'Line 3', 24),
  words('sign', 'Sign (ISO 7010)', 8),
] as const satisfies readonly Column[]

type Key = (typeof COLUMNS)[number]['key']

/** Labels as a table, one row each: what a label printer reads as CSV. */
export const labelTable = (design: Design): Schedule<Key> => ({
  key: 'labels',
  title: 'Labels',
  columns: COLUMNS,
  rows: labelsOf(design).map(({ key, kind, place, lines, sign, parts, conductors }) => ({
    key,
    name: lines[0] ?? '',
    cells: {
      kind: LABEL_KINDS[kind],
      place,
      line1: lines[0] ?? '',
      line2: lines[1] ?? '',
      line3: lines[2] ?? '',
      sign: sign ?? '',
    },
    parts,
    conductors,
  })),
  notes: ['One row for each label; conductors have two, one for each end.'],
})
