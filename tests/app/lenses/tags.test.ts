import fc from 'fast-check'
import { expect, it } from 'vitest'
import { boxAt, type Measure, placesAround, placesOn, placeTags, type Wanted } from '../../../app/lenses/tags'

const measure: Measure = (text) => [text.length * 2, 3]
const box = fc.record({
  x: fc.integer({ min: 0, max: 80 }),
  y: fc.integer({ min: 0, max: 80 }),
  w: fc.integer({ min: 1, max: 20 }),
  h: fc.integer({ min: 1, max: 20 }),
})

it('puts no tag over another, nor over what is taken', () => {
  fc.assert(
    fc.property(fc.array(box, { maxLength: 25 }), fc.array(box, { maxLength: 10 }), (at, taken) => {
      const wanted = at.map((b, i): Wanted => {
        const text = `${i} A`
        return { key: String(i), text, rank: b.w, places: placesAround(b, measure(text)) }
      })
      const boxes = [...taken, ...placeTags(wanted, taken, measure).map((t) => boxAt(t, ...measure(t.text)))]
      const meet = (a: (typeof boxes)[0], b: (typeof boxes)[0]) =>
        a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h
      return boxes.every((a, i) => boxes.slice(Math.max(i + 1, taken.length)).every((b) => !meet(a, b)))
    }),
  )
})

it('gives the room to the weightier one', () => {
  const places = [{ at: [0, 0], turn: 0 }] as const
  const tags = placeTags(
    [
      { key: 'small', text: '3 A', rank: 3, places },
      { key: 'great', text: '90 A', rank: 90, places },
    ],
    [],
    measure,
  )
  expect(tags.map((t) => t.key)).toEqual(['great'])
})

it('puts a figure on the longest stretch first, turned where that is upright, and on none that is too short', () => {
  const points = [
    [0, 0],
    [10, 0],
    [10, 40],
    [12, 40],
  ] as const
  expect(placesOn(points, 8)[0]).toEqual({ at: [10, 20], turn: 90 })
  expect(placesOn(points, 60)).toEqual([])
  expect(placesOn(points, 8).some((p) => p.at[0] > 10)).toBe(false)
})
