import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { merge } from '../../../app/cli/merge'
import {
  apply,
  builtEdit,
  type Design,
  deviceEdit,
  differencesOf,
  type Edit,
  readDesign,
  recordOf,
  tickEdit,
  writeDesign,
} from '../../../engine'
import { conductorNumbered, design } from '../../build'

const folder = mkdtempSync(join(tmpdir(), 'merge-'))
const at = (name: string): string => join(folder, name)

function fileOf(name: string, d: Design, ...edits: readonly Edit[]): string {
  const done = edits.reduce((now, edit) => {
    const result = apply(now, edit)
    if (result.refused) throw new Error(result.why)
    return result.design
  }, d)
  writeFileSync(at(name), writeDesign(done))
  return at(name)
}

async function run(...args: string[]): Promise<{ status: number; printed: string; complained: string }> {
  const [printed, complained]: [string[], string[]] = [[], []]
  const out = { print: (t: string) => printed.push(t), complain: (t: string) => complained.push(t) }
  const status = await merge(args, out)
  return { status, printed: printed.join('\n'), complained: complained.join('\n') }
}

const d = design()
  .part('battery', 'G1')
  .part('load', 'E1', { currentA: 4 })
  .join('G1.+', 'E1.+', { size: '4mm2', lengthM: 3 })
  .join('E1.-', 'G1.-', { size: '4mm2', lengthM: 3 })
  .build()
const [w1, w2] = [conductorNumbered(d, 'W1'), conductorNumbered(d, 'W2')]
const on = (by: string, minute: number) => ({ at: `2026-03-04T09:${minute}:00.000Z`, by })

const tablet = fileOf(
  'tablet.json',
  d,
  deviceEdit(d, 'Bench tablet', on('d-1', 10)),
  tickEdit(d, w1, 'cut', true, on('d-1', 11)),
  builtEdit(d, w2, { what: 'size', value: '6mm2' }, on('d-1', 12)),
)
const phone = fileOf(
  'phone.json',
  d,
  deviceEdit(d, 'Phone', on('d-2', 10)),
  tickEdit(d, w2, 'cut', true, on('d-2', 11)),
  builtEdit(d, w2, { what: 'size', value: '2.5mm2' }, on('d-2', 13)),
)

describe('loomwright merge', () => {
  test('joins two records, either way round alike, and tells where both said otherwise', async () => {
    const { status, printed } = await run(tablet, phone, '--out', at('one.json'))
    expect(status).toBe(0)
    expect(printed).toContain('1 step newly done')
    expect(printed).toContain(
      'W2, size: 2.5 mm² (Phone) counts, as it is the latest; 6 mm² (Bench tablet) was recorded before it.',
    )
    await run(phone, tablet, '--out', at('other.json'))
    expect(readFileSync(at('one.json'), 'utf8')).toBe(readFileSync(at('other.json'), 'utf8'))
    const { design: merged, problems } = readDesign(readFileSync(at('one.json'), 'utf8'))
    expect(problems).toEqual([])
    expect([w1, w2].map((c) => recordOf(merged!, c.id)?.ticks.map((t) => t.step))).toEqual([['cut'], ['cut']])
    expect(differencesOf(merged!).map((x) => x.built)).toEqual(['2.5mm2'])
  })

  test('what is there already is said so', async () => {
    expect((await run(tablet, tablet, '--out', at('same.json'))).printed).toContain(
      'nothing that is not here already',
    )
    expect(readFileSync(at('same.json'), 'utf8')).toBe(readFileSync(tablet, 'utf8'))
  })

  test('the drawing of the first file stays, and that they differ is said', async () => {
    const longer = fileOf('longer.json', d, { do: 'conductor', conductors: ['c1'], set: { lengthM: 5 } })
    const { printed } = await run(longer, phone, '--out', at('drawn.json'))
    expect(printed).toContain('the drawing here stays')
    const { design: merged } = readDesign(readFileSync(at('drawn.json'), 'utf8'))
    expect(conductorNumbered(merged!, 'W1').lengthM).toBe(5)
  })

  test('files of two designs, damaged files and wrong words are refused, and nothing is written', async () => {
    const other = fileOf('another.json', { ...d, id: 'another' })
    expect(await run(tablet, other, '--out', at('no.json'))).toMatchObject({ status: 2 })
    writeFileSync(at('broken.json'), readFileSync(phone, 'utf8').replace('"cut"', '"bent"'))
    expect(await run(tablet, at('broken.json'), '--out', at('no.json'))).toMatchObject({ status: 1 })
    expect((await run(tablet, at('broken.json'), '--out', at('no.json'))).complained).toContain(
      'ticks[0].step',
    )
    for (const args of [
      [tablet, phone],
      [tablet, '--out', 'x'],
      [tablet, phone, '--fast', '--out', 'x'],
    ])
      expect((await run(...args)).status).toBe(2)
    expect(await run(tablet, phone, '--out', join(folder, 'nowhere', 'x.json'))).toMatchObject({ status: 2 })
    expect(() => readFileSync(at('no.json'))).toThrow()
  })
})
