import { describe, expect, test } from 'vitest'
import { controlsOf, symbolOf, usualState, workedParts, workedSymbolOf } from '../../../engine'
import { KINDS } from '../../../engine/kinds/all'
import type { Part, Turn } from '../../../engine/model/design'
import type { LineMark, Mark } from '../../../engine/model/marks'
import { initialValues } from '../../../engine/model/values'
import { design } from '../../build'
import { extent } from './extent'

const partOf = (kind: string, turn: Turn = 0): Part => ({
  ...{ id: 'p1', kind, designation: 'X1', name: '', location: '', x: 0, y: 0, turn, mirrored: false },
  values: initialValues(KINDS.find((k) => k.key === kind)!.fields),
})
const lever = (marks: readonly Mark[]): LineMark =>
  marks.find((m): m is LineMark => m.is === 'line' && m.worked !== undefined && m.pen === 'strong')!

/** IEC 60617: a make contact is drawn open at rest; closed, its lever meets the fixed contact. From memory. */
const MAKE = ['panel-switch', 'isolator', 'breaker', 'relay', 'relay-latching', 'combiner', 'float-switch']

describe('symbols with their contacts worked', () => {
  test.each(MAKE)('%s: the lever lies off the line at rest and on it when closed', (kind) => {
    for (const turn of [0, 90, 180, 270] as const) {
      const across = turn === 90 || turn === 270 ? 0 : 1
      const [from, to] = lever(symbolOf(partOf(kind, turn)).marks).points
      expect(Math.abs(to![across] - from![across])).toBeGreaterThan(2)
      const closed = lever(workedSymbolOf(partOf(kind, turn)).marks).points
      expect(closed[0]).toEqual(from)
      expect(closed[1]![across]).toBeCloseTo(from![across])
    }
  })

  test('a changeover lies at 87a at rest, at 87 when thrown', () => {
    const [rest, thrown] = [symbolOf, workedSymbolOf].map(
      (of) => lever(of(partOf('relay-changeover')).marks).points[1]!,
    )
    const marks = symbolOf(partOf('relay-changeover')).marks
    const heightOf = (name: string) => marks.find((m) => m.is === 'text' && m.text === name)!
    const [a, b] = [heightOf('87a'), heightOf('87')].map((m) => (m.is === 'text' ? m.at[1] : Number.NaN))
    expect(Math.sign(thrown![1] - rest![1])).toBe(Math.sign(b! - a!))
  })

  test.each(KINDS.map((k) => k.key))('%s keeps to its box in both stands', (kind) => {
    const { w, h, marks } = workedSymbolOf(partOf(kind))
    for (const [x, y] of marks.flatMap(extent)) {
      expect(x).toBeGreaterThanOrEqual(-1e-6)
      expect(y).toBeGreaterThanOrEqual(-1e-6)
      expect(x).toBeLessThanOrEqual(w + 1e-6)
      expect(y).toBeLessThanOrEqual(h + 1e-6)
    }
  })
})

describe('parts of which a contact is worked', () => {
  const d = design()
    .part('battery', 'G1', { capacityAh: 100 })
    .part('panel-switch', 'S1', { ratingA: 10 })
    .part('relay-changeover', 'K1', { ratingA: 30, breakRatingA: 20, coilV: 12 })
    .part('breaker', 'F1', { ratingA: 10 })
    .build()

  test('switches are closed and breakers on as usual, changeovers at rest', () => {
    expect([...workedParts(d, usualState(d))].sort()).toEqual(['p2', 'p4'])
  })

  test('follow how the design is switched', () => {
    const state = {
      ...usualState(d),
      open: new Set(['p2/contact']),
      throws: new Map([['p3/30', '87']]),
      blown: new Set(controlsOf(d).flatMap((c) => (c.is === 'fuse' ? [c.id] : []))),
    }
    expect([...workedParts(d, state)]).toEqual(['p3'])
  })
})
