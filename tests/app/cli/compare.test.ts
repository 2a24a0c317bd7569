import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { compare } from '../../../app/cli/compare'
import { apply, type Design, type Edit, readDesign, writeDesign } from '../../../engine'

const folder = mkdtempSync(join(tmpdir(), 'loomwright-compare-'))
const DEMO = new URL('../../../public/demos/camping-trailer.json', import.meta.url).pathname
const [MORE, FORGED] = [join(folder, 'more.json'), join(folder, 'forged.json')]

async function run(...args: string[]) {
  const printed: string[] = []
  const complained: string[] = []
  const status = await compare(args, { print: (t) => printed.push(t), complain: (t) => complained.push(t) })
  return { status, out: printed.join('\n'), complaints: complained.join('\n') }
}

const done = (of: Design, ...edits: readonly Edit[]): Design => {
  const result = apply(of, { do: 'all', edits })
  if (result.refused) throw new Error(result.why)
  return result.design
}

beforeAll(() => {
  const demo = readDesign(readFileSync(DEMO, 'utf8')).design!
  const issue = { do: 'issue', by: 'R. Hale', reason: 'For the build' } as const
  const pump = demo.parts.find((p) => p.designation === 'M1')!
  const design = done(
    demo,
    { ...issue, number: 'A', date: '2026-03-04' },
    { do: 'part', part: pump.id, set: { name: 'Shower pump' } },
    { ...issue, number: 'B', date: '2026-03-20' },
    { do: 'part', part: pump.id, set: { location: 'rear' } },
  )
  const text = writeDesign(design)
  writeFileSync(MORE, text)
  writeFileSync(FORGED, text.replace('"reason": "For the build"', '"reason": "Approved"'))
})

describe('compare', () => {
  test('a file against itself: nothing differs', async () => {
    const { status, out } = await run(DEMO, DEMO)
    expect(status).toBe(0)
    expect(out).toContain('Nothing differs.')
  })

  test('two files', async () => {
    const { status, out } = await run(DEMO, MORE)
    expect(status).toBe(6)
    expect(out).toContain('Name: “Water pump” → “Shower pump”')
    expect(out).toContain('Before: Camping trailer, ten loads, draft A, Not issued')
  })

  test('two revisions of one file, and one against the present state', async () => {
    const { out } = await run(MORE, '--from', 'A', '--to', 'B')
    expect(out).toContain('Shower pump')
    expect(out).not.toContain('rear')
    const now = await run(MORE, '--from', 'B')
    expect(now.status).toBe(6)
    expect(now.out).toContain('Location: “draw bar” → “rear”')
    expect(now.out).not.toContain('Water pump')
  })

  test('as JSON, with facts and words', async () => {
    const { out } = await run(MORE, '--from', 'A', '--to', 'B', '--json')
    const told = JSON.parse(out)
    expect(told.after).toMatchObject({ revision: 'B', status: 'Issued' })
    expect(told.comparison.parts.changed[0].fields).toEqual([
      { path: ['name'], before: 'Water pump', after: 'Shower pump' },
    ])
    expect(told.changes[0].lines).toEqual(['Name: “Water pump” → “Shower pump”'])
  })

  test.each([
    [[]],
    [['one.json']],
    [['a.json', 'b.json', 'c.json']],
    [['a.json', '--to', 'B']],
    [['a.json', '--from']],
    [['a.json', 'b.json', '--loud']],
  ])('given wrongly: %j', async (args) => {
    expect(await run(...args)).toMatchObject({ status: 2, complaints: expect.stringContaining('Usage') })
  })

  test('a revision that is not there is told, with those that are', async () => {
    const { status, complaints } = await run(MORE, '--from', 'Z')
    expect([status, complaints]).toEqual([1, 'There is no revision Z. Issued: A, B.'])
  })

  test('a revision that was changed by hand is not used', async () => {
    const { status, complaints } = await run(FORGED, '--from', 'A')
    expect(status).toBe(1)
    expect(complaints).toContain('What is kept of revision A is not what was issued')
  })
})
