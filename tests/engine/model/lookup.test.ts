import { describe, expect, test } from 'vitest'
import { valueFault } from '../../../engine/model/fieldfault'
import type { RowsField } from '../../../engine/model/fields'
import { conductorById, conductorsAt, partById } from '../../../engine/model/lookup'
import { namingFor, nextDesignation, nextId, nextNumber } from '../../../engine/model/naming'
import { DEFAULT_SETTINGS, newDesign } from '../../../engine/model/newdesign'
import { complete, initialValues } from '../../../engine/model/values'
import { ruleSetByKey } from '../../../engine/tables/rulesets'
import { design } from '../../build'

const d = design()
  .part('battery', 'G1')
  .part('battery', 'G7')
  .part('busbar', 'W3')
  .part('load', 'Ex')
  .join('G1.+', 'W3.1l', { number: 'W9' })
  .join('G7.+', 'W3.1l', { number: 'main' })
  .join('G1.+', 'G1.-', { number: 'W900000000000' })
  .build()

describe('look-ups', () => {
  test('by id', () => {
    expect(partById(d, 'p2')).toBe(d.parts[1])
    expect(conductorById(d, 'c2')).toBe(d.conductors[1])
    expect([partById(d, 'p9'), conductorById(d, '__proto__')]).toEqual([undefined, undefined])
  })

  test('conductors at a part and at a terminal, each once', () => {
    expect(conductorsAt(d, 'p3').map((c) => c.id)).toEqual(['c1', 'c2'])
    expect(conductorsAt(d, 'p1').map((c) => c.id)).toEqual(['c1', 'c3'])
    expect(conductorsAt(d, 'p1', '-').map((c) => c.id)).toEqual(['c3'])
    expect(conductorsAt(d, 'p4')).toEqual([])
  })

  test('follow a changed design', () => {
    const less = { ...d, parts: d.parts.slice(1), conductors: [] }
    expect([partById(less, 'p1'), conductorsAt(less, 'p3').length]).toEqual([undefined, 0])
    expect(partById(d, 'p1')).toBe(d.parts[0])
  })
})

test('names go on from the highest, and bars and conductors never share one', () => {
  expect([nextId(d, 'p'), nextId(d, 'c'), nextNumber(d)]).toEqual(['p5', 'c4', 'W10'])
  expect([nextDesignation(d, 'G'), nextDesignation(d, 'E'), nextDesignation(d, 'W')]).toEqual([
    'G8',
    'E1',
    'W10',
  ])
  const naming = namingFor(d)
  expect([
    naming.number(),
    naming.designation('W'),
    naming.number(),
    naming.partId(),
    naming.partId(),
  ]).toEqual(['W10', 'W11', 'W12', 'p5', 'p6'])
})

test('a new design is empty and names a rule set that exists', () => {
  expect(newDesign('x', { systemV: 48 })).toMatchObject({
    id: 'x',
    parts: [],
    conductors: [],
    settings: { systemV: 48 },
  })
  expect(ruleSetByKey(DEFAULT_SETTINGS.ruleSet)).toBeDefined()
})

const ways: RowsField = {
  type: 'rows',
  label: 'Ways',
  about: '',
  each: 'way',
  initial: 2,
  min: 1,
  max: 3,
  columns: {
    amps: { type: 'number', label: 'A', about: '', unit: 'A', initial: 5, min: 1, max: 30 },
    label: { type: 'text', label: 'L', about: '', initial: '' },
  },
}
const fields = {
  ratingA: { type: 'number', label: 'R', about: '', unit: 'A', initial: null, min: 0 },
  studs: { type: 'number', label: 'S', about: '', unit: '', initial: 4, whole: true },
  pole: { type: 'choice', label: 'P', about: '', options: { any: 'Any', plus: 'Plus' }, initial: 'any' },
  on: { type: 'flag', label: 'O', about: '', initial: true },
  ways,
} as const

describe('values', () => {
  test('start at their initial values', () => {
    expect(initialValues(fields)).toEqual({
      ratingA: null,
      studs: 4,
      pole: 'any',
      on: true,
      ways: [
        { amps: 5, label: '' },
        { amps: 5, label: '' },
      ],
    })
  })

  test('are completed, cells of rows as well; what is known and unknown stays', () => {
    const given = { ratingA: 0, on: false, ways: [{ label: 'pump' }], later: 'x' }
    expect(complete(fields, given)).toEqual({
      ratingA: 0,
      studs: 4,
      pole: 'any',
      on: false,
      ways: [{ amps: 5, label: 'pump' }],
      later: 'x',
    })
    const full = complete(fields, given)
    expect(complete(fields, full)).toBe(full)
    expect(given.ways).toEqual([{ label: 'pump' }])
  })

  test.each([
    ['ratingA', 0, true],
    ['ratingA', null, true],
    ['ratingA', -1, false],
    ['ratingA', 1e12, false],
    ['ratingA', Number.NaN, false],
    ['ratingA', '5', false],
    ['studs', 3, true],
    ['studs', 2.5, false],
    ['pole', 'plus', true],
    ['pole', 'toString', false],
    ['on', 1, false],
    ['ways', [], false],
    ['ways', [{ amps: 31 }], false],
    ['ways', [{ amps: 30 }], true],
    ['ways', 'two', false],
    ['ways', [{}, {}, {}, {}], false],
  ] as const)('%s of %j fits: %s', (key, value, fits) => {
    expect(valueFault(fields[key], value as never) === null).toBe(fits)
  })

  test('a fault names the cell', () => {
    expect(valueFault(ways, [{ amps: 1 }, { amps: 99 }])).toEqual({
      at: [1, 'amps'],
      expected: 'a number of A from 1 to 30',
    })
  })
})
