import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { KINDS } from '../../../engine/kinds/all'
import { terminalsOf } from '../../../engine/kinds/place'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Conductor, Design, Part, TerminalRef } from '../../../engine/model/design'
import { designFileSchema } from '../../../engine/model/jsonschema'
import { initialValues } from '../../../engine/model/values'
import { writeDesign } from '../../../engine/model/write'
import { SIZES } from '../../../engine/tables/sizes'
import { design } from '../../build'

const mm = fc.integer({ min: -8000, max: 8000 }).map((n) => n * 2.5 + 0)
const place = fc.record({ x: mm, y: mm })
const inViews = <T>(of: fc.Arbitrary<T>) => fc.record({ 'both-poles': of, data: of }, { requiredKeys: [] })
const name = fc.string({ minLength: 1, maxLength: 40, unit: 'grapheme' }).filter((s) => s.length <= 40)
const text = fc.string({ maxLength: 60, unit: 'binary' }).filter((s) => s.length <= 200)

const part = (i: number): fc.Arbitrary<Part> =>
  fc
    .record(
      {
        id: fc.constant(`p${i}`),
        kind: fc.constantFrom(...KINDS.map((k) => k.key), 'unknown-kind'),
        designation: fc.constant(`F${i}`),
        name: text,
        location: text,
        x: mm,
        y: mm,
        turn: fc.constantFrom(0 as const, 90 as const, 180 as const, 270 as const),
        mirrored: fc.boolean(),
        values: fc.constant({}),
        at: inViews(place),
      },
      {
        requiredKeys: [
          'id',
          'kind',
          'designation',
          'name',
          'location',
          'x',
          'y',
          'turn',
          'mirrored',
          'values',
        ],
      },
    )
    .map((p) => {
      const kind = KINDS.find((k) => k.key === p.kind)
      return {
        ...p,
        values: kind ? initialValues(kind.fields) : { anything: [{ goes: true }], z: 1, a: null },
      }
    })

const terminal = (parts: readonly Part[], p: number, t: number): TerminalRef => {
  const joinable = parts.filter((at) => at.kind === 'unknown-kind' || terminalsOf(at).length > 0)
  const at = joinable[p % joinable.length]!
  const terminals = terminalsOf(at)
  return { part: at.id, terminal: terminals[t % Math.max(1, terminals.length)]?.key ?? 'any' }
}

const positive = (max: number) => fc.double({ min: 1e-9, max, noNaN: true })

const conductor = (i: number, parts: readonly Part[]): fc.Arbitrary<Conductor> =>
  fc.record({
    id: fc.constant(`c${i}`),
    number: fc.constant(`W${i}`),
    from: fc.tuple(fc.nat(), fc.nat()).map(([p, t]) => terminal(parts, p, t)),
    to: fc.tuple(fc.nat(), fc.nat()).map(([p, t]) => terminal(parts, p, t)),
    returnOf: i > 1 ? fc.constantFrom(null, 'c1') : fc.constant(null),
    size: fc.option(fc.constantFrom(...SIZES.map((s) => s.key))),
    lengthM: fc.option(positive(1000)),
    colour: fc.constantFrom('RD', 'BK', 'GNYE', 'BKRD'),
    insulationC: fc.option(fc.integer({ min: 40, max: 300 })),
    sheathed: fc.boolean(),
    engineSpace: fc.boolean(),
    bunched: fc.integer({ min: 1, max: 40 }),
    designCurrent: fc.option(fc.record({ amps: positive(1e5), reason: name })),
    remark: text,
    path: fc.array(fc.record({ x: mm, y: mm }), { maxLength: 4 }),
  })

const anyDesign: fc.Arbitrary<Design> = fc
  .integer({ min: 1, max: 8 })
  .chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => part(i + 1))))
  .map((parts) => [{ ...parts[0]!, kind: 'unknown-kind', values: { later: true } }, ...parts.slice(1)])
  .chain((parts) =>
    fc.record<Design, 'id' | 'settings' | 'parts' | 'conductors'>(
      {
        id: name,
        ownRules: fc.constant({ title: 'Own', basedOn: 'us-33cfr183', devicePercent: 90 }),
        settings: fc.record({
          name: text,
          customer: text,
          vehicle: text,
          designer: text,
          revision: fc.constant('B'),
          date: fc.constant('2026-03-04'),
          systemV: fc.constantFrom(12 as const, 24 as const, 48 as const),
          ruleSet: name,
          ambientC: fc.integer({ min: -60, max: 100 }),
          coldestC: fc.integer({ min: -60, max: 100 }),
          notes: text,
        }),
        parts: fc.constant(parts),
        conductors: fc
          .nat(8)
          .chain((m) => fc.tuple(...Array.from({ length: m }, (_, i) => conductor(i + 1, parts)))),
      },
      { requiredKeys: ['id', 'settings', 'parts', 'conductors'] },
    ),
  )

test('what is written is read back alike, and written again is the same bytes', () => {
  fc.assert(
    fc.property(anyDesign, (d) => {
      const written = writeDesign(d)
      const read = readDesign(written)
      expect(read.problems).toEqual([])
      expect(read.design).toEqual(d)
      expect(writeDesign(read.design!)).toBe(written)
    }),
    { seed: 20260304, numRuns: 300 },
  )
})

describe('bytes', () => {
  const d = design().part('battery', 'G1').part('load', 'E1').join('G1.+', 'E1.+').build()

  test('do not depend on the order in which keys were set', () => {
    const reversed = <T extends object>(record: T): T =>
      Object.fromEntries(Object.entries(record).reverse()) as T
    const turned: Design = reversed({
      ...d,
      settings: reversed(d.settings),
      parts: d.parts.map((p) => reversed({ ...p, values: reversed(p.values) })),
      conductors: d.conductors.map((c) => reversed({ ...c, from: reversed(c.from) })),
    })
    expect(writeDesign(turned)).toBe(writeDesign(d))
  })

  test('are JSON with two spaces and a last line end', () => {
    const written = writeDesign(d)
    expect(written.startsWith('{\n  "loomwright": 1,\n  "id": "test",\n  "settings": {\n    "name"')).toBe(
      true,
    )
    expect(written.endsWith('}\n')).toBe(true)
  })
})

// JSON Schema 2020-12 generated from the validator; `npx vitest run -u` writes it anew when the format grows.
test('the published schema is that of the validator', async () => {
  await expect(`${JSON.stringify(designFileSchema(), null, 2)}\n`).toMatchFileSnapshot(
    '../../../public/design-file.schema.json',
  )
  const schema = JSON.parse(
    readFileSync(new URL('../../../public/design-file.schema.json', import.meta.url), 'utf8'),
  )
  expect(schema.required).toEqual(['loomwright', 'id', 'settings', 'parts', 'conductors'])
  expect(schema.properties.conductors.items.required).toEqual(['id', 'number', 'from', 'to'])
  expect(schema.properties.parts.items.properties.x).toMatchObject({
    minimum: -20000,
    maximum: 20000,
    default: 0,
  })
})
