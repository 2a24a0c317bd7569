import { describe, expect, test } from 'vitest'
import type { Design } from '../../../engine/model/design'
import type { TextMark } from '../../../engine/model/marks'
import { analyse } from '../../../engine/rules/analyse'
import { fieldEdges, insideOf, PAPERS, zoneOf } from '../../../engine/sheets/paper'
import { schematicSheets } from '../../../engine/sheets/schematic'
import type { Sheet } from '../../../engine/sheets/sheet'
import { design } from '../../build'
import { Random } from '../../reference/random'

const textsOf = (sheet: Sheet): TextMark[] => sheet.marks.filter((m) => m.is === 'text')

/** Batteries, bars, blocks and loads thrown on a table far larger than a sheet, joined as they come. */
function huge(seed: number, blocks: number): Design {
  const r = new Random(seed)
  const at = () => ({ x: 2.5 * r.whole(0, 500), y: 2.5 * r.whole(0, 260) })
  let d = design({ name: `Random ${seed}` })
    .part('battery', 'G1', { capacityAh: 200, dischargeA: 200, chargeA: 100 }, at())
    .part('fuse-bolt-in', 'F1', { ratingA: 150 }, at())
    .part('busbar', 'W901', { studs: 20, ratingA: 500 }, at())
    .part('busbar', 'W902', { studs: 40, ratingA: 500 }, at())
    .join('G1.+', 'F1.1', { size: '70mm2', lengthM: 0.3 })
    .join('F1.2', 'W901.1l', { size: '70mm2', lengthM: 0.3 })
    .join('W902.1l', 'G1.-', { size: '70mm2', lengthM: 0.3 })
  for (let b = 0; b < blocks; b++) {
    const ways = r.whole(3, 12)
    const block = `F${b + 10}`
    const rows = Array.from({ length: ways }, (_, i) => ({ ratingA: 10, label: `Load ${b}.${i}` }))
    d = d
      .part('fuse-block', block, { ratingA: 100, ways: rows }, at())
      .join(`W901.${b + 2}r`, `${block}.in`, { size: '25mm2', lengthM: 1 })
    for (let i = 1; i <= ways; i++) {
      const load = `E${b}0${i}`
      d = d.part('load', load, { currentA: r.whole(1, 9) }, { ...at(), name: `Load ${b}.${i}` })
      const feed = `W${d.build().conductors.length + 1}`
      d = d
        .join(`${block}.${i}`, `${load}.+`, { size: '2.5mm2', lengthM: 3, colour: 'RD' })
        .join(`${load}.-`, `W902.${r.whole(2, 40)}r`, { size: '2.5mm2', lengthM: 3, returnOf: feed })
    }
  }
  return d.build()
}

describe.each([
  [1, 6],
  [2, 12],
])('a random design far larger than a sheet (seed %i)', (seed, blocks) => {
  const d = huge(seed, blocks)
  const { answers, findings } = analyse(d)
  const sheets = schematicSheets(d, answers, findings)
  const words = new Set(
    sheets.flatMap((s) => textsOf(s).flatMap((t) => t.text.split(/[\s·/,:→]+/))).filter((w) => w !== ''),
  )

  test('is spread over sheets of the size that was asked for', () => {
    expect(sheets.length).toBeGreaterThan(4)
    for (const { w, h } of sheets) expect([w, h]).toEqual([420, 297])
  })

  test('every conductor and every part stands on some sheet', () => {
    for (const { number } of d.conductors) expect(words, number).toContain(number)
    for (const { designation } of d.parts) expect(words, designation).toContain(designation)
  })

  test('no lettering under 1.8 mm, nothing outside the frame', () => {
    for (const sheet of sheets)
      for (const mark of sheet.marks) {
        if (mark.is === 'text') expect(mark.height).toBeGreaterThanOrEqual(1.8)
        const points = mark.is === 'line' ? mark.points : [mark.at]
        for (const [x, y] of points) {
          expect(x).toBeGreaterThanOrEqual(0)
          expect(x).toBeLessThanOrEqual(sheet.w)
          expect(y).toBeGreaterThanOrEqual(0)
          expect(y).toBeLessThanOrEqual(sheet.h)
        }
      }
  })

  test('every reference has its partner, which stands in the field that it names', () => {
    const flags = sheets.flatMap((sheet, i) =>
      textsOf(sheet).flatMap((t) => {
        const found = /^(W\d+) → (\d+)\/([A-Z]\d+) ([A-Z]\d+)/.exec(t.text)
        const zone = zoneOf(PAPERS.A3, t.at[0], t.at[1] - t.height / 2)
        if (!found) return []
        const [, number, on, field, far] = found
        return [{ number: number!, to: `${on}/${field}`, far: far!, here: `${i + 1}/${zone}` }]
      }),
    )
    expect(flags.length).toBeGreaterThan(20)
    for (const flag of flags) {
      const partners = flags.filter((f) => f.number === flag.number && f !== flag)
      expect(partners.map((p) => p.here)).toEqual([flag.to])
      const there = sheets[Number.parseInt(flag.to, 10) - 1]!
      expect(textsOf(there).some((t) => t.text === flag.far && t.weight === 'bold' && t.height > 2)).toBe(
        true,
      )
    }
    for (const sheet of sheets) for (const link of sheet.links) expect(sheets[link.sheet]).toBeDefined()
  })
})

/** ISO 5457:1999, as restated: drawing space of A3 277 × 390 mm; A4 6 × 4, A3 8 × 6, A2 12 × 8 fields (from memory). */
test('frame of ISO 5457', () => {
  expect(insideOf(PAPERS.A3)).toEqual({ x: 20, y: 10, w: 390, h: 277 })
  expect(fieldEdges(210, 8, 20, 410)).toEqual([20, 60, 110, 160, 210, 260, 310, 360, 410])
  expect(zoneOf(PAPERS.A3, 21, 11)).toBe('A1')
  expect(zoneOf(PAPERS.A3, 409, 286)).toBe('F8')
  expect(zoneOf(PAPERS.A2, 583, 409)).toBe('H12')
  expect(zoneOf(PAPERS.A4, 286, 199)).toBe('D6')
})

test('a part that is larger than the sheet gets a larger sheet', () => {
  const d = design()
    .part('battery', 'G1', { capacityAh: 100 })
    .part('busbar', 'W901', { studs: 40 }, { x: 100 })
    .join('G1.+', 'W901.1l')
    .build()
  const { answers, findings } = analyse(d)
  const sheets = schematicSheets(d, answers, findings, { paper: 'A4' })
  const wide = sheets.filter((s) =>
    textsOf(s).some((t) => t.text === 'W901' && t.weight === 'bold' && t.height > 2),
  )
  expect(wide.map((s) => [s.w, s.h])).toEqual([[420, 297]])
  expect(sheets.filter((s) => s.w === 297).length).toBeGreaterThan(1)
})

test('findings are printed with their place', () => {
  const d = huge(1, 6)
  const { answers, findings } = analyse(d)
  expect(findings.length).toBeGreaterThan(0)
  const texts = schematicSheets(d, answers, findings)
    .flatMap(textsOf)
    .map((t) => t.text)
  for (const f of findings)
    expect(
      texts.some((t) => t.includes(`(${f.rule})`)),
      f.rule,
    ).toBe(true)
})
