import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import { newDesign } from '../../../engine/model/newdesign'
import { ruleSetOf } from '../../../engine/model/rules'
import { writeDesign } from '../../../engine/model/write'
import { ruleSetByKey } from '../../../engine/tables/rulesets'

const base = ruleSetByKey('us-33cfr183')!
const own = { basedOn: 'us-33cfr183', title: 'Workshop rules', devicePercent: 100, dropCriticalPercent: 2 }
const d: Design = { ...newDesign('x', { ruleSet: 'own' }), ownRules: own }

test('own figures stand over the built-in ones and name the designer as their source', () => {
  const set = ruleSetOf(d)!
  expect(set).toMatchObject({ key: 'own', title: 'Workshop rules', deviceShare: { value: 1, source: 'own' } })
  expect(set.dropPercent.critical).toMatchObject({ value: 2, source: 'own' })
  expect(set.dropPercent.general).toBe(base.dropPercent.general)
  expect(set.nearSource.open).toBe(base.nearSource.open)
  expect(set.edition).toContain(base.title)
})

test('a built-in choice leaves them aside; what is not known gives none', () => {
  expect(ruleSetOf({ ...d, settings: { ...d.settings, ruleSet: 'us-33cfr183' } })).toBe(base)
  expect(ruleSetOf({ ...d, settings: { ...d.settings, ruleSet: 'of-the-moon' } })).toBeUndefined()
  expect(ruleSetOf({ ...d, ownRules: { ...own, basedOn: 'own' } })).toBeUndefined()
})

test('they travel in the file; a design that names them and has none does not open', () => {
  expect(readDesign(writeDesign(d))).toEqual({ design: d, problems: [] })
  const { ownRules: _, ...without } = d
  expect(readDesign(writeDesign(without)).problems[0]!.path).toBe('ownRules')
  const damaged = writeDesign(d).replace('"devicePercent": 100', '"devicePercent": 1000')
  expect(readDesign(damaged).design).toBeUndefined()
  expect(readDesign(damaged.replace('"ruleSet": "own"', '"ruleSet": "us-33cfr183"')).design).toBeDefined()
})

test('an edit keeps them within bounds', () => {
  const refused = (change: object): boolean => apply(d, { do: 'rules', own: { ...own, ...change } }).refused
  expect([
    refused({}),
    refused({ devicePercent: 200 }),
    refused({ title: ' ' }),
    refused({ basedOn: 'own' }),
  ]).toEqual([false, true, true, true])
  expect(refused({ nearSourceM: Number.NaN })).toBe(true)
})

test('an edit takes them away, but not while the checks use them', () => {
  expect(apply(d, { do: 'rules', own: null })).toMatchObject({ refused: true, code: 'own-rules' })
  const other: Design = { ...d, settings: { ...d.settings, ruleSet: 'us-33cfr183' } }
  const result = apply(other, { do: 'rules', own: null })
  expect(result).toEqual({ refused: false, design: newDesign('x', { ruleSet: 'us-33cfr183' }) })
})
