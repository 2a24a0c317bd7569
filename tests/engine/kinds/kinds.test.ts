import { describe, expect, test } from 'vitest'
import { KINDS, kindOf } from '../../../engine/kinds/all'
import { valueFault } from '../../../engine/model/fieldfault'
import type { Field } from '../../../engine/model/fields'
import { SHELF_GROUPS } from '../../../engine/model/kind'
import type { XY } from '../../../engine/model/marks'
import { initialValues } from '../../../engine/model/values'
import { extent } from './extent'
import { currentRecords, writtenRecords } from './record'
import { variantsOf } from './variants'

const CONTEXT = { systemV: 12, lowestV: 10, highestV: 14.6 }
const GRID = 2.5
const onGrid = (mm: number) => Number.isInteger(mm / GRID)

test('keys of kinds are unique, well formed and found', () => {
  expect(new Set(KINDS.map((k) => k.key)).size).toBe(KINDS.length)
  for (const kind of KINDS) {
    expect(kind.key).toMatch(/^[a-z]+(-[a-z]+)*$/)
    expect(kindOf(kind.key)).toBe(kind)
  }
  expect(kindOf('toString')).toBeUndefined()
})

test('every group of the shelf has kinds, and they stand together', () => {
  const order = KINDS.map((k) => k.group).filter((g, i, all) => g !== all[i - 1])
  expect(order).toEqual(Object.keys(SHELF_GROUPS))
})

test('keys of fields, options and terminals are those of the permanent record', () => {
  expect(currentRecords()).toEqual(writtenRecords())
})

describe.each(['fuse-block', 'fuse-bar'])('%s: a row for each way', (key) => {
  const kind = kindOf(key)!
  const drawn = (labels: readonly string[]) => {
    const ways = labels.map((label) => ({ ratingA: 30, label }))
    return kind.symbol({ ...initialValues(kind.fields), ways })
  }
  const labels = Array.from({ length: 12 }, (_, i) => `Way ${i + 1}`)

  test('numbers are clear of the fuses, and a fuse sits on the middle of its lead', () => {
    const { w, marks } = drawn(labels)
    const boxes = marks
      .filter((m) => m.is === 'line' && m.closed)
      .map((m) => extent(m))
      .filter((corners) => Math.max(...corners.map(([x]) => x)) < w / 2)
    const leads = marks.flatMap((m) =>
      m.is === 'line' && m.points.at(-1)![0] === w ? [m.points[0]![1]] : [],
    )
    for (const y of leads)
      expect(
        boxes.some((c) => {
          const ys = c.map(([, cy]) => cy)
          return Math.max(...ys) - Math.min(...ys) < 5 && Math.max(...ys) + Math.min(...ys) === 2 * y
        }),
        `${y}`,
      ).toBe(true)
    for (const mark of marks.filter((m) => m.is === 'text')) {
      const [[left, top], [right, bottom]] = extent(mark) as [XY, XY]
      for (const corners of boxes) {
        const xs = corners.map(([x]) => x)
        const ys = corners.map(([, y]) => y)
        const apart =
          right <= Math.min(...xs) ||
          left >= Math.max(...xs) ||
          bottom <= Math.min(...ys) ||
          top >= Math.max(...ys)
        expect(apart, mark.text).toBe(true)
      }
    }
  })

  test('is as wide as its longest label needs, up to a limit', () => {
    const texts = (all: readonly string[]) =>
      drawn(all).marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))
    expect(texts(['Alternator charger, front'])).toContain('Alternator charger, front')
    expect(drawn(['Fan']).w).toBeLessThan(drawn(['Alternator charger, front']).w)
    const endless = 'W'.repeat(200)
    expect(drawn([endless]).w).toBeLessThan(100)
    expect(texts([endless]).some((t) => t.endsWith('…'))).toBe(true)
  })
})

// Letters of IEC 81346-2: F and Q as restated in public, the others from memory; editions differ for batteries and relays.
test('class letters are those of the standard for the group', () => {
  const letters = {
    stores: 'G',
    sources: 'GT',
    converters: 'T',
    distribution: 'WFX',
    protection: 'F',
    switching: 'QSK',
    measuring: 'B',
    loads: 'EMX',
    control: 'B',
    data: 'KPB',
    mains: 'XAE',
  }
  for (const kind of KINDS) expect(letters[kind.group], kind.key).toContain(kind.letter)
})

describe.each(KINDS.map((kind) => [kind.key, kind] as const))('%s', (_, kind) => {
  const variants = variantsOf(kind)

  test('initial values fit their fields; every field has words', () => {
    for (const [key, field] of Object.entries(kind.fields)) {
      const cells: [string, Field][] = field.type === 'rows' ? Object.entries(field.columns) : [[key, field]]
      for (const [at, cell] of cells) {
        if (cell.type !== 'rows') expect(valueFault(cell, cell.initial), at).toBeNull()
        expect(cell.about, at).toMatch(/^[A-Z0-9].*[.]$/)
        expect(cell.label, at).not.toBe('')
      }
      if (field.type === 'number')
        for (const value of field.standard ?? []) expect(valueFault(field, value)).toBeNull()
    }
    expect(kind.about).toMatch(/[.]$/)
  })

  test('results are computed for just the fields that are results', () => {
    const results = Object.keys(kind.fields).filter((key) => kind.fields[key]!.role === 'result')
    for (const v of variants)
      expect(Object.keys(kind.results?.(v, CONTEXT) ?? {}).sort()).toEqual([...results].sort())
  })

  test('terminals lie on the edges of the box, on the grid, apart from each other', () => {
    for (const v of variants) {
      const { w, h } = kind.symbol(v)
      const seen = new Set<string>()
      expect(onGrid(w) && onGrid(h)).toBe(true)
      for (const t of kind.terminals(v)) {
        expect(onGrid(t.x) && onGrid(t.y), t.key).toBe(true)
        const edge = { left: t.x === 0, right: t.x === w, up: t.y === 0, down: t.y === h }[t.side]
        expect(edge, t.key).toBe(true)
        expect(t.x >= 0 && t.x <= w && t.y >= 0 && t.y <= h, t.key).toBe(true)
        expect(seen.has(t.key) || seen.has(`${t.x} ${t.y}`), t.key).toBe(false)
        seen.add(t.key).add(`${t.x} ${t.y}`)
        expect(t.name, t.key).not.toBe('')
      }
    }
  })

  test('nothing is drawn outside the box, and no lettering is too small', () => {
    for (const v of variants) {
      const { w, h, marks } = kind.symbol(v)
      for (const mark of marks) {
        if (mark.is === 'text') expect(mark.height).toBeGreaterThanOrEqual(1.8)
        for (const [x, y] of extent(mark)) {
          const inside = x >= -1e-9 && y >= -1e-9 && x <= w + 1e-9 && y <= h + 1e-9
          expect(inside, `${JSON.stringify(mark)} reaches ${x}, ${y} of ${w} × ${h}`).toBe(true)
        }
      }
    }
  })

  test('each terminal is reached by a stroke of the drawing', () => {
    for (const v of variants) {
      const ends = kind.symbol(v).marks.flatMap((m) => (m.is === 'line' ? m.points : []))
      for (const t of kind.terminals(v))
        expect(
          ends.some(([x, y]) => x === t.x && y === t.y),
          t.key,
        ).toBe(true)
    }
  })

  test('the electrical model uses its own power terminals, all of them, within sound bounds', () => {
    for (const v of variants) {
      const power = kind
        .terminals(v)
        .filter((t) => ['positive', 'negative', 'any'].includes(t.pole))
        .map((t) => t.key)
      const e = kind.electrical(v, CONTEXT)
      const used = [
        ...e.merges.flat(),
        ...e.branches.flatMap((b) => [b.from, b.to]),
        ...e.devices.flatMap((d) => [d.positive, d.negative]),
        ...(e.frame ? [e.frame.terminal] : []),
      ]
      expect([...new Set(used)].sort()).toEqual([...power].sort())
      const keys = [...e.branches, ...e.devices].map((x) => x.key)
      expect(new Set(keys).size).toBe(keys.length)
      for (const b of e.branches) {
        expect(b.ohms).toBeGreaterThan(0)
        expect(b.from).not.toBe(b.to)
      }
      for (const d of e.devices) {
        if (typeof d.minA === 'number') expect(d.minA).toBeLessThanOrEqual(0)
        if (typeof d.maxA === 'number') expect(d.maxA).toBeGreaterThanOrEqual(0)
        if (typeof d.sustainedFaultA === 'number') expect(d.sustainedFaultA).toBeGreaterThanOrEqual(0)
        if (d.role === 'load') expect([d.maxA, d.sustainedFaultA]).toEqual([0, 0])
        if (d.role === 'source') expect([d.minA, d.sustainedFaultA]).toEqual([0, d.maxA])
        if (d.internalOhms !== undefined) expect(d.internalOhms).toBeGreaterThan(0)
      }
    }
  })

  test('captions are short lines without blanks', () => {
    for (const v of variants)
      for (const line of kind.caption(v)) {
        expect(line.trim()).toBe(line)
        expect(line).not.toMatch(/NaN|null|undefined/)
      }
  })
})
