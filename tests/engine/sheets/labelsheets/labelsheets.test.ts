import { describe, expect, it } from 'vitest'
import {
  analyse,
  csvOf,
  LABEL_STOCKS,
  type LabelStock,
  labelSheets,
  labelsOf,
  labelTable,
  ownStock,
  type Sheet,
  schedulesOf,
  sleeveFor,
  type TextMark,
  widthOf,
} from '../../../../engine/index'
import { labelMarks } from '../../../../engine/sheets/labelsheets/labelmarks'
import { labelCorner } from '../../../../engine/tables/labelstock'
import { DEMOS } from '../../../scenarios/demos/all'
import { benchDesign } from '../schedules/bench'
import { readCsv } from '../schedules/readcsv'

const texts = ({ marks }: Sheet): TextMark[] => marks.filter((m) => m.is === 'text')

/** Label of the stock that holds a text whole; null where it crosses an edge. */
function holder(t: TextMark, stock: LabelStock): number | null {
  const half = widthOf(t.text, t.height, t.weight) / 2
  for (let place = 0; place < stock.columns * stock.rows; place++) {
    const [x, y] = labelCorner(stock, place)
    const inside =
      t.at[0] - half >= x &&
      t.at[0] + half <= x + stock.w &&
      t.at[1] - t.height >= y &&
      t.at[1] <= y + stock.h
    if (inside) return place
  }
  return null
}

describe('label stock', () => {
  it.each(Object.values(LABEL_STOCKS))('$title lies on the paper and does not overlap itself', (stock) => {
    const [x, y] = labelCorner(stock, 0)
    const [right, bottom] = labelCorner(stock, stock.columns * stock.rows - 1)
    expect(x).toBeGreaterThanOrEqual(0)
    expect(y).toBeGreaterThanOrEqual(0)
    // Margins are alike on both sides.
    expect(stock.paperW - right - stock.w).toBeCloseTo(x, 9)
    expect(stock.paperH - bottom - stock.h).toBeCloseTo(y, 9)
    expect(stock.pitchX).toBeGreaterThanOrEqual(stock.w)
    expect(stock.pitchY).toBeGreaterThanOrEqual(stock.h)
  })

  it('65 on a sheet stand where such sheets are cut: 4.75 mm from the left, 10.7 mm from above (from memory)', () => {
    const [x, y] = labelCorner(LABEL_STOCKS.small, 0)
    expect(x).toBeCloseTo(4.75, 9)
    expect(y).toBeCloseTo(10.7, 9)
  })
})

describe('labels', () => {
  it('mark both ends of a conductor with number and ends', () => {
    const markers = labelsOf(benchDesign()).filter((l) => l.kind === 'conductor')
    expect(markers).toHaveLength(22)
    expect(markers.slice(0, 2).map((l) => [l.place, ...l.lines])).toEqual([
      ['at G1:+', 'W2', 'G1:+ / F1:1'],
      ['at F1:1', 'W2', 'G1:+ / F1:1'],
    ])
  })

  it('carry the marker text that the schedule prints', () => {
    const van = DEMOS[0]!.make()
    const printed = schedulesOf(van, analyse(van).answers)[0]!.rows.map((r) => r.cells.marker)
    const shown = labelsOf(van).filter((l) => l.kind === 'conductor')
    expect([...new Set(shown.map((l) => l.lines.join(' ')))]).toEqual(printed)
  })

  it('name every way of a block, spare and empty ones as well', () => {
    const ways = labelsOf(benchDesign()).filter((l) => l.kind === 'way')
    expect(ways.map((l) => l.lines)).toEqual([
      ['F2:1 10 A', 'Pump'],
      ['F2:2 7.5 A', 'Lamp'],
      ['F2:3 – A', 'spare'],
    ])
  })

  it('never warn in words that promise: free of danger, meets a rule', () => {
    for (const { make } of DEMOS)
      for (const l of labelsOf(make()).filter((l) => l.kind === 'warning'))
        expect(l.lines.join(' ')).not.toMatch(/\bsafe|complian/i)
  })

  it('carry the sign for electricity where there is mains, the general one elsewhere, and say how all is isolated', () => {
    const van = DEMOS[0]!.make()
    const warnings = labelsOf(van).filter((l) => l.kind === 'warning')
    const mains = warnings.filter((l) => l.lines[0]!.startsWith('MAINS'))
    expect(mains.length).toBeGreaterThan(0)
    for (const l of mains) expect(l.sign).toBe('W012')
    for (const l of warnings.filter((w) => w.lines[0]!.startsWith('BATTERY'))) expect(l.sign).toBe('W001')
    const isolate = warnings.find((l) => l.lines[0] === 'ISOLATE BEFORE WORK')!
    for (const { kind, designation } of van.parts)
      if (['isolator', 'pv-array', 'alternator'].includes(kind))
        expect(isolate.lines[1]).toContain(designation)
    const bare = labelsOf(benchDesign()).filter((l) => l.sign === 'W012')
    expect(bare).toEqual([])
  })

  it('come as a table for label printers, one row each', () => {
    const [head, ...rows] = readCsv(csvOf(labelTable(benchDesign())).slice(1))
    expect(head!.slice(0, 4)).toEqual(['Kind', 'Where', 'Line 1', 'Line 2'])
    expect(rows).toHaveLength(labelsOf(benchDesign()).length)
  })
})

describe('label sheets', () => {
  for (const { file, make } of DEMOS)
    it(`${file}: every word stands whole on its label`, () => {
      const design = make()
      const [guide, ...sheets] = labelSheets(design)
      expect(texts(guide!).some((t) => t.text.startsWith('No room'))).toBe(false)
      const stockOf = (title: string) =>
        title.startsWith('Warnings')
          ? LABEL_STOCKS.large
          : title.startsWith('Parts')
            ? LABEL_STOCKS.middle
            : LABEL_STOCKS.small
      for (const s of sheets)
        for (const t of texts(s)) {
          expect(holder(t, stockOf(s.title)), `${s.title}: ${t.text}`).not.toBeNull()
          expect(t.height).toBeGreaterThanOrEqual(1.8)
        }
      const markers = sheets.filter((s) => s.title.startsWith('Conductor'))
      const words = markers.flatMap((s) => texts(s).map((t) => t.text))
      for (const c of design.conductors) expect(words.filter((w) => w === c.number).length).toBe(2)
    })

  it('begins after labels that are used up', () => {
    const first = labelSheets(benchDesign(), { used: 7 })[1]!
    expect(
      texts(first)
        .map((t) => holder(t, LABEL_STOCKS.small))
        .sort((a, b) => a! - b!)[0],
    ).toBe(7)
  })

  it('takes other stock', () => {
    const sheets = labelSheets(benchDesign(), { stock: { conductor: LABEL_STOCKS.sleeves } })
    const markers = sheets.find((s) => s.title.startsWith('Conductor'))!
    for (const t of texts(markers)) expect(holder(t, LABEL_STOCKS.sleeves)).not.toBeNull()
  })

  it('puts markers on the heat-shrink that passes over the insulation and shrinks on to it', () => {
    const van = DEMOS[0]!.make()
    const sheets = labelSheets(van, { sleeves: true })
    const words = sheets.flatMap((s) => texts(s).map((t) => t.text))
    for (const c of van.conductors)
      expect(words.filter((w) => new RegExp(`^${c.number}( |$)`).test(w)).length, c.number).toBe(2)
    for (const over of [1.9, 2.8, 4.4, 6.5, 11.6]) {
      const { h } = sleeveFor(over)!
      // Flat width is half the circumference; heat-shrink of 2:1 goes down to half its diameter.
      const inner = (2 * h) / Math.PI
      expect(inner).toBeGreaterThan(over)
      expect(inner / 2).toBeLessThan(over)
    }
    expect(sleeveFor(60)).toBeNull()
  })

  it('takes a size of one’s own', () => {
    const own = ownStock({
      paperW: 100,
      paperH: 60,
      columns: 2,
      rows: 3,
      w: 45,
      h: 15,
      pitchX: 50,
      pitchY: 20,
    })
    const sheets = labelSheets(benchDesign(), { stock: { way: own } })
    const ways = sheets.find((s) => s.title === 'Fuse ways')!
    expect([ways.w, ways.h]).toEqual([100, 60])
    for (const t of texts(ways)) expect(holder(t, own)).not.toBeNull()
  })

  it('says so where words have no room, and stays inside the label', () => {
    const long = labelMarks({ lines: ['X'.repeat(80), 'word '.repeat(80)] }, 30, 12)
    expect(long.cut).toBe(true)
    for (const m of long.marks)
      if (m.is === 'text') {
        expect(m.at[1]).toBeLessThanOrEqual(12)
        expect(m.at[1] - m.height).toBeGreaterThanOrEqual(0)
      }
  })

  it('draws two bars of 100 mm on the guide', () => {
    const guide = labelSheets(benchDesign())[0]!
    const bars = guide.marks.flatMap((m) =>
      m.is === 'line' && m.pen === 'line' && m.points.length === 2 ? [m.points] : [],
    )
    const long = bars.filter(([a, b]) => Math.abs(Math.hypot(b![0] - a![0], b![1] - a![1]) - 100) < 1e-9)
    expect(long).toHaveLength(2)
  })
})
