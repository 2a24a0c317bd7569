import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { copyOf, duplicateEdit, pasteEdit } from '../../../engine/edit/clip'
import type { Edit } from '../../../engine/edit/edit'
import { historyOf, push, redo, undo } from '../../../engine/edit/history'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design, Zone } from '../../../engine/model/design'
import { drawingNotes } from '../../../engine/model/drawingnotes'
import { writeDesign } from '../../../engine/model/write'
import { design } from '../../build'

const base = () =>
  design({ notes: 'First.\n\nSecond.\nThird.' })
    .part('lamp', 'E1', {}, { x: 20, y: 20 })
    .part('lamp', 'E2', {}, { x: 20, y: 50 })
    .part('lamp', 'E3', {}, { x: 100, y: 20 })
    .build()

function done(d: Design, edit: Edit): Design {
  const result = apply(d, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}
const ids = (d: Design) => d.parts.map((p) => p.id)
const zone = (parts: readonly string[]): Zone => ({
  ...{ id: 'z1', name: 'under bench', parts },
  ...{ x: 10, y: 10, w: 60, h: 80 },
})

describe('outlines', () => {
  test('edges keep their distance from the parts, however these are moved', () => {
    const d = base()
    const [a, b] = ids(d)
    const outlined = done(d, { do: 'zone', zone: zone([a!, b!]) })
    // E1 goes 10 to the right and 5 up, E2 stays: the left edge stays with E2, the right one goes with E1.
    const moved = done(outlined, { do: 'move', to: [{ part: a!, x: 30, y: 15 }] })
    expect(moved.zones).toEqual([{ ...zone([a!, b!]), y: 5, w: 70, h: 85 }])
    // Both by the same: it goes along whole.
    const both = done(outlined, {
      do: 'move',
      to: [
        { part: a!, x: 120, y: 45 },
        { part: b!, x: 120, y: 75 },
      ],
    })
    expect(both.zones).toEqual([{ ...zone([a!, b!]), x: 110, y: 35 }])
  })

  test('stay where they are while other parts move, and go with the last of their own', () => {
    const d = base()
    const [a, b, c] = ids(d)
    const outlined = done(d, { do: 'zone', zone: zone([a!, b!]) })
    expect(done(outlined, { do: 'move', to: [{ part: c!, x: 300, y: 0 }] }).zones).toBe(outlined.zones)
    const one = done(outlined, { do: 'remove', parts: [a!], conductors: [] })
    expect(one.zones?.[0]?.parts).toEqual([b])
    expect(done(one, { do: 'remove', parts: [b!], conductors: [] }).zones).toBeUndefined()
  })

  test('round no part: a rectangle on the grid that stays', () => {
    const d = done(base(), { do: 'zone', zone: { ...zone([]), x: 11.2 } })
    expect(d.zones?.[0]?.x).toBe(10)
    const gone = done(d, { do: 'remove', parts: ids(d), conductors: [] })
    expect(gone.zones).toEqual(d.zones)
  })

  test('need a name and parts of the design', () => {
    const d = base()
    expect(apply(d, { do: 'zone', zone: { ...zone([]), name: ' ' } })).toMatchObject({ code: 'zone-name' })
    expect(apply(d, { do: 'zone', zone: zone(['p99']) })).toMatchObject({ code: 'no-part' })
    expect(apply(d, { do: 'unzone', id: 'z9' })).toMatchObject({ code: 'no-zone' })
  })
})

describe('texts on the sheet', () => {
  const text = { id: 't1', text: 'Seal all\nglands', view: 'all', x: 101, y: 41 } as const

  test('are written, rewritten, taken off; each step can be undone', () => {
    const d = base()
    const written = done(d, { do: 'text', text })
    expect(written.texts).toEqual([{ ...text, x: 100, y: 40 }])
    const rewritten = done(written, { do: 'text', text: { ...text, text: 'Leave slack' } })
    expect(rewritten.texts?.map((t) => t.text)).toEqual(['Leave slack'])
    expect(done(rewritten, { do: 'untext', ids: ['t1'] })).toEqual(d)
    const history = push(push(historyOf(d), written, 'a'), rewritten, 'b')
    expect(undo(history).design).toBe(written)
    expect(redo(undo(history)).design).toBe(rewritten)
    expect(apply(d, { do: 'text', text: { ...text, text: ' \n ' } })).toMatchObject({ code: 'no-text' })
  })

  test('go along with a copied selection under ids of their own', () => {
    const d = done(base(), { do: 'text', text })
    const selection = { parts: [ids(d)[0]!], conductors: [], texts: ['t1'] }
    const copy = done(d, duplicateEdit(d, selection))
    expect(copy.texts).toEqual([d.texts![0], { ...d.texts![0], id: 't2', x: 110, y: 50 }])
    const alone = pasteEdit(d, copyOf(d, { parts: [], conductors: [], texts: ['t1'] }), { x: 0, y: 0 })
    expect(alone.texts).toEqual([{ ...d.texts![0], id: 't2', x: 0, y: 0 }])
  })
})

describe('drawing notes', () => {
  test('one a line; empty lines are none', () =>
    expect(drawingNotes(base())).toEqual(['First.', 'Second.', 'Third.']))

  test('parts keep the notes that they refer to when these are put in another order', () => {
    const d = base()
    const [a] = ids(d)
    const flagged = done(d, { do: 'refer', part: a!, notes: [3, 1, 3] })
    expect(flagged.parts[0]?.notes).toEqual([1, 3])
    const turned = done(flagged, {
      do: 'notes',
      notes: [
        { text: 'Third.', was: 3 },
        { text: 'New.', was: null },
        { text: 'Second.', was: 2 },
      ],
    })
    expect(drawingNotes(turned)).toEqual(['Third.', 'New.', 'Second.'])
    expect(turned.parts[0]?.notes).toEqual([1])
    expect(done(turned, { do: 'refer', part: a!, notes: [] }).parts[0]).not.toHaveProperty('notes')
    expect(apply(d, { do: 'refer', part: a!, notes: [4] })).toMatchObject({ code: 'no-note' })
  })

  test('a part that is pasted leaves its references behind: another design has other notes', () => {
    const d = done(base(), { do: 'refer', part: 'p1', notes: [2] })
    const clip = copyOf(d, { parts: ['p1'], conductors: [] })
    expect(pasteEdit(base(), clip, { x: 0, y: 0 }).parts[0]).not.toHaveProperty('notes')
  })
})

test('outlines come along with a copy of all of their parts, and only then', () => {
  const d = done(base(), { do: 'zone', zone: zone(['p1', 'p2']) })
  const both = { parts: ['p1', 'p2'], conductors: [] }
  const copied = done(d, duplicateEdit(d, both, { x: 120, y: 120 }))
  expect(copied.zones).toEqual([zone(['p1', 'p2']), { ...zone(['p4', 'p5']), id: 'z2', x: 110, y: 110 }])
  expect(copyOf(d, { parts: ['p1'], conductors: [] }).zones).toBeUndefined()
  const elsewhere = done(design().build(), pasteEdit(design().build(), copyOf(d, both), { x: 0, y: 0 }))
  expect(elsewhere.zones).toEqual([{ ...zone(['p1', 'p2']), x: -10, y: -10 }])
  expect(apply(d, { do: 'add', parts: [], conductors: [], zones: [zone([])] })).toMatchObject({
    code: 'id-taken',
  })
})

test('a file keeps outlines, texts and references, and tells what is wrong with them', () => {
  let d = done(base(), { do: 'zone', zone: zone(['p1', 'p2']) })
  d = done(d, { do: 'text', text: { id: 't1', text: 'Seal', view: 'data', x: 0, y: 0 } })
  d = done(d, { do: 'refer', part: 'p2', notes: [2] })
  expect(readDesign(writeDesign(d))).toEqual({ design: d, problems: [] })
  const file = JSON.parse(writeDesign(d))
  file.zones[0].parts.push('p77')
  file.zones.push({ ...file.zones[0], parts: [] })
  file.texts[0].view = 'upside-down'
  const read = readDesign(JSON.stringify(file))
  expect(read.problems.map((p) => p.path)).toEqual(['zones[1].id', 'zones[0].parts', 'texts[0].view'])
  expect(read.design?.zones?.map((z) => z.parts)).toEqual([['p1', 'p2']])
  expect(read.design?.texts?.[0]?.view).toBe('all')
})
