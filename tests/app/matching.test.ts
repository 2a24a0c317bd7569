import { expect, it } from 'vitest'
import { matching, rank } from '../../app/store/matching'

it('prefers the beginning of the text, then of a word, then the inside of one', () => {
  const order = matching('pump', ['bilgepump', 'Water pump', 'Pump'], (x) => x)
  expect(order).toEqual(['Pump', 'Water pump', 'bilgepump'])
})

it('asks for every typed word', () => {
  expect(rank('fuse block', 'Fuse block with return bar')).not.toBeNull()
  expect(rank('fuse relay', 'Fuse block')).toBeNull()
})

it('lets everything pass when nothing is typed, in the given order', () => {
  expect(matching('', ['b', 'a'], (x) => x)).toEqual(['b', 'a'])
})
