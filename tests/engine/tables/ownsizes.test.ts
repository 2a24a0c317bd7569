import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { newOwnConductor } from '../../../engine/edit/ownconductors'
import { readDesign } from '../../../engine/kinds/readdesign'
import { newDesign } from '../../../engine/model/newdesign'
import { sizeIn } from '../../../engine/model/sizes'
import { writeDesign } from '../../../engine/model/write'
import { ampacityOf } from '../../../engine/tables/ampacity'
import { ownRuleSet } from '../../../engine/tables/ownrules'
import { ownSize } from '../../../engine/tables/ownsizes'
import { resistancePerMetre } from '../../../engine/tables/resistance'
import { ruleSetByKey } from '../../../engine/tables/rulesets'

const metric = ruleSetByKey('metric-automotive')!
const row = {
  key: 'own:1',
  name: 'Lead',
  sectionMm2: 25,
  ohmsPerKm: null,
  amps: null,
  insulationC: null,
  offered: false,
}
const laid = { size: 'own:1', insulationC: null, engineSpace: false, bunched: 1 }
const amps = (own: typeof row | { amps: number }, more = {}, set = metric) => {
  const answer = ampacityOf(set, { ...laid, ...more }, 30, () => ownSize({ ...row, ...own }))
  return 'value' in answer ? answer.value.amps : answer.notChecked
}

test('by section: the row of DIN ISO 6722-3 that is no thicker, 25 mm² 129 A; stated: the figure stated', () => {
  expect(amps(row)).toBe(129)
  expect(amps({ amps: 150 })).toBe(150)
})

test('resistance by section is that of annealed copper, 1/58 Ω·mm²/m (IEC 60028)', () => {
  expect(resistancePerMetre('own:1', 20, () => ownSize(row))! * 1000).toBeCloseTo(1000 / 58 / 25, 9)
})

test('in a conduit 101 of 126 A (BS 7671 Table 4D1A, 25 mm², restated); half in thermal insulation (from memory)', () => {
  expect(amps(row, { surround: 'conduit' })).toBeCloseTo(129 * 0.8, 9)
  expect(101 / 126).toBeCloseTo(0.8, 2)
  expect(amps(row, { surround: 'insulation' })).toBeCloseTo(129 / 2, 9)
  const own = ownRuleSet({ basedOn: 'metric-automotive', title: 'x', conduitPercent: 90 })!
  expect(amps(row, { surround: 'conduit' }, own)).toBeCloseTo(129 * 0.9, 9)
})

test('the rows survive the file, and a row taken away leaves a size that is not known', () => {
  const design = newDesign('d1')
  const set = apply(design, { do: 'own conductors', own: [row] })
  if (set.refused) throw new Error(set.why)
  const read = readDesign(writeDesign(set.design))
  expect(read.problems).toEqual([])
  expect(read.design!.ownConductors).toEqual([row])
  expect(newOwnConductor(set.design).key).toBe('own:2')
  const gone = apply(set.design, { do: 'own conductors', own: [] })
  if (gone.refused) throw new Error(gone.why)
  expect(sizeIn(gone.design, 'own:1')).toBeUndefined()
  expect(apply(design, { do: 'own conductors', own: [row, row] }).refused).toBe(true)
})
