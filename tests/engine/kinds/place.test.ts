import { describe, expect, test } from 'vitest'
import { KINDS } from '../../../engine/kinds/all'
import { boxOf, symbolOf, terminalsOf } from '../../../engine/kinds/place'
import type { Conductor, Part, Turn } from '../../../engine/model/design'
import { initialValues } from '../../../engine/model/values'
import { extent } from './extent'

const SLACK = 1e-9

const TURNS: readonly Turn[] = [0, 90, 180, 270]

const part = (kind: string, more: Partial<Part> = {}): Part => ({
  id: 'p1',
  kind,
  designation: 'X1',
  name: '',
  location: '',
  x: 20,
  y: 30,
  turn: 0,
  mirrored: false,
  values: {},
  ...more,
})

const at = (p: Part, key: string) => {
  const t = terminalsOf(p).find((x) => x.key === key)!
  return [t.x - p.x, t.y - p.y, t.side]
}

// A relay: box 17.5 × 15 mm, terminal 30 on the left 5 mm below the top. Positions follow from the turn alone.
test.each([
  [0, false, [0, 5, 'left']],
  [90, false, [10, 0, 'up']],
  [180, false, [17.5, 10, 'right']],
  [270, false, [5, 17.5, 'down']],
  [0, true, [17.5, 5, 'right']],
  [90, true, [10, 17.5, 'down']],
  [180, true, [0, 10, 'left']],
  [270, true, [5, 0, 'up']],
] as const)('terminal 30 turned by %i, mirrored: %s', (turn, mirrored, place) => {
  expect(at(part('relay', { turn, mirrored }), '30')).toEqual(place)
})

test('the box is turned about its own corner of the sheet', () => {
  expect(boxOf(part('relay'))).toEqual({ x: 20, y: 30, w: 17.5, h: 15 })
  expect(boxOf(part('relay', { turn: 90 }))).toEqual({ x: 20, y: 30, w: 15, h: 17.5 })
})

describe.each(KINDS.map((k) => [k.key, k] as const))('%s in every stance', (key, kind) => {
  for (const turn of TURNS)
    for (const mirrored of [false, true])
      test(`turned by ${turn}${mirrored ? ', mirrored' : ''}`, () => {
        const p = part(key, { turn, mirrored, values: initialValues(kind.fields) })
        const { x, y, w, h } = boxOf(p)
        for (const t of terminalsOf(p)) {
          const edge = { left: t.x === x, right: t.x === x + w, up: t.y === y, down: t.y === y + h }[t.side]
          expect(edge, t.key).toBe(true)
        }
        const symbol = symbolOf(p)
        expect([symbol.w, symbol.h]).toEqual([w, h])
        const ends = symbol.marks.flatMap((m) => (m.is === 'line' ? m.points : []))
        for (const t of terminalsOf(p))
          expect(ends.some(([ex, ey]) => near(ex, t.x - x) && near(ey, t.y - y))).toBe(true)
        for (const m of symbol.marks)
          for (const [ex, ey] of extent(m))
            expect(
              ex >= -SLACK && ey >= -SLACK && ex <= w + SLACK && ey <= h + SLACK,
              JSON.stringify(m),
            ).toBe(true)
      })
})

const near = (a: number, b: number) => Math.abs(a - b) < 1e-9

test('signs in their place stay upright; longer text reads upwards on a symbol that lies on its side', () => {
  const texts = symbolOf(part('relay', { turn: 90 })).marks.filter((m) => m.is === 'text')
  expect(texts.every((t) => t.turn === 90)).toBe(true)
  const signs = symbolOf(part('lamp', { turn: 270 })).marks.filter((m) => m.is === 'text')
  expect(signs.map((t) => [t.text, t.turn])).toEqual([
    ['+', undefined],
    ['−', undefined],
  ])
})

test('arcs turn with their symbol', () => {
  const arcs = (p: Part) => symbolOf(p).marks.filter((m) => m.is === 'arc')
  // A socket opens to the right: the arcs run round by the left.
  expect(arcs(part('socket')).map((a) => [a.from, a.to])).toEqual([
    [90, 270],
    [90, 270],
  ])
  expect(arcs(part('socket', { mirrored: true })).map((a) => [a.from, a.to])).toEqual([
    [-90, 90],
    [-90, 90],
  ])
  expect(arcs(part('socket', { turn: 90 })).map((a) => [a.from, a.to])).toEqual([
    [180, 360],
    [180, 360],
  ])
})

test('answers are remembered for a part, and drawings for its values', () => {
  const p = part('fuse-block')
  expect(terminalsOf(p)).toBe(terminalsOf(p))
  expect(symbolOf(p)).toBe(symbolOf(p))
  expect(symbolOf({ ...p, x: 0 }).marks).toBe(symbolOf(p).marks)
})

test('a part of unknown kind is a broken outline with the terminals that conductors refer to', () => {
  const p = part('from-the-future')
  const c = { id: 'c1', from: { part: 'p1', terminal: 'b' }, to: { part: 'p1', terminal: 'a' } } as Conductor
  expect(terminalsOf(p)).toEqual([])
  const conductors = [c]
  expect(terminalsOf(p, conductors).map((t) => [t.key, t.side])).toEqual([
    ['a', 'left'],
    ['b', 'right'],
  ])
  expect(boxOf(p, conductors)).toMatchObject({ x: 20, y: 30 })
  const { marks } = symbolOf(p, conductors)
  expect(marks.some((m) => m.is === 'text' && m.text === 'from-the-future')).toBe(true)
  expect(marks.some((m) => m.is === 'line' && m.dash)).toBe(true)
})
