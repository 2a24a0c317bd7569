import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { analyse, apply, arrangeEdit, arrangeLinksEdit, designIn, readDesign, sceneOf } from '../../../engine'
import { arrange } from '../../../engine/sheets/arrange/arrange'
import type { ArrangePart } from '../../../engine/sheets/arrange/part'
import { drawnQuality } from '../../bench/drawnquality'
import { design } from '../../build'

test('arranging the data view moves what it shows and leaves the other views', () => {
  const van = readDesign(readFileSync('public/demos/veterinary-van.json', 'utf8')).design!
  const { answers } = analyse(van)
  const result = apply(van, arrangeLinksEdit(designIn(van, 'data'), answers))
  if (result.refused) throw new Error(result.why)
  const placesOf = (parts: typeof van.parts) => parts.map((p) => [p.x, p.y])
  expect(placesOf(designIn(result.design, 'single-line').parts)).toEqual(placesOf(van.parts))
  const [before, after] = [sceneOf(van, answers, 'data'), sceneOf(result.design, answers, 'data')]
  expect(after.box.w * after.box.h).toBeLessThan((before.box.w * before.box.h) / 2)
  const { overlaps, passes, touches, labelCollisions } = drawnQuality(designIn(result.design, 'data'), after)
  expect([overlaps, passes, touches, labelCollisions]).toEqual([0, 0, 0, 0])
})

test('parts stand in the order of the studs that they hang on, however they were drawn', () => {
  const N = 6
  const bar: ArrangePart = {
    ...{ id: 'W', w: 5, h: 5 * N, column: 'distribution' },
    ports: Array.from({ length: N }, (_, i) => ({
      id: `${i}`,
      x: 5,
      y: 5 * i + 2.5,
      side: 'right' as const,
    })),
  }
  const store: ArrangePart = {
    ...{ id: 'G', w: 15, h: 15, column: 'store' },
    ports: [{ id: '+', x: 15, y: 5, side: 'right' }],
  }
  const fuse: ArrangePart = {
    ...{ id: 'F', w: 15, h: 10, column: 'protection' },
    ports: [
      { id: '1', x: 0, y: 5, side: 'left' },
      { id: '2', x: 15, y: 5, side: 'right' },
    ],
  }
  const order = fc.shuffledSubarray(
    Array.from({ length: N - 1 }, (_, i) => i + 1),
    { minLength: N - 1, maxLength: N - 1 },
  )
  fc.assert(
    fc.property(order, (studs) => {
      const switches = studs.map(
        (stud): ArrangePart => ({
          ...{ id: `Q${stud}`, w: 15, h: 7.5, column: 'switching' },
          ports: [{ id: '1', x: 0, y: 5, side: 'left' }],
        }),
      )
      const places = arrange(
        [store, fuse, bar, ...switches],
        [
          { from: { part: 'G', port: '+' }, to: { part: 'F', port: '1' } },
          { from: { part: 'F', port: '2' }, to: { part: 'W', port: '0' } },
          ...studs.map((s) => ({
            from: { part: 'W', port: `${s}` },
            to: { part: `Q${s}`, port: '1' },
          })),
        ],
      )
      const byHeight = [...studs].sort((a, b) => places.get(`Q${a}`)!.y - places.get(`Q${b}`)!.y)
      expect(byHeight).toEqual([...studs].sort((a, b) => a - b))
    }),
  )
})

test('long words get the room that they take', () => {
  const name = 'Examination lamp over the folding table, left, with the dimmer in its foot'
  const words = [1, 2, 3, 4].reduce(
    (d, i) =>
      d
        .part('lamp', `E${i}`, { currentA: 2 }, { name })
        .join(`F1.${i}`, `E${i}.+`, { size: '2.5mm2', lengthM: 3 }),
    design()
      .part('battery', 'G1', { capacityAh: 100 })
      .part('fuse-block', 'F1', { ratingA: 100, ways: Array(4).fill({ ratingA: 10, label: '' }) })
      .join('G1.+', 'F1.in', { size: '16mm2', lengthM: 1 }),
  )
  const d = words.build()
  const { answers } = analyse(d)
  const result = apply(d, arrangeEdit(d, answers))
  if (result.refused) throw new Error(result.why)
  const scene = sceneOf(result.design, answers, 'single-line')
  const { labelCollisions, passes, overlaps } = drawnQuality(result.design, scene)
  expect([labelCollisions, passes, overlaps]).toEqual([0, 0, 0])
})
