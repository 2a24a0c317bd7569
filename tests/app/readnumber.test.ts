import { expect, it } from 'vitest'
import { readNumber } from '../../app/panels/readnumber'

it('reads points and commas', () => {
  expect(readNumber(' 2,5 ', {})).toEqual({ value: 2.5, wrong: null })
  expect(readNumber('1e2', {})).toEqual({ value: 100, wrong: null })
})

it('keeps empty apart from zero', () => {
  expect(readNumber('', { min: 1 })).toEqual({ value: null, wrong: null })
  expect(readNumber('0', {})).toEqual({ value: 0, wrong: null })
})

it('refuses what is no number or outside its limits, and says so', () => {
  for (const [text, limits] of [
    ['ten', {}],
    ['Infinity', {}],
    ['NaN', {}],
    ['1.5', { whole: true }],
    ['-1', { min: 0 }],
    ['11', { max: 10 }],
  ] as const)
    expect(readNumber(text, limits).wrong).not.toBeNull()
})
