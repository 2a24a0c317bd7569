import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Comparison, ITEM_LISTS, isUnchanged } from '../../../engine/calc/compare/changes'
import { compareDesigns } from '../../../engine/calc/compare/compare'
import { compareResults } from '../../../engine/calc/compare/results'
import { standingOf } from '../../../engine/calc/compare/standing'
import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import { removeEdit } from '../../../engine/edit/removal'
import { KINDS } from '../../../engine/kinds/all'
import { issuedDesign } from '../../../engine/kinds/issued'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import type { Row } from '../../../engine/model/fields'
import { withRevisionsOf } from '../../../engine/model/revision'
import { writeDesign } from '../../../engine/model/write'
import { analyse } from '../../../engine/rules/analyse'
import { allChangeRows, analysedState } from '../../../engine/sheets/compared/changelist'
import { changeRows } from '../../../engine/words/changerows'
import { sentence } from '../../../engine/words/findings'
import { design } from '../../build'
import { Random } from '../../reference/random'
import { randomDesign } from '../rules/randomdesign'

const done = (of: Design, ...edits: readonly Edit[]): Design => {
  const result = apply(of, { do: 'all', edits })
  if (result.refused) throw new Error(result.why)
  return result.design
}

const ISSUE = { do: 'issue', date: '2026-03-04', by: 'R. Hale', reason: 'For the build' } as const

const small = design({ systemV: 12, notes: 'Torque all.\nClean the bars.' })
  .part('battery', 'G1', { capacityAh: 100 }, { name: 'House battery' })
  .part('fuse-block', 'F1', {
    ways: [
      { ratingA: 10, label: 'Lamp' },
      { ratingA: 5, label: '' },
    ],
  })
  .part('lamp', 'E1', { currentA: 3 })
  .join('G1.+', 'F1.in', { size: '16mm2', lengthM: 1 })
  .join('F1.1', 'E1.+', { size: '1.5mm2', lengthM: 3, colour: 'RD' })
  .join('E1.-', 'G1.-', { size: '1.5mm2', lengthM: 3, returnOf: 'W2' })
  .build()

/** A random design whose values a file may hold. */
const random = (seed: number): Design =>
  readDesign(writeDesign(randomDesign(new Random(seed), 14, 'wild'))).design!

test('a design against itself, and against its file, shows nothing', () => {
  fc.assert(
    fc.property(fc.nat(), (seed) => {
      const one = random(seed)
      expect(isUnchanged(compareDesigns(one, one))).toBe(true)
      expect(isUnchanged(compareDesigns(one, readDesign(writeDesign(one)).design!))).toBe(true)
      expect(changeRows(one, one)).toEqual([])
    }),
    { numRuns: 40 },
  )
})

/** A random edit of a part or a conductor, with the difference that it makes, and no other. */
interface Known {
  readonly edit: Edit
  readonly expected: (c: Comparison) => void
}

function knownEdit(of: Design, choice: number, at: number): Known {
  const part = of.parts[at % of.parts.length]!
  const conductor = of.conductors[at % of.conductors.length]!
  switch (choice % 6) {
    case 0:
      return {
        edit: { do: 'part', part: part.id, set: { name: 'Another name' } },
        expected: ({ parts }) =>
          expect(parts.changed).toEqual([
            { id: part.id, fields: [{ path: ['name'], before: part.name, after: 'Another name' }] },
          ]),
      }
    case 1:
      return {
        edit: { do: 'move', to: [{ part: part.id, x: part.x + 2.5, y: part.y }] },
        expected: ({ parts }) => expect([parts.moved, parts.changed]).toEqual([[part.id], []]),
      }
    case 2: {
      const gone = removeEdit(of, { parts: [], conductors: [conductor.id] })
      return {
        edit: gone,
        expected: ({ conductors }) =>
          expect([...conductors.removed].sort()).toEqual([...new Set(gone.conductors)].sort()),
      }
    }
    case 3:
      return {
        edit: { do: 'conductor', conductors: [conductor.id], set: { lengthM: 7.25, remark: 'led anew' } },
        expected: ({ conductors }) =>
          expect(conductors.changed.map(({ id, fields }) => [id, fields.map((f) => f.path[0])])).toEqual([
            [conductor.id, ['lengthM', 'remark']],
          ]),
      }
    case 4:
      return {
        edit: { do: 'settings', set: { ambientC: of.settings.ambientC + 1 } },
        expected: ({ settings }) => expect(settings.map((f) => f.path)).toEqual([['ambientC']]),
      }
    default:
      return {
        edit: { do: 'text', text: { id: 't77', text: 'words', view: 'all', x: 0, y: 0 } },
        expected: ({ texts }) => expect(texts.added).toEqual(['t77']),
      }
  }
}

test('one random edit shows as exactly that, and backwards as its reverse', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(5), fc.nat(99), (seed, choice, at) => {
      const before = random(seed)
      const { edit, expected } = knownEdit(before, choice, at)
      const after = done(before, edit)
      const there = compareDesigns(before, after)
      expected(there)
      const counts = (c: Comparison) =>
        ITEM_LISTS.reduce((n, k) => n + c[k].added.length + c[k].removed.length + c[k].changed.length, 0)
      const wanted =
        edit.do === 'remove'
          ? new Set(edit.conductors).size
          : edit.do === 'move' || edit.do === 'settings'
            ? 0
            : 1
      expect(counts(there)).toBe(wanted)
      const back = compareDesigns(after, before)
      for (const key of ITEM_LISTS) {
        expect([...back[key].added].sort()).toEqual([...there[key].removed].sort())
        expect([...back[key].removed].sort()).toEqual([...there[key].added].sort())
        expect(back[key].changed.map((c) => c.id)).toEqual(there[key].changed.map((c) => c.id))
      }
    }),
    { numRuns: 150 },
  )
})

test('what is issued stays as it was, byte by byte, whatever is done afterwards', () => {
  fc.assert(
    fc.property(
      fc.nat(),
      fc.array(fc.tuple(fc.nat(5), fc.nat(99)), { minLength: 1, maxLength: 12 }),
      (seed, steps) => {
        let now = done(random(seed), { ...ISSUE, number: 'A' })
        const issued = JSON.stringify(now.revisions)
        const state = writeDesign(issuedDesign(now, 'A')!)
        expect(standingOf(now).is).toBe('issued')
        for (const [choice, at] of steps) {
          if (now.conductors.length === 0) break
          now = done(now, knownEdit(now, choice, at).edit)
          expect(JSON.stringify(now.revisions)).toBe(issued)
        }
        const read = readDesign(writeDesign(now)).design!
        expect(writeDesign(issuedDesign(read, 'A')!)).toBe(state)
        const back = done(read, { do: 'take back', number: 'A' })
        expect(standingOf(back).is).toBe('issued')
        expect(isUnchanged(compareDesigns(issuedDesign(now, 'A')!, back))).toBe(true)
      },
    ),
    { numRuns: 40 },
  )
})

describe('standing', () => {
  test('never issued, issued, changed by the first edit, issued again when it is undone by hand', () => {
    expect(standingOf(small).is).toBe('never issued')
    const a = done(small, { ...ISSUE, number: 'A' })
    expect(standingOf(a)).toMatchObject({ is: 'issued', revision: { number: 'A' } })
    const longer = done(a, { do: 'conductor', conductors: ['c1'], set: { lengthM: 2 } })
    expect(standingOf(longer)).toMatchObject({ is: 'changed', since: { number: 'A' }, damaged: false })
    const again = done(longer, { do: 'conductor', conductors: ['c1'], set: { lengthM: 1 } })
    expect(standingOf(again).is).toBe('issued')
    const b = done(longer, { ...ISSUE, number: 'B' })
    expect(standingOf(done(b, { do: 'take back', number: 'A' }))).toMatchObject({
      is: 'changed',
      since: { number: 'B' },
    })
  })

  test('what the bench and the commissioning record does not count; a part that has moved does', () => {
    const a = done(small, { ...ISSUE, number: 'A' })
    const worked = { ...a, bench: { conductors: [] }, commissioning: { lines: [] } } as unknown as Design
    expect(standingOf(worked).is).toBe('issued')
    expect(standingOf(done(a, { do: 'settings', set: { contact: '12 Mill Lane' } })).is).toBe('issued')
    expect(standingOf(done(a, { do: 'move', to: [{ part: 'p3', x: 500, y: 0 }] })).is).toBe('changed')
  })

  test('of a damaged revision is changed, and says that it is damaged', () => {
    const a = done(small, { ...ISSUE, number: 'A' })
    const damaged = { ...a, revisions: [{ ...a.revisions![0]!, digest: '0'.repeat(64) }] }
    expect(standingOf(damaged)).toMatchObject({ is: 'changed', damaged: true })
  })
})

describe('refused', () => {
  const a = done(small, { ...ISSUE, number: 'A' })
  const code = (of: Design, edit: Edit) => {
    const result = apply(of, edit)
    return result.refused ? result.code : 'done'
  }

  test.each([
    ['a number twice', { ...ISSUE, number: 'a' }, 'issued-already'],
    ['no number', { ...ISSUE, number: ' ' }, 'no-number'],
    ['no name', { ...ISSUE, number: 'B', by: '' }, 'no-name'],
    ['no reason', { ...ISSUE, number: 'B', reason: ' ' }, 'no-reason'],
    ['a day that is none', { ...ISSUE, number: 'B', date: '2026-02-30' }, 'date'],
    ['a day before the last one', { ...ISSUE, number: 'B', date: '2026-03-03' }, 'earlier-date'],
    ['a revision that is not there', { do: 'take back', number: 'Z' }, 'not-issued'],
    ['a number written by hand', { do: 'settings', set: { revision: 'B' } }, 'issued'],
    ['a date written by hand', { do: 'settings', set: { date: '2027-01-01' } }, 'issued'],
  ] as const)('%s', (_, edit, expected) => {
    expect(code(a, edit)).toBe(expected)
  })

  test('not the same settings once more', () => {
    expect(code(a, { do: 'settings', set: { revision: 'A', ambientC: 41 } })).toBe('done')
  })
})

test('facts are told in the words and units of the card', () => {
  const after = done(
    small,
    {
      do: 'value',
      part: 'p2',
      field: 'ways',
      value: [
        { ratingA: 15, label: 'Lamps' },
        { ratingA: 5, label: '' },
        { ratingA: 3, label: 'Radio' },
      ].map((w, i) => ({ ...(small.parts[1]!.values.ways as readonly Row[])[i], ...w })),
    },
    { do: 'part', part: 'p1', set: { location: 'under bench' } },
    {
      do: 'conductor',
      conductors: ['c2'],
      set: { size: '2.5mm2', lengthM: 3.5, colour: 'BU', locked: true },
    },
    { do: 'settings', set: { systemV: 24, notes: 'Torque all.\nTest the pump.' } },
  )
  const said = changeRows(small, after).map(({ name, lines }) => [name, ...lines])
  expect(said).toEqual([
    ['G1 House battery', 'Location: not set → “under bench”'],
    [
      'F1',
      expect.stringMatching(/^Way 1: .*Label: “Lamp” → “Lamps”/),
      expect.stringMatching(/^Way 3: added, .*3 A/),
    ],
    [
      'W2',
      'Size: 1.5 mm² → 2.5 mm²',
      'Length: 3 m → 3.5 m',
      'Colour: RD red → BU blue',
      'Size locked: no → yes',
    ],
    ['Design', expect.stringMatching(/^System voltage: 12 V → 24 V$/)],
    ['Design', 'Drawing note removed: “Clean the bars.”'],
    ['Design', 'Drawing note added: “Test the pump.”'],
  ])
})

test('a part of another kind under an old id is another part', () => {
  const other = { ...small, parts: small.parts.map((p) => (p.id === 'p3' ? { ...p, kind: 'fan' } : p)) }
  expect(compareDesigns(small, other).parts).toMatchObject({ added: ['p3'], removed: ['p3'], changed: [] })
})

test('results: a current that changed, findings that came and went', () => {
  const state = (of: Design) => ({ design: of, ...analyse(of) })
  const lamp = small.parts[2]!
  const after = done(
    small,
    { do: 'value', part: lamp.id, field: 'currentA', value: 6 },
    { do: 'conductor', conductors: ['c2'], set: { lengthM: null } },
  )
  const { currents, newFindings, goneFindings } = compareResults(state(small), state(after))
  expect(currents.map((c) => c.conductor)).toContain('c2')
  const [was, is] = [analyse(small).findings, analyse(after).findings].map(
    (f) => new Set(f.map((x) => x.key)),
  )
  expect(newFindings.map((f) => f.key)).toEqual([...is!].filter((k) => !was!.has(k)))
  expect(goneFindings.map((f) => f.key)).toEqual([...was!].filter((k) => !is!.has(k)))
  expect(newFindings.length).toBeGreaterThan(0)
})

test('every field of every kind has words', () => {
  for (const kind of KINDS) {
    const part = { ...small.parts[0]!, kind: kind.key, values: {} }
    const before = { ...small, parts: [part], conductors: [] }
    for (const [key, field] of Object.entries(kind.fields)) {
      if (field.role === 'result') continue
      const value =
        field.type === 'number'
          ? 7.125
          : field.type === 'flag'
            ? !field.initial
            : field.type === 'rows'
              ? []
              : field.type === 'choice'
                ? Object.keys(field.options).find((k) => k !== field.initial)
                : 'other words'
      if (value === undefined) continue
      const after = { ...before, parts: [{ ...part, values: { [key]: value } }] } as Design
      const lines = changeRows(before, after).flatMap((r) => r.lines)
      expect(lines.length, `${kind.key} ${key}`).toBeGreaterThan(0)
      expect(lines.join(' '), `${kind.key} ${key}`).not.toMatch(/undefined|\[object|something else/)
    }
  }
})

test('a finding that was accepted goes by its title', () => {
  const state = analysedState(small)
  const finding = state.findings[0]!
  const after = done(small, {
    do: 'accept',
    accepted: { key: finding.key, level: finding.level, reason: 'Seen on site' },
  })
  const row = allChangeRows(state, analysedState(after)).find((r) => r.group === 'accepted')
  expect(row).toMatchObject({
    what: 'added',
    name: sentence(finding, small).title,
    lines: ['“Seen on site”'],
  })
})

test('going back to a state from before an issue loses no revision', () => {
  const a = done(small, { ...ISSUE, number: 'A' })
  const back = withRevisionsOf(small, a)
  expect(back.revisions).toBe(a.revisions)
  expect(standingOf(back)).toMatchObject({ is: 'issued', revision: { number: 'A' } })
  expect(withRevisionsOf(a, small)).toBe(a)
})
