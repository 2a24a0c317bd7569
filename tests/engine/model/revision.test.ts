import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { issuedDesign } from '../../../engine/kinds/issued'
import { readDesign } from '../../../engine/kinds/readdesign'
import { sha256 } from '../../../engine/math/sha256'
import type { Design } from '../../../engine/model/design'
import { packed, unpacked } from '../../../engine/model/freeze'
import { nextRevision } from '../../../engine/model/revision'
import { writeDesign } from '../../../engine/model/write'
import { design } from '../../build'

const demo = (name: string): Design =>
  readDesign(readFileSync(new URL(`../../../public/demos/${name}.json`, import.meta.url), 'utf8')).design!

const issue = (of: Design, number: string, date = '2026-03-04'): Design => {
  const result = apply(of, { do: 'issue', number, date, by: 'R. Hale', reason: 'For the workshop' })
  if (result.refused) throw new Error(result.why)
  return result.design
}

describe('digest', () => {
  // FIPS 180-4, examples of NIST: "abc" and the 448-bit message.
  test('of the published messages', () => {
    const bytes = (text: string) => new TextEncoder().encode(text)
    expect(sha256(bytes('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
    expect(sha256(bytes('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    )
  })

  test('of any bytes, as another library gives it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(sha256(bytes)).toBe(createHash('sha256').update(bytes).digest('hex'))
      }),
    )
  })
})

describe('packing', () => {
  test('gives any text back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 3000 }), (text) => {
        expect(unpacked(packed(text))).toBe(text)
      }),
    )
  })

  test('takes a tenth of the largest demo', () => {
    const text = writeDesign(demo('veterinary-van'))
    expect(packed(text).length).toBeLessThan(text.length / 8)
  })

  test('refuses what is no packed text, and what grows beyond all bounds', () => {
    expect(['', 'AAAA', 'not base 64!', packed('a text').slice(0, 6)].map(unpacked)).toEqual(
      Array(4).fill(null),
    )
    expect(unpacked(packed('0'.repeat(70_000_000)))).toBeNull()
  })
})

describe('an issued revision', () => {
  const van = demo('veterinary-van')
  const a = issue(van, 'A')

  test('gives the design back as it was, through the file too', () => {
    const read = readDesign(writeDesign(a))
    expect(read).toEqual({ design: a, problems: [] })
    const { revisions, ...state } = issuedDesign(read.design!, 'A')!
    const { revisions: _own, ...now } = a
    expect(state).toEqual(now)
    expect(revisions).toEqual(a.revisions)
    expect(writeDesign(read.design!)).toBe(writeDesign(a))
  })

  test('holds no revision inside it: the file grows by about the packed design alone', () => {
    const b = issue(a, 'B', '2026-03-05')
    const grown = writeDesign(b).length - writeDesign(a).length
    expect(grown).toBeLessThan(writeDesign(van).length / 8)
    expect(issuedDesign(b, 'A')).toEqual(issuedDesign(a, 'A'))
  })

  test.each(['number', 'date', 'by', 'reason', 'digest', 'frozen'] as const)(
    'whose %s was changed by hand is told, kept, and not used',
    (key) => {
      const file = JSON.parse(writeDesign(a))
      const old: string = file.revisions[0][key]
      file.revisions[0][key] = key === 'digest' ? old.replace(/./, (c) => (c === '0' ? '1' : '0')) : `${old}X`
      if (key === 'frozen') file.revisions[0].frozen = packed(writeDesign(van).replace('Fridge', 'Freezer'))
      const read = readDesign(JSON.stringify(file))
      expect(read.problems.map((p) => p.path)).toEqual(['revisions[0].frozen'])
      expect(read.design!.revisions).toHaveLength(1)
      const number = read.design!.revisions![0]!.number
      expect(issuedDesign(read.design!, number)).toBeNull()
      expect(apply(read.design!, { do: 'take back', number })).toMatchObject({
        refused: true,
        code: 'damaged',
      })
    },
  )

  test('leaves photographs with the design that goes on', () => {
    const bench = { conductors: [{ conductor: 'c1', ticks: [], photos: [{ photo: 'x', jpeg: 'AAAA' }] }] }
    const worked = issue({ ...van, bench } as unknown as Design, 'A')
    expect(JSON.stringify(worked)).toContain('photos')
    const { frozen } = worked.revisions![0]!
    expect(unpacked(frozen)).not.toContain('photos')
    expect(unpacked(frozen)).toContain('"conductor": "c1"')
  })
})

test('the next revision is called as the trade counts', () => {
  const named = (...numbers: string[]) =>
    nextRevision({
      ...design({ revision: '' }).build(),
      revisions: numbers.map((number) => ({ number, date: '', by: '', reason: '', digest: '', frozen: '' })),
    })
  expect([named(), named('A'), named('H'), named('Z'), named('3'), named('P09')]).toEqual([
    'A',
    'B',
    'J',
    'AA',
    '4',
    'P10',
  ])
})
