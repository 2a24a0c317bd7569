import { expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { builtEdit, tickEdit } from '../../../engine/edit/bench'
import type { Edit } from '../../../engine/edit/edit'
import { sameForChecks } from '../../../engine/edit/sameforchecks'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import { conductorNumbered } from '../../build'
import { bench } from '../rules/bench'

const d = bench().build()
const w3 = conductorNumbered(d, 'W3')
const now = { at: '2026-03-04T09:30:00.000Z', by: 'tablet' }

function made(of: Design, edit: Edit): Design {
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

const ticked = made(d, tickEdit(d, w3, 'cut', true, now))
const thinner = made(d, builtEdit(d, w3, { what: 'size', value: '1.5mm2' }, now))

test('a tick changes neither answers nor findings', () => {
  expect(sameForChecks(d, ticked)).toBe(true)
  expect(analyse(ticked)).toEqual(analyse(d))
  expect(sameForChecks(thinner, made(thinner, tickEdit(thinner, w3, 'cut', true, now)))).toBe(true)
})

test('what was built otherwise does, and so does every change of the drawing', () => {
  expect(sameForChecks(d, thinner)).toBe(false)
  const thicker = builtEdit(thinner, w3, { what: 'size', value: '4mm2' }, now)
  expect(sameForChecks(thinner, made(thinner, thicker))).toBe(false)
  expect(sameForChecks(d, made(d, { do: 'conductor', conductors: ['c1'], set: { lengthM: 9 } }))).toBe(false)
  expect(sameForChecks(d, made(d, { do: 'settings', set: { ambientC: 40 } }))).toBe(false)
  expect(sameForChecks(d, { ...d, zones: [] })).toBe(false)
})
