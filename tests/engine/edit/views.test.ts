import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply, type Design, designIn, type Edit, partById, sceneOf } from '../../../engine'
import { readDesign } from '../../../engine/kinds/readdesign'
import { writeDesign } from '../../../engine/model/write'
import { design } from '../../build'

/** Two lamps on a battery; an outline round the lamps. */
const base: Design = {
  ...design()
    .part('battery', 'G1', { capacityAh: 100 }, { x: 0, y: 0 })
    .part('lamp', 'E1', {}, { x: 100, y: 20 })
    .part('lamp', 'E2', {}, { x: 100, y: 60 })
    .join('G1.+', 'E1.+')
    .join('E1.+', 'E2.+')
    .build(),
  zones: [{ id: 'z1', name: 'Annexe', parts: ['p2', 'p3'], x: 90, y: 10, w: 40, h: 80 }],
}

function done(d: Design, edit: Edit): Design {
  const result = apply(d, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}
const placeIn = (d: Design, view: 'single-line' | 'both-poles' | 'data', id: string) => {
  const part = partById(designIn(d, view), id)!
  return [part.x, part.y]
}
const move = (part: string, x: number, y: number, view?: 'both-poles' | 'data'): Edit => ({
  do: 'move',
  to: [{ part, x, y }],
  ...(view ? { view } : {}),
})

describe('a layout of its own in each view', () => {
  test('a design in which nothing was moved in a view is the same design there', () => {
    expect(designIn(base, 'both-poles')).toBe(base)
    expect(designIn(base, 'data')).toBe(base)
  })

  test('other views follow the single-line one until a part was moved in them', () => {
    const once = done(base, move('p2', 130, 20))
    expect(placeIn(once, 'both-poles', 'p2')).toEqual([130, 20])
    const own = done(once, move('p2', 150, 40, 'both-poles'))
    expect(placeIn(own, 'both-poles', 'p2')).toEqual([150, 40])
    expect(placeIn(own, 'single-line', 'p2')).toEqual([130, 20])
    expect(placeIn(own, 'data', 'p2')).toEqual([130, 20])
    const again = done(own, move('p2', 200, 0))
    expect(placeIn(again, 'both-poles', 'p2')).toEqual([150, 40])
    expect(placeIn(again, 'data', 'p2')).toEqual([200, 0])
  })

  test('a part follows again when it is told to', () => {
    const own = done(base, move('p2', 150, 40, 'both-poles'))
    const follows = done(own, { do: 'follow', parts: ['p2'], view: 'both-poles' })
    expect(follows.parts).toEqual(base.parts)
    expect(apply(base, { do: 'follow', parts: ['p9'], view: 'data' })).toMatchObject({ refused: true })
  })

  test('an outline is round its parts in each view', () => {
    const own = done(base, {
      do: 'move',
      to: [
        { part: 'p2', x: 200, y: 120 },
        { part: 'p3', x: 200, y: 160 },
      ],
      view: 'both-poles',
    })
    expect(own.zones).toBe(base.zones)
    expect(designIn(own, 'both-poles').zones).toEqual([{ ...base.zones![0]!, x: 190, y: 110 }])
  })

  test('a way laid by hand goes along where both ends do, and is let go where one does', () => {
    const path = [
      { x: 90, y: 30 },
      { x: 90, y: 70 },
    ]
    const laid = done(base, { do: 'conductor', conductors: ['c2'], set: { path } })
    const both = done(laid, {
      do: 'move',
      to: ['p2', 'p3'].map((part) => {
        const { x, y } = partById(base, part)!
        return { part, x: x + 50, y: y + 5 }
      }),
      view: 'data',
    })
    const pathIn = (d: Design) => designIn(d, 'data').conductors[1]!.path
    expect(pathIn(both)).toEqual(path.map(({ x, y }) => ({ x: x + 50, y: y + 5 })))
    expect(both.conductors[1]!.path).toEqual(path)
    expect(pathIn(done(laid, move('p2', 0, 100, 'data')))).toEqual([])
    const own = done(laid, { do: 'conductor', conductors: ['c2'], set: { pathIn: { data: path.slice(1) } } })
    expect(pathIn(own)).toEqual(path.slice(1))
  })

  test('what a view shows is laid out where its parts stand there', () => {
    const own = done(base, move('p3', 300, 300, 'both-poles'))
    const at = (view: 'single-line' | 'both-poles') =>
      sceneOf(own, null, view).parts.find((p) => p.id === 'p3')!
    expect([at('both-poles').x, at('both-poles').y]).toEqual([300, 300])
    expect([at('single-line').x, at('single-line').y]).toEqual([100, 60])
  })

  test('a move in one view changes no other, a turn changes all about the middle, and a file keeps both', () => {
    const mm = fc.integer({ min: -200, max: 200 }).map((n) => n * 2.5)
    const id = fc.constantFrom('p1', 'p2', 'p3')
    const step = fc.oneof(
      fc.record({ part: id, x: mm, y: mm, view: fc.constantFrom('both-poles' as const, 'data' as const) }),
      fc.record({ turn: id }),
    )
    fc.assert(
      fc.property(fc.array(step, { maxLength: 12 }), (steps) => {
        let now = base
        for (const s of steps) {
          const before = now
          if ('turn' in s) {
            now = done(before, { do: 'turn', parts: [s.turn], by: 90 })
            const by = (view: 'single-line' | 'both-poles' | 'data') => {
              const [a, b] = [placeIn(before, view, s.turn), placeIn(now, view, s.turn)]
              return [b[0]! - a[0]!, b[1]! - a[1]!]
            }
            expect(by('both-poles')).toEqual(by('single-line'))
            expect(by('data')).toEqual(by('single-line'))
          } else {
            now = done(before, move(s.part, s.x, s.y, s.view))
            expect(placeIn(now, s.view, s.part)).toEqual([s.x, s.y])
            const others = (['single-line', 'both-poles', 'data'] as const).filter((v) => v !== s.view)
            for (const view of others)
              expect(placeIn(now, view, s.part)).toEqual(placeIn(before, view, s.part))
          }
        }
        const read = readDesign(writeDesign(now))
        expect(read.problems).toEqual([])
        expect(read.design).toEqual(now)
      }),
    )
  })
})
