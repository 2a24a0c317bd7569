import { describe, expect, it } from 'vitest'
import {
  analyse,
  apply,
  type Design,
  type Edit,
  readDesign,
  schedulesOf,
  writeDesign,
} from '../../../../engine/index'
import { benchDesign } from './bench'

const schedule = (design: Design, key: string) =>
  schedulesOf(design, analyse(design).answers).find((s) => s.key === key)!

function edited(design: Design, edit: Edit): Design {
  const result = apply(design, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

const keyOf = (design: Design, list: string, what: string) =>
  schedule(design, list).rows.find((r) => r.cells.what === what)!.key

describe('what the workshop knows of the things it buys', () => {
  const bench = benchDesign()
  const cable = schedule(bench, 'parts').rows.find((r) => r.key.startsWith('Cable/'))!
  const pump = keyOf(bench, 'parts', 'Pump')
  const known = edited(bench, {
    do: 'articles',
    articles: [
      { key: pump, number: 'P-100', price: 40.5, weightKg: 0.8 },
      { key: cable.key, number: 'C-2', price: 1.25, weightKg: null },
    ],
  })

  it('stands in the row of the thing, and sums by quantity', () => {
    const rows = schedule(known, 'parts').rows
    expect(rows.find((r) => r.key === pump)!.cells).toMatchObject({
      article: 'P-100',
      each: 40.5,
      price: 40.5,
      weight: 0.8,
    })
    const metres = Number(cable.cells.quantity)
    expect(rows.find((r) => r.key === cable.key)!.cells.price).toBeCloseTo(metres * 1.25, 2)
    expect(rows.filter((r) => r.cells.price === '')).toHaveLength(rows.length - 2)
  })

  it('gives the sum of all lines, and says how many have no figure', () => {
    const { notes, rows } = schedule(known, 'parts')
    const sum = (40.5 + Number(cable.cells.quantity) * 1.25).toFixed(2)
    expect(
      notes.some((n) => n.includes(`Price of all lines: ${sum}; ${rows.length - 2} of ${rows.length}`)),
    ).toBe(true)
  })

  it('shows no column for prices and weights where none is stated', () => {
    const keys = schedule(bench, 'parts').columns.map((c) => c.key)
    expect(keys).toContain('article')
    expect(keys).not.toContain('price')
    expect(keys).not.toContain('weight')
  })

  it('numbers lugs too', () => {
    const [lug] = schedule(bench, 'lugs').rows
    const named = edited(bench, {
      do: 'articles',
      articles: [{ key: lug!.key, number: 'L-16-8', price: null, weightKg: null }],
    })
    expect(schedule(named, 'lugs').rows[0]!.cells.article).toBe('L-16-8')
  })

  it('goes when nothing is known any more, and is the same design when nothing changes', () => {
    const blank = { key: pump, number: '', price: null, weightKg: null }
    expect(edited(bench, { do: 'articles', articles: [blank] })).toBe(bench)
    expect(edited(known, { do: 'articles', articles: [blank] }).articles!.map((a) => a.key)).toEqual([
      cable.key,
    ])
    expect(apply(bench, { do: 'articles', articles: [{ ...blank, price: -1 }] }).refused).toBe(true)
  })

  it('comes back from the file; a faulty price costs only itself', () => {
    const text = writeDesign(known)
    expect(readDesign(text)).toEqual({ design: known, problems: [] })
    const read = readDesign(text.replace('"price": 40.5', '"price": "dear"'))
    expect(read.problems).toHaveLength(1)
    expect(read.design!.articles).toContainEqual({ key: pump, number: 'P-100', price: null, weightKg: 0.8 })
  })
})

describe('how conductors are made up', () => {
  const bench = benchDesign()
  const made = edited(bench, {
    do: 'making',
    making: { allowanceM: 0.25, thinStockM: 100, thickStockM: 25, currency: 'EUR' },
  })

  it('adds the own allowance at both ends and says whose it is', () => {
    const w5 = schedule(made, 'conductors').rows.find((r) => r.name === 'W5')!
    expect(w5.cells.cut).toBeCloseTo(12 + 2 * 0.25, 9)
    expect(schedule(made, 'conductors').notes[0]).toContain("workshop's own figure")
    expect(schedule(bench, 'conductors').notes[0]).toContain('common practice, no source')
  })

  it('cuts from the own stock lengths', () => {
    const stock = (d: Design) => schedule(d, 'cable').rows.map((r) => r.cells.stock)
    expect(stock(bench).filter((s) => typeof s === 'number')).toEqual(expect.arrayContaining([10, 30]))
    expect(stock(bench)).not.toContain(25)
    expect(stock(made)).toContain(100)
    expect(stock(made)).toContain(25)
  })

  it('refuses what cannot be, and comes back from the file', () => {
    const making = { allowanceM: 3, thinStockM: 100, thickStockM: 25, currency: '' }
    expect(apply(bench, { do: 'making', making }).refused).toBe(true)
    expect(edited(made, { do: 'making', making: null }).making).toBeUndefined()
    expect(readDesign(writeDesign(made)).design).toEqual(made)
  })
})
