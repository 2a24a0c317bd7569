import { expect, test } from 'vitest'
import { differing } from '../../app/panels/differing'
import { RUN_FIELDS } from '../../engine'
import { design } from '../build'

const { conductors } = design()
  .part('battery', 'G1')
  .part('lamp', 'E1')
  .join('G1.+', 'E1.+', { lengthM: 3, colour: 'RD', size: '2.5mm2' })
  .join('E1.-', 'G1.-', { lengthM: 3, colour: 'BK' })
  .join('E1.-', 'G1.-', { lengthM: 4, colour: 'BU', size: '4mm2' })
  .build()
const [feed, back] = conductors
const pair = [feed!, back!]

test('what several conductors share is no difference', () => {
  expect(differing(pair, 'lengthM', RUN_FIELDS.lengthM)).toBeUndefined()
  expect(differing([feed!], 'colour', RUN_FIELDS.colour)).toBeUndefined()
})

test('two values are both told, in the words of the field', () => {
  expect(differing(pair, 'colour', RUN_FIELDS.colour)).toBe('RD red / BK black')
  expect(differing(pair, 'size', RUN_FIELDS.size)).toBe('2.5 mm² / not chosen yet')
  expect(differing(conductors, 'lengthM', RUN_FIELDS.lengthM)).toBe('3 m / 4 m')
})

test('more are counted', () => {
  expect(differing(conductors, 'colour', RUN_FIELDS.colour)).toBe('3 differ')
})
