import { describe, expect, test } from 'vitest'
import { designPdf } from '../../../app/print/designpdf'
import { LABEL_STOCKS, labelSheets } from '../../../engine'
import { readFonts } from '../../reference/typeface/read'
import { trailer } from '../../scenarios/demos/trailer'
import { contentsOf } from './pdftext'

/** A PDF point is 1/72 inch of 25.4 mm; ordinates count from the lower edge (ISO 32000-1, 8.3.2.3). */
const mm = (points: number): number => (points * 25.4) / 72
const A4 = { w: 210, h: 297 }

const design = trailer()
const pdf = designPdf(design, labelSheets(design), {
  title: 'Labels',
  fonts: readFonts(),
  colouring: 'colour',
})

/** Straight strokes of two points, mm. */
function strokes(content: string): { x1: number; y1: number; x2: number; y2: number }[] {
  const found = content.matchAll(/(-?[\d.]+) (-?[\d.]+) m\s+(-?[\d.]+) (-?[\d.]+) l\s+S\b/g)
  return [...found].map(([, ...points]) => {
    const [x1, y1, x2, y2] = points.map((p) => mm(Number(p)))
    return { x1: x1!, y1: A4.h - y1!, x2: x2!, y2: A4.h - y2! }
  })
}

/** Where texts begin on their baselines, mm from the upper left corner. */
function beginnings(content: string): { x: number; y: number }[] {
  const found = content.matchAll(/(-?[\d.]+) (-?[\d.]+) Td\s+<[0-9A-Fa-f]+> Tj/g)
  return [...found].map(([, x, y]) => ({ x: mm(Number(x)), y: A4.h - mm(Number(y)) }))
}

describe('labels in the PDF, measured in millimetres', () => {
  test('both bars of the guide are 100 mm long, with strokes a millimetre apart', async () => {
    const [guide] = await contentsOf(pdf)
    const all = strokes(guide!)
    const long = all.filter((s) => Math.abs(Math.hypot(s.x2 - s.x1, s.y2 - s.y1) - 100) < 0.01)
    expect(long.length).toBe(2)
    const level = long.find((s) => Math.abs(s.y1 - s.y2) < 0.001)!
    const ticks = all
      .filter((s) => Math.abs(s.x1 - s.x2) < 0.001 && Math.abs(s.y1 - level.y1) < 0.001 && s.y2 - s.y1 < 4.5)
      .map((s) => s.x1 - Math.min(level.x1, level.x2))
      .filter((x) => x > -0.01 && x < 100.01)
      .sort((a, b) => a - b)
    expect(ticks.length).toBe(101)
    for (const [i, x] of ticks.entries()) expect(Math.abs(x - i)).toBeLessThan(0.02)
  })

  test('markers stand inside the labels of their stock: 38.1 × 21.2 mm, 65 on a sheet', async () => {
    const [, markers] = await contentsOf(pdf)
    const texts = beginnings(markers!)
    const { w, h, pitchX, pitchY, columns, rows } = LABEL_STOCKS.small
    // From memory, as such sheets are cut: 4.75 mm from the left, 10.7 mm from above.
    const cellOf = ({ x, y }: { x: number; y: number }) => {
      const [column, row] = [Math.floor((x - 4.75) / pitchX), Math.floor((y - 10.7) / pitchY)]
      const inside = x - 4.75 - column * pitchX <= w && y - 10.7 - row * pitchY <= h
      return inside && column >= 0 && column < columns && row >= 0 && row < rows
        ? row * columns + column
        : null
    }
    const cells = texts.map(cellOf).filter((cell) => cell !== null)
    expect(texts.length).toBeGreaterThan(130)
    expect(cells.length).toBe(texts.length)
    expect(new Set(cells).size).toBe(65)
  })
})
