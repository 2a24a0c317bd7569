import { readFileSync } from 'node:fs'
import { beforeAll, describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import { removeEdit } from '../../../engine/edit/removal'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import type { Mark } from '../../../engine/model/marks'
import { analyse } from '../../../engine/rules/analyse'
import { changeSections } from '../../../engine/sheets/compared/changes.section'
import { CLOUD, cloudMarks, revisionTriangle, TRIANGLE } from '../../../engine/sheets/compared/cloud'
import { sceneMarks } from '../../../engine/sheets/compared/scenemarks'
import { joinedAreas, touches } from '../../../engine/sheets/compared/spots'
import { sceneOf } from '../../../engine/sheets/makescene'
import { PACK_SECTIONS } from '../../../engine/sheets/packs/sections'
import { revisionRows } from '../../../engine/sheets/revisions'
import { schematicSheets } from '../../../engine/sheets/schematic'
import type { Sheet } from '../../../engine/sheets/sheet'
import { standingWords } from '../../../engine/words/standing'
import { conductorNumbered, partNamed } from '../../build'

const done = (of: Design, ...edits: readonly Edit[]): Design => {
  const result = apply(of, { do: 'all', edits })
  if (result.refused) throw new Error(result.why)
  return result.design
}

const issued = (of: Design, number: string, date: string): Design =>
  done(of, { do: 'issue', number, date, by: 'R. Hale', reason: `Reason of ${number}` })

const trailer = readDesign(
  readFileSync(new URL('../../../public/demos/camping-trailer.json', import.meta.url), 'utf8'),
).design!
const a = issued(trailer, 'A', '2026-03-04')
const changed = done(
  a,
  { do: 'part', part: partNamed(a, 'M1').id, set: { name: 'Shower pump' } },
  { do: 'conductor', conductors: [conductorNumbered(a, 'W20').id], set: { size: '4mm2' } },
  removeEdit(a, { parts: [partNamed(a, 'E3').id], conductors: [] }),
  { do: 'move', to: [{ part: partNamed(a, 'G2').id, x: 20, y: 20 }] },
)
const b = issued(changed, 'B', '2026-03-20')

const textsOf = (marks: readonly Mark[]): string[] => marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))
const allTexts = (sheets: readonly Sheet[]): string =>
  sheets.map((s) => textsOf(s.marks).join(' | ')).join('\n')

describe('a cloud', () => {
  const area = { x: 30, y: 40, w: 50, h: 22 }
  const arcs = cloudMarks(area).flatMap((m) => (m.is === 'arc' ? [m] : []))
  const ends = ({ at, r, from, to }: (typeof arcs)[number]) =>
    [from, to].map((degrees) => {
      const turn = (degrees * Math.PI) / 180
      return [at[0] + r * Math.cos(turn), at[1] + r * Math.sin(turn)] as const
    })

  test('is a closed chain of scallops: each begins where the one before ends', () => {
    expect(arcs.length).toBeGreaterThan(20)
    arcs.forEach((arc, i) => {
      const [, end] = ends(arc)
      const [next] = ends(arcs[(i + 1) % arcs.length]!)
      expect(end![0]).toBeCloseTo(next![0], 6)
      expect(end![1]).toBeCloseTo(next![1], 6)
    })
  })

  test('stands round its area, and bulges outwards by what it is said to', () => {
    for (const arc of arcs) {
      const turn = ((arc.from + arc.to) / 2) * (Math.PI / 180)
      const [x, y] = [arc.at[0] + arc.r * Math.cos(turn), arc.at[1] + arc.r * Math.sin(turn)]
      const out = Math.max(area.x - x, x - area.x - area.w, area.y - y, y - area.y - area.h)
      expect(out).toBeCloseTo(CLOUD.clear + CLOUD.bulge, 6)
    }
  })

  test('has the letter of its revision inside its triangle', () => {
    for (const letter of ['A', 'B+', '12', 'AA']) {
      const [triangle, words] = revisionTriangle(10, 20, letter)
      expect(triangle).toMatchObject({ is: 'line', closed: true })
      expect(words).toMatchObject({ is: 'text', text: letter, at: [10 + TRIANGLE.w / 2, expect.any(Number)] })
    }
  })
})

test('areas that touch are one; those left over keep their distance', () => {
  const areas = [0, 1, 2, 3, 4, 5, 6, 7].map((i) => ({ x: (i * 37) % 90, y: (i * 53) % 70, w: 12, h: 9 }))
  const joined = joinedAreas(areas, 4)
  for (const one of joined)
    for (const other of joined) if (one !== other) expect(touches(one, other, 4)).toBe(false)
  for (const area of areas)
    expect(
      joined.some(
        (j) => j.x <= area.x && j.y <= area.y && j.x + j.w >= area.x + area.w && j.y + j.h >= area.y + area.h,
      ),
    ).toBe(true)
})

describe('on paper', () => {
  const sheetsOf = (design: Design, clouds: boolean): Sheet[] => {
    const { answers, findings } = analyse(design)
    return schematicSheets(design, answers, findings, { paper: 'A3', clouds })
  }
  const cloudsIn = (sheets: readonly Sheet[]): number =>
    sheets.flatMap((s) => s.marks).filter((m) => m.is === 'arc' && m.ink === 'accent').length
  let plain: Sheet[]
  let clouded: Sheet[]
  beforeAll(() => {
    plain = sheetsOf(b, false)
    clouded = sheetsOf(b, true)
  })

  test('clouds are drawn when asked for, with what they mean', () => {
    expect(cloudsIn(plain)).toBe(0)
    expect(cloudsIn(clouded)).toBeGreaterThan(20)
    expect(allTexts(clouded)).toContain('Clouds: changed in revision B, against revision A')
    expect(cloudsIn(sheetsOf(a, true))).toBe(0)
  })

  test('what was not issued is marked as that', () => {
    const sheets = sheetsOf(changed, true)
    expect(allTexts(sheets)).toContain('Clouds: changed since revision A, not issued')
    expect(allTexts(sheets)).toContain('A+')
  })

  test('every title block says whether it was issued', () => {
    const states = [
      [trailer, 'Not issued'],
      [a, 'Issued'],
      [changed, 'Changed since A, not issued'],
      [b, 'Issued'],
    ] as const
    for (const [design, status] of states) {
      expect(standingWords(design).status).toBe(status)
      for (const sheet of design === b ? clouded : sheetsOf(design, false))
        expect(textsOf(sheet.marks)).toContain(status)
    }
    for (const sheet of sheetsOf(changed, false)) expect(textsOf(sheet.marks)).toContain('after A')
  })

  test('the revision table holds the issued ones, and what is not issued last', () => {
    expect(revisionRows(b).map((r) => [r.number, r.date, r.by, r.reason])).toEqual([
      ['A', '2026-03-04', 'R. Hale', 'Reason of A'],
      ['B', '2026-03-20', 'R. Hale', 'Reason of B'],
    ])
    expect(revisionRows(changed).at(-1)).toMatchObject({
      number: 'after A',
      reason: 'Changed since A, not issued',
    })
    expect(revisionRows(trailer)[0]!.reason).toBe('Not issued')
  })
})

describe('sections of a pack', () => {
  const made = (key: string, design: Design): readonly Sheet[] =>
    changeSections
      .find((s) => s.key === key)!
      .sheets({ design, ...analyse(design), paper: 'A3', view: 'single-line' })

  test('are all offered', () => {
    for (const section of changeSections) expect(PACK_SECTIONS).toContain(section)
  })

  test('list every change in words, moved parts apart', () => {
    const text = allTexts(made('changes', b))
    for (const words of [
      'Shower pump',
      'W20',
      '4 mm²',
      'E3 Annexe light',
      'Drawn elsewhere, nothing else changed',
      'G2 Roof array',
    ])
      expect(text).toContain(words)
  })

  test('have nothing to say where nothing is known to have changed', () => {
    for (const design of [trailer, a])
      for (const key of ['changes', 'clouds', 'as-built']) expect(made(key, design)).toEqual([])
  })

  test('tell what was built otherwise than drawn', () => {
    const id = conductorNumbered(b, 'W20').id
    const built = {
      ...b,
      bench: {
        conductors: [
          {
            conductor: id,
            ticks: [],
            built: [{ what: 'size', value: '6mm2', at: '2026-03-21T08:00:00.000Z', by: 'd1', number: 'W20' }],
          },
        ],
      },
    } as unknown as Design
    expect(allTexts(made('as-built', built))).toMatch(/W20.*Size: 4 mm² → 6 mm²/)
    expect(allTexts(made('as-built', built))).not.toContain('Removed')
    expect(standingWords(built).status).toBe('Issued')
  })
})

test('a scene as marks holds every part, and only those that are kept', () => {
  const scene = sceneOf(b, null, 'single-line')
  const all = textsOf(sceneMarks(scene)).join(' ')
  for (const p of b.parts) expect(all).toContain(p.designation)
  const pump = partNamed(b, 'M1')
  const one = textsOf(sceneMarks(scene, (id) => id === pump.id)).join(' ')
  expect(one).toContain('Shower pump')
  expect(one).not.toContain('Fridge')
})
