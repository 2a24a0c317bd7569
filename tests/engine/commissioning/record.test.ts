import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { newEntry, newSigning } from '../../../engine/calc/commissioning/newentry'
import { commissioningRecord } from '../../../engine/calc/commissioning/record'
import { apply } from '../../../engine/edit/apply'
import { builtEdit } from '../../../engine/edit/bench'
import { bringFrom } from '../../../engine/edit/benchbring'
import type { Edit } from '../../../engine/edit/edit'
import { historyOf, push, undo } from '../../../engine/edit/history'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { TestEntry, TestRecord } from '../../../engine/model/commissioning'
import type { Design } from '../../../engine/model/design'
import { writeDesign } from '../../../engine/model/write'
import {
  commissioningSections,
  commissioningSheets,
} from '../../../engine/sheets/commissioning/commissioning.section'
import { widthOf } from '../../../engine/sheets/measure'
import type { PackContext } from '../../../engine/sheets/packs/section'
import { builtOtherwiseWords } from '../../../engine/words/commissioning/asbuilt'
import { commissioningSummary } from '../../../engine/words/commissioning/summary'
import { partNamed } from '../../build'
import { addLoad, readingIn, stepOf, withShunts } from './bench'

const drawn = addLoad(withShunts(), 'E1', 10).build()
const E1 = partNamed(drawn, 'E1').id
const STEP = `loads/${E1}/load`
const HUNG = `shunt:${partNamed(drawn, 'B2').id}`

const done = (d: Design, edit: Edit): Design => {
  const result = apply(d, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

let clock = 0
const minute = (n: number): string => `2026-03-04T10:${String(n).padStart(2, '0')}:00+10:00`

function entry(
  d: Design,
  reading: string,
  found: TestEntry['found'],
  more: Partial<TestEntry> = {},
  step = STEP,
): TestEntry {
  clock += 1
  const entered = { id: `e${clock}`, by: 'A. Rivers', at: minute(clock % 60), remark: '', found }
  return { ...newEntry(d, stepOf(d, step), readingIn(d, step, reading), entered), ...more }
}
const enter = (
  d: Design,
  ...args: Parameters<typeof entry> extends [Design, ...infer R] ? R : never
): Design => done(d, { do: 'record', records: [entry(d, ...args)] })

describe('pass and fail are computed', () => {
  it.each([
    [8.79, 'failed'],
    [8.8, 'passed'],
    [11.2, 'passed'],
    [11.21, 'failed'],
    [-10, 'failed'],
  ])('%f A of 8.8 to 11.2 A: %s', (found, state) => {
    expect(readingIn(enter(drawn, 'amps', found), STEP, 'amps').state).toBe(state)
  })

  it('what was never measured is not done', () => {
    expect(readingIn(drawn, STEP, 'amps').state).toBe('not-done')
    expect(commissioningRecord(drawn).counts).toMatchObject({ passed: 0, failed: 0, outOfDate: 0 })
  })

  it('what failed stays beside what was retested', () => {
    const d = enter(enter(drawn, 'amps', 3), 'amps', 10.1, { remark: 'lug crimped anew' })
    const { state, entries } = readingIn(d, STEP, 'amps')
    expect(state).toBe('passed')
    expect(entries.map((e) => [e.entry.found, e.result])).toEqual([
      [3, 'failed'],
      [10.1, 'passed'],
    ])
    expect(commissioningSummary(d)).toMatchObject({ mended: 1, state: 'some', open: [] })
    const paper = textOf(d)
    expect(paper).toContain('Before: 3 A, fail (A. Rivers')
    expect(paper).toContain('lug crimped anew')
  })

  it('a display is held against the clamp meter as it was measured', () => {
    const d = enter(drawn, 'amps', 11)
    expect(readingIn(d, STEP, HUNG).expected).toMatchObject({ usual: 11, least: 10.47, most: 11.53 })
    expect(readingIn(enter(d, HUNG, 10.4), STEP, HUNG).state).toBe('failed')
    const good = enter(d, HUNG, 11.1)
    expect(readingIn(good, STEP, HUNG).state).toBe('passed')
    // Measured anew with another current, the display has to be read anew as well.
    expect(readingIn(enter(good, 'amps', 9), STEP, HUNG).state).toBe('out-of-date')
  })

  it('where nothing is known to expect, only written words pass', () => {
    const d = addLoad(withShunts(), 'E1', null).build()
    expect(
      readingIn(enter(d, 'amps', null, { judged: 'good', remark: 'as its plate says' }), STEP, 'amps').state,
    ).toBe('passed')
    expect(readingIn(enter(d, 'amps', 4, { judged: 'bad', remark: 'hot' }), STEP, 'amps').state).toBe(
      'failed',
    )
    const refused = (e: TestEntry) => apply(d, { do: 'record', records: [e] })
    expect(refused(entry(d, 'amps', null, { judged: 'good' }))).toMatchObject({
      refused: true,
      code: 'no-words',
    })
    expect(refused(entry(d, 'amps', 4, { remark: 'fine' }))).toMatchObject({
      refused: true,
      code: 'no-judgement',
    })
    const known = entry(drawn, 'amps', 4, { judged: 'good', remark: 'fine' })
    expect(apply(drawn, { do: 'record', records: [known] })).toMatchObject({ code: 'judged-against-figures' })
  })
})

describe('when the design changes', () => {
  const passed = enter(enter(drawn, 'amps', 10), HUNG, 10)
  const changed = done(passed, { do: 'value', part: E1, field: 'currentA', value: 14 })

  it('an entry keeps what was expected, and is out of date', () => {
    const { state, entries, expected } = readingIn(changed, STEP, 'amps')
    expect(state).toBe('out-of-date')
    expect(entries[0]).toMatchObject({
      result: 'passed',
      outOfDate: true,
      entry: { expected: { least: 8.8, most: 11.2 } },
    })
    expect(expected).toMatchObject({ usual: 14 })
    expect(commissioningRecord(changed).counts.outOfDate).toBeGreaterThan(0)
    expect(textOf(changed)).toContain('Out of date, then expected: 8.8 to 11.2 A')
  })

  it('undone, it counts again', () => {
    const history = push(push(historyOf(drawn), passed, 'Reading'), changed, 'Current')
    expect(readingIn(undo(history).design, STEP, 'amps').state).toBe('passed')
    expect(undo(undo(history)).design.commissioning).toBeUndefined()
  })

  it('what failed stays failed until it is measured anew', () => {
    const failed = done(enter(drawn, 'amps', 14), { do: 'value', part: E1, field: 'currentA', value: 14 })
    expect(readingIn(failed, STEP, 'amps').state).toBe('failed')
  })

  it('another name is another thing', () => {
    const renamed = done(passed, { do: 'part', part: E1, set: { name: 'Heater' } })
    expect(readingIn(renamed, STEP, 'amps').state).toBe('out-of-date')
  })

  it('entries of a part that is gone stay in the record and on paper', () => {
    const gone = done(passed, { do: 'remove', parts: [E1], conductors: [] })
    expect(commissioningRecord(gone).gone.map((e) => e.entry.of)).toEqual(['E1 Load E1', 'E1 Load E1'])
    expect(textOf(gone)).toContain('Readings of tests no longer asked for')
  })

  it('another fuse has to be looked at anew', () => {
    const d = withShunts().part('fuse-blade', 'F1', { ratingA: 10 }).build()
    const F1 = partNamed(d, 'F1').id
    const looked = enter(d, 'so', true, {}, `visual/fuses/${F1}`)
    const other = done(looked, { do: 'value', part: F1, field: 'ratingA', value: 15 })
    expect(readingIn(looked, `visual/fuses/${F1}`, 'so').state).toBe('passed')
    expect(readingIn(other, `visual/fuses/${F1}`, 'so').state).toBe('out-of-date')
  })
})

describe('signatures', () => {
  const measured = enter(drawn, 'amps', 10)
  const sign = (d: Design, name = 'B. Stone'): Design =>
    done(d, {
      do: 'record',
      records: [newSigning(commissioningRecord(d), { id: `s${clock}`, name, remark: '', at: minute(59) })],
    })

  it('cover what stands there; what comes later is told apart', () => {
    const d = enter(sign(measured), 'volts', 13)
    const { signings } = commissioningRecord(d)
    expect(signings[0]).toMatchObject({ name: 'B. Stone', passed: 1, failed: 0, outOfDate: 0 })
    expect(readingIn(d, STEP, 'amps').entries[0]).toMatchObject({
      afterSigning: false,
      signed: { name: 'B. Stone' },
    })
    expect(readingIn(d, STEP, 'volts').entries[0]).toMatchObject({ afterSigning: true, signed: null })
    expect(textOf(d)).toContain('After the signature')
    expect(textOf(d)).toContain('Signed by B. Stone, 2026-03-04 10:59: 1 passed')
    expect(commissioningSummary(d)).toMatchObject({ unsigned: 1, signings: [{ name: 'B. Stone' }] })
  })

  it('nothing that was entered can be entered anew or signed before it is there', () => {
    const again = apply(measured, { do: 'record', records: [measured.commissioning![0]!] })
    expect(again).toMatchObject({ refused: true, code: 'recorded-already' })
    const empty = newSigning(commissioningRecord(drawn), { id: 's', name: 'B.', remark: '', at: minute(1) })
    expect(apply(drawn, { do: 'record', records: [empty] })).toMatchObject({ code: 'nothing-to-sign' })
    expect(apply(drawn, { do: 'record', records: [{ ...empty, covers: ['x'] }] })).toMatchObject({
      code: 'no-entry',
    })
    expect(
      apply(measured, { do: 'record', records: [{ ...empty, name: ' ', covers: ['x'] }] }),
    ).toMatchObject({ code: 'no-name' })
  })
})

test('a filled record can be printed blank', () => {
  const d = enter(drawn, 'amps', 10.07)
  const [filled, blank] = commissioningSections.map((section) =>
    section
      .sheets({ design: d } as PackContext)
      .flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])))
      .join(' '),
  )
  expect(filled).toContain('10.07 A')
  expect(blank).not.toContain('10.07 A')
  expect(blank).toContain('Load: E1 Load E1')
})

/** Lines as two devices may make them: some of both, some of one alone. */
const lines = fc
  .uniqueArray(fc.tuple(fc.nat(500), fc.nat(59), fc.double({ min: 0, max: 20, noNaN: true })), {
    selector: ([id]) => id,
    maxLength: 25,
  })
  .map((rows) =>
    rows.map(
      ([id, at, found]): TestRecord => ({ ...entry(drawn, 'amps', found + 0), id: `m${id}`, at: minute(at) }),
    ),
  )

test('two records join as sets: the same whichever is added to which, nothing lost, nothing twice', () => {
  const add = (d: Design, records: readonly TestRecord[]): Design => {
    const known = new Set(d.commissioning?.map((r) => r.id))
    return done(d, { do: 'record', records: records.filter((r) => !known.has(r.id)) })
  }
  fc.assert(
    fc.property(lines, fc.nat(25), fc.nat(25), (all, from, to) => {
      const [a, b] = [all.slice(0, Math.max(from, to)), all.slice(Math.min(from, to))]
      const ab = add(add(drawn, a), b)
      const ba = add(add(drawn, b), a)
      expect(ab.commissioning ?? []).toEqual(ba.commissioning ?? [])
      expect(new Set(ab.commissioning?.map((r) => r.id))).toEqual(new Set([...a, ...b].map((r) => r.id)))
      expect(add(ab, b).commissioning).toEqual(ab.commissioning)
    }),
    { seed: 20260304, numRuns: 100 },
  )
})

test('the file of another device brings its lines, signatures last', () => {
  const common = enter(drawn, 'amps', 10)
  const mine = enter(common, 'volts', 13)
  const measured = enter(common, HUNG, 10)
  const signing = newSigning(commissioningRecord(measured), {
    id: 'theirs',
    name: 'B. Stone',
    remark: '',
    at: minute(58),
  })
  const theirs = done(measured, { do: 'record', records: [signing] })
  const brought = bringFrom(mine, theirs)
  if ('refused' in brought) throw new Error(brought.why)
  expect(brought.readings).toBe(2)
  const both = done(mine, brought.edit)
  expect(readingIn(both, STEP, HUNG).entries[0]).toMatchObject({ signed: { name: 'B. Stone' } })
  // What the signer did not have before them is not signed.
  expect(readingIn(both, STEP, 'volts').entries[0]).toMatchObject({ signed: null, afterSigning: true })
})

test('what a reading is taken with stands behind its name where there is room, clear of it', () => {
  const texts = commissioningSheets(drawn).flatMap((s) => s.marks.filter((m) => m.is === 'text'))
  const name = texts.find((t) => t.text === 'Voltage at the load')!
  const means = texts.find((t) => t.text === 'Multimeter, DC volts' && t.at[1] === name.at[1])!
  expect(means.at[0]).toBeGreaterThan(name.at[0] + widthOf(name.text, name.height, 'bold'))
})

test('what was built otherwise is told on the record, whose figures are those of the drawing', () => {
  const thin = drawn.conductors.find((c) => c.size === '16mm2')!
  const stamp = { at: minute(30), by: 'tablet' }
  const built = done(drawn, builtEdit(drawn, thin, { what: 'size', value: '10mm2' }, stamp))
  expect(builtOtherwiseWords(drawn)).toBe('')
  expect(textOf(drawn)).not.toContain('Built otherwise')
  expect(textOf(built)).toContain(`Built otherwise than drawn: ${thin.number}.`)
})

describe('files', () => {
  it('are read back alike, with the same bytes', () => {
    const d = enter(enter(drawn, 'amps', 10), HUNG, 9)
    const written = writeDesign(d)
    const read = readDesign(written)
    expect(read.problems).toEqual([])
    expect(read.design).toEqual(d)
    expect(writeDesign(read.design!)).toBe(written)
  })

  it('a damaged line is told, and its step is not done', () => {
    const d = enter(enter(drawn, 'amps', 10), HUNG, 10)
    const raw = JSON.parse(writeDesign(d))
    raw.commissioning[0].found = 'ten'
    raw.commissioning[1].at = 'yesterday'
    raw.commissioning.push({ is: 'guess', id: 'x' })
    const { design, problems } = readDesign(JSON.stringify(raw))
    expect(problems.map((p) => p.path)).toEqual([
      'commissioning[0].found',
      'commissioning[1].at',
      'commissioning[2].is',
    ])
    expect(design!.commissioning).toEqual([])
    expect(readingIn(design!, STEP, 'amps').state).toBe('not-done')
  })
})

const textOf = (d: Design): string =>
  commissioningSheets(d)
    .flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])))
    .join(' ')

test('what is entered last counts, though the clock was set back in between', () => {
  const reading = 'amps'
  const read = (d: Design) => readingIn(d, STEP, reading)
  const add = (d: Design, found: number, at: string) => {
    const entered = { id: `back-${at}`, by: 'A. Rivers', at, remark: '', found }
    return done(d, { do: 'record', records: [newEntry(d, stepOf(d, STEP), read(d), entered)] })
  }
  const first = add(drawn, 10, '2026-03-04T10:00:00.000+10:00')
  expect(read(first).state).toBe('passed')
  const again = add(first, 99, '2026-03-04T08:00:00.000+10:00')
  expect(read(again).state).toBe('failed')
  expect(read(again).entries.at(-1)!.entry.at).toBe('2026-03-04T10:00:00.001+10:00')
  const elsewhere = add(again, 10, '2026-03-04T00:00:00.000Z')
  expect(read(elsewhere).state).toBe('passed')
  expect(read(elsewhere).entries.at(-1)!.entry.at).toBe('2026-03-04T00:00:00.002Z')
})
