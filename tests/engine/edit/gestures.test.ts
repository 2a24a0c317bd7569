import { describe, expect, test } from 'vitest'
import { addPartEdit } from '../../../engine/edit/addpart'
import { alignEdit, boundsOf, distributeEdit } from '../../../engine/edit/align'
import { apply } from '../../../engine/edit/apply'
import { copyOf, duplicateEdit, pasteEdit } from '../../../engine/edit/clip'
import type { Edit } from '../../../engine/edit/edit'
import { removeEdit } from '../../../engine/edit/removal'
import { boxOf } from '../../../engine/kinds/place'
import type { Design } from '../../../engine/model/design'
import { newDesign } from '../../../engine/model/newdesign'
import { conductorNumbered, design, partNamed } from '../../build'

const start = design()
  .part('battery', 'G1', {}, { x: 0, y: 0 })
  .part('fuse-bolt-in', 'F1', { ratingA: 60 }, { x: 50, y: 10 })
  .part('load', 'E1', {}, { x: 120, y: 40 })
  .part('busbar', 'W90', {}, { x: 200, y: 100 })
  .join('G1.+', 'F1.1', { size: '16mm2', path: [{ x: 20, y: 20 }] })
  .join('F1.2', 'E1.+')
  .join('E1.-', 'G1.-', { returnOf: 'W2' })
  .join('E1.-', 'W90.1l')
  .build()

const ids = (...names: string[]): string[] => names.map((n) => partNamed(start, n).id)

function edited(of: Design, edit: Edit): Design {
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

test('a part is added with its middle where it was let go', () => {
  const now = edited(start, addPartEdit(start, 'fuse-block', { x: 101, y: 203 }))
  const added = now.parts.at(-1)!
  expect(added).toMatchObject({ kind: 'fuse-block', designation: 'F2', id: 'p5' })
  const { x, y, w, h } = boxOf(added)
  expect(Math.abs(x + w / 2 - 101)).toBeLessThanOrEqual(1.25)
  expect(Math.abs(y + h / 2 - 203)).toBeLessThanOrEqual(1.25)
  expect(() => addPartEdit(start, 'no-such-kind', { x: 0, y: 0 })).toThrow(RangeError)
})

describe('copy and paste', () => {
  const clip = copyOf(start, { parts: ids('G1', 'F1', 'E1'), conductors: [] })

  test('takes the conductors among the parts and no others', () => {
    expect(clip.parts.map((p) => p.designation)).toEqual(['G1', 'F1', 'E1'])
    expect(clip.conductors.map((c) => c.number)).toEqual(['W1', 'W2', 'W3'])
  })

  test('gives new ids, designations and numbers, and keeps wiring, data and shape', () => {
    const now = edited(start, pasteEdit(start, clip, { x: 300, y: 50 }))
    expect(now.parts.slice(4).map((p) => p.designation)).toEqual(['G2', 'F2', 'E2'])
    expect(now.parts.slice(4).map((p) => [p.x, p.y])).toEqual([
      [300, 50],
      [350, 60],
      [420, 90],
    ])
    const made = now.conductors.slice(4)
    expect(made.map((c) => c.number)).toEqual(['W91', 'W92', 'W93'])
    expect(made[0]).toMatchObject({ size: '16mm2', path: [{ x: 320, y: 70 }] })
    expect(made[2]!.returnOf).toBe(made[1]!.id)
    expect(made[0]!.from.part).toBe(partNamed(now, 'G2').id)
    expect(partNamed(now, 'F2').values).toBe(partNamed(start, 'F1').values)
  })

  test('goes into another design, and survives JSON on the way', () => {
    const empty = newDesign('other')
    const now = edited(empty, pasteEdit(empty, JSON.parse(JSON.stringify(clip)), { x: 0, y: 0 }))
    expect(now.parts.map((p) => p.designation)).toEqual(['G1', 'F1', 'E1'])
    expect(now.conductors.map((c) => c.number)).toEqual(['W1', 'W2', 'W3'])
  })

  test('a return without its feed stands by itself', () => {
    const half = copyOf(start, { parts: ids('G1', 'E1'), conductors: [] })
    expect(pasteEdit(start, half, { x: 0, y: 0 }).conductors.map((c) => c.returnOf)).toEqual([null])
  })

  test('of nothing is nothing', () => {
    const none = copyOf(start, { parts: [], conductors: [] })
    expect(edited(start, pasteEdit(start, none, { x: 0, y: 0 }))).toBe(start)
  })

  test('duplicate stands beside the original', () => {
    const now = edited(start, duplicateEdit(start, { parts: ids('F1'), conductors: [] }))
    expect(now.parts.at(-1)).toMatchObject({ designation: 'F2', x: 60, y: 20 })
  })
})

describe('align and distribute', () => {
  const all = ids('G1', 'F1', 'E1', 'W90')

  test.each([
    ['left', (b: { x: number }) => b.x],
    ['right', (b: { x: number; w: number }) => b.x + b.w],
    ['top', (b: { y: number }) => b.y],
    ['bottom', (b: { y: number; h: number }) => b.y + b.h],
  ] as const)('%s: one edge for all, and the outermost stays', (to, edge) => {
    const now = edited(start, alignEdit(start, all, to))
    const edges = new Set(now.parts.map((p) => edge(boxOf(p))))
    expect(edges).toEqual(new Set([edge(boundsOf(start.parts))]))
  })

  test.each(['centre', 'middle'] as const)('%s: to the nearest grid line', (to) => {
    const now = edited(start, alignEdit(start, all, to))
    const mid = (of: { x: number; y: number; w: number; h: number }): number =>
      to === 'centre' ? of.x + of.w / 2 : of.y + of.h / 2
    for (const p of now.parts)
      expect(Math.abs(mid(boxOf(p)) - mid(boundsOf(start.parts)))).toBeLessThanOrEqual(1.25)
  })

  test('distribute: gaps alike to the grid, the outermost stay', () => {
    const now = edited(start, distributeEdit(start, all, 'x'))
    const boxes = now.parts.map((p) => boxOf(p)).sort((a, b) => a.x - b.x)
    const gaps = boxes.slice(1).map((b, i) => b.x - boxes[i]!.x - boxes[i]!.w)
    expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(5)
    expect([partNamed(now, 'G1').x, partNamed(now, 'W90').x]).toEqual([0, 200])
    expect(now.parts.map((p) => p.y)).toEqual(start.parts.map((p) => p.y))
  })
})

test('removing a feed removes the return that was drawn with it', () => {
  const feed = conductorNumbered(start, 'W2').id
  const now = edited(start, removeEdit(start, { parts: [], conductors: [feed] }))
  expect(now.conductors.map((c) => c.number)).toEqual(['W1', 'W4'])
  const fuse = edited(start, removeEdit(start, { parts: ids('F1'), conductors: [] }))
  expect(fuse.conductors.map((c) => c.number)).toEqual(['W4'])
})
