import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { boxOf } from '../../../engine/kinds/place'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import { arrangeEdit } from '../../../engine/sheets/arrangedesign'
import { extentOf } from '../../../engine/sheets/extent'
import { sceneOf } from '../../../engine/sheets/makescene'
import { piecesRound } from '../../../engine/sheets/outlinepieces'
import { type Area, PAPERS } from '../../../engine/sheets/paper'
import { paperDrawings } from '../../../engine/sheets/paperdrawings'
import { drawingArea } from '../../../engine/sheets/sheetbase'
import { sceneText } from '../../../engine/sheets/sheettexts'
import { outlineEdit } from '../../../engine/sheets/zonedesign'

const van = (): Design => {
  const file = new URL('../../../public/demos/veterinary-van.json', import.meta.url)
  const { design } = readDesign(readFileSync(file, 'utf8'))
  if (!design) throw new Error('the van is no design')
  return design
}
const crosses = (a: Area, b: Area): boolean =>
  a.x < b.x + b.w - 1e-6 && b.x < a.x + a.w - 1e-6 && a.y < b.y + b.h - 1e-6 && b.y < a.y + a.h - 1e-6
const contains = (a: Area, b: Area): boolean =>
  b.x >= a.x && b.y >= a.y && b.x + b.w <= a.x + a.w && b.y + b.h <= a.y + a.h

const box = fc.record({
  x: fc.integer({ min: 0, max: 30 }).map((n) => n * 10),
  y: fc.integer({ min: 0, max: 30 }).map((n) => n * 10),
  w: fc.constant(2.5),
  h: fc.constant(2.5),
})

describe('pieces', () => {
  test('every member stands in one, no stranger in any', () =>
    fc.assert(
      fc.property(
        fc.uniqueArray(box, { minLength: 2, maxLength: 14, selector: (b) => `${b.x} ${b.y}` }),
        fc.nat(),
        (boxes, share) => {
          const count = 1 + (share % (boxes.length - 1))
          const [members, others] = [boxes.slice(0, count), boxes.slice(count)]
          const pieces = piecesRound(members, others)
          for (const m of members) expect(pieces.some((p) => contains(p, m))).toBe(true)
          // Boxes stand 7.5 mm apart at least, so that a margin of 2.5 mm to 3.75 mm reaches none.
          for (const o of others) expect(pieces.some((p) => crosses(p, o))).toBe(false)
        },
      ),
      { numRuns: 200, seed: 3 },
    ))

  test('members that stand together are taken together', () =>
    expect(
      piecesRound(
        [
          { x: 0, y: 0, w: 10, h: 10 },
          { x: 30, y: 0, w: 10, h: 10 },
        ],
        [{ x: 0, y: 50, w: 5, h: 5 }],
      ),
    ).toHaveLength(1))
})

describe('zones', () => {
  test('an arranged drawing has no zone round the wrong parts', () => {
    const d = van()
    const own = new Set(d.parts.filter((_, i) => i % 9 === 0).map((p) => p.id))
    const outlined = apply(d, outlineEdit(d, own))
    if (outlined.refused) throw new Error(outlined.why)
    const { answers } = analyse(d)
    const arranged = apply(outlined.design, arrangeEdit(outlined.design, answers))
    if (arranged.refused) throw new Error(arranged.why)
    for (const now of [outlined.design, arranged.design]) {
      const scene = sceneOf(now, answers, 'single-line')
      const rects = scene.outlines.filter((o) => o.zone === 'z1')
      expect(rects.length).toBeGreaterThan(0)
      for (const part of now.parts) {
        const at = boxOf(part, now.conductors)
        if (own.has(part.id))
          expect(
            rects.some((r) => contains(r, at)),
            part.designation,
          ).toBe(true)
        else
          expect(
            rects.some((r) => contains(r, at)),
            part.designation,
          ).toBe(false)
      }
      expect(rects.every((r) => r.name.marks.length > 0)).toBe(true)
    }
  })
})

describe('round mains', () => {
  const d = van()
  const { answers } = analyse(d)
  const mains = new Set(
    d.parts.filter((p) => p.kind.startsWith('mains-') && p.kind !== 'mains-charger').map((p) => p.id),
  )

  for (const view of ['single-line', 'both-poles'] as const)
    test(`${view}: every mains part inside, no other part; the sign and who may work there beside it`, () => {
      const { outlines, parts } = sceneOf(d, answers, view)
      const rects = outlines.filter((o) => o.zone === null)
      expect(mains.size).toBeGreaterThan(2)
      for (const p of parts) expect(rects.some((r) => contains(r, p))).toBe(mains.has(p.id))
      for (const { name } of rects) {
        expect(name.marks.some((m) => m.is === 'text' && m.text === 'licensed persons only')).toBe(true)
        expect(name.marks.filter((m) => m.is === 'line' && m.closed)).toHaveLength(2)
      }
    })

  test('on paper, no conductor of another voltage runs through an outline that holds one part', () => {
    const { power } = paperDrawings(d, answers, 'single-line', drawingArea(PAPERS.A3))
    const alone = power.drawings.flatMap(({ layout }) =>
      layout.outlines
        .filter((o) => o.zone === null && layout.parts.filter((p) => contains(o, p)).length === 1)
        .map((outline) => ({ outline, conductors: layout.conductors.filter((c) => c.nature !== 'mains') })),
    )
    expect(alone.length).toBeGreaterThan(0)
    for (const { outline, conductors } of alone)
      for (const { id, points } of conductors)
        for (const [i, [x2, y2]] of points.slice(1).entries()) {
          const [x1, y1] = points[i]!
          const [x, y] = [Math.min(x1, x2), Math.min(y1, y2)]
          const run = { x, y, w: Math.abs(x2 - x1) + 1e-3, h: Math.abs(y2 - y1) + 1e-3 }
          expect(crosses(outline, run), id).toBe(false)
        }
  })
})

test('no conductor and no words run through a text or the name of an outline', () => {
  const d = van()
  const before = sceneOf(d, analyse(d).answers, 'single-line')
  const [at] = before.conductors
    .flatMap(({ points }) => points.slice(1).map(([x2, y2], i) => ({ from: points[i]!, x2, y2 })))
    .filter(({ from, y2 }) => from[1] === y2)
    .sort((a, b) => Math.abs(b.x2 - b.from[0]) - Math.abs(a.x2 - a.from[0]))
  // In the way of the longest level stretch.
  const place = { x: (at!.from[0] + at!.x2) / 2, y: at!.y2 - 2.5 }
  const text = { id: 't1', text: 'Fit the block\nwith the lid up', view: 'all', ...place } as const
  const written = apply(d, { do: 'text', text })
  if (written.refused) throw new Error(written.why)
  const scene = sceneOf(written.design, analyse(d).answers, 'single-line')
  for (const words of [sceneText(written.design.texts![0]!), ...scene.outlines.map((o) => o.name)]) {
    const core = { x: words.x + 0.7, y: words.y + 0.7, w: words.w - 1.4, h: words.h - 1.4 }
    for (const { points, id } of scene.conductors)
      points.slice(1).forEach(([x2, y2], i) => {
        const [x1, y1] = points[i]!
        const run = {
          x: Math.min(x1, x2),
          y: Math.min(y1, y2),
          w: Math.abs(x2 - x1) + 1e-3,
          h: Math.abs(y2 - y1) + 1e-3,
        }
        expect(crosses(core, run), id).toBe(false)
      })
    for (const label of scene.labels)
      if ('conductor' in label.of) expect(crosses(words, extentOf(label)), label.of.conductor).toBe(false)
  }
})
