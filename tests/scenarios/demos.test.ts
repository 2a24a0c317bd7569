import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { analyse, type Design, type Finding, readDesign, sizeIt, sortAccepted } from '../../engine/index'
import { RULES } from '../../engine/rules/all'
import { DEMOS } from './demos/all'
import { BOARDS, boards } from './demos/boards'
import { MISTAKES, mistakes } from './demos/mistakes'
import { vetVan, vetVanAsDrawn } from './demos/vetvan'

/** Findings as "rule level names", names being designations and conductor numbers. */
function told(design: Design): string[] {
  return analyse(design).findings.map((f) => `${f.rule} ${f.level} ${namesOf(design, f).join(' ')}`)
}

function namesOf(design: Design, f: Finding): string[] {
  const parts = f.parts.map((id) => design.parts.find((p) => p.id === id)?.designation ?? id)
  const conductors = f.conductors.map((id) => design.conductors.find((c) => c.id === id)?.number ?? id)
  return [...conductors, ...parts]
}

/**
 * What a clean demo is told, and nothing more: short runs from a battery to its fuse within the allowance of the rule
 * set (P4), devices in line that a fault behind the lower may open both (K6), and loads that are more together than the
 * batteries give for long (R6).
 */
const NOTES: Readonly<Record<string, readonly string[]>> = {
  'veterinary-van.json': [
    'P4 note W11',
    'P4 note W12',
    'P4 note W42',
    'P4 note W43',
    'K6 note F3 F1 F2',
    'K6 note F4 F3',
    'K6 note F6 F3',
    'K6 note F7 F3',
  ],
  'camping-trailer.json': ['P4 note W5', 'K6 note F2 F1'],
  'expedition-truck.json': [
    'R6 note G1 G2 G3',
    'P4 note W11',
    'P4 note W14',
    'P4 note W17',
    'K6 note F11 F1 F2 F3',
    'K6 note F12 F1 F2 F3',
    'K6 note F13 F1 F2 F3',
    'K6 note F15 F1 F2 F3',
    'K6 note F16 F1 F2 F3',
  ],
  'mountain-cabin.json': ['P4 note W11', 'P4 note W12', 'P4 note W13', 'P4 note W14', 'K6 note F2 F1'],
}

/**
 * Rules that no drawing made here can break: A1 and A2 need a bench, X1 and X2 a file from elsewhere, X3 and K7 a design too
 * large to try everything, D4 whatever has no rule of its own.
 */
const NOT_DRAWN = ['A1', 'A2', 'X3', 'K7', 'D4', 'X1', 'X2']

describe('demo designs', () => {
  for (const { file, make } of DEMOS) {
    const notes = NOTES[file]
    if (notes) it(`${file} gives exactly these findings`, () => expect(told(make())).toEqual(notes))
  }

  for (const { file, make } of DEMOS.filter((d) => d.file in NOTES))
    it(`${file} is sized by the tool itself: it finds nothing to change`, () => {
      const sizing = sizeIt(make(), 'all')
      expect('infeasible' in sizing ? sizing.infeasible : sizing.changes).toEqual([])
    })

  it('the planted mistakes give exactly one finding each, and the notes of the clean van', () => {
    expect(told(mistakes())).toEqual([
      'P1 danger W201 G2',
      'P5 danger W72',
      'U1 danger F13',
      'K3 danger W12 W13 W14 W15 W16 F2',
      'S1 danger K1',
      'F5 danger F4',
      'V1 danger T2',
      'V3 danger G7',
      'K1 warning F6',
      'U2 warning F9',
      'R2 warning G1 G2',
      'R3 warning E8',
      'R5 warning K3',
      'F3 warning F5',
      'F2 warning F7 M14',
      'R1 warning G1 G2',
      'R4 warning G4 T4',
      'V4 warning W34',
      'V5 warning T1 G5',
      'V2 warning G7 T3',
      'M1 warning W70 E5 B2',
      'M2 warning T1 B2',
      'L1 warning T3',
      'J9 warning W22 W4',
      'K5 not-checked F10',
      'J11 not-checked M14',
      'D1 not-checked W57',
      ...told(vetVanAsDrawn()),
      'F4 note F5',
    ])
  })

  it('every planted mistake is found where it was planted', () => {
    const all = told(mistakes())
    for (const m of MISTAKES)
      expect(
        all.filter((t) => t.startsWith(`${m.rule} `) && m.names.every((n) => t.split(' ').includes(n))),
        m.what,
      ).toHaveLength(1)
  })

  it('each training board is told the one thing that is wrong on it', () => {
    const design = boards()
    const board = (id: string) => design.parts.find((p) => p.id === id)!.location
    const met = sortAccepted(design, analyse(design).findings).open.map((f) => {
      const ends = f.conductors.flatMap((id) => {
        const c = design.conductors.find((c) => c.id === id)!
        return [c.from.part, c.to.part]
      })
      return { rule: f.rule, on: new Set([...f.parts, ...ends].map(board)) }
    })
    BOARDS.forEach(({ what, rule }, i) => {
      const here = met.filter(({ on }) => on.has(`board ${i + 1}`))
      expect(
        here.map((f) => f.rule),
        what,
      ).toContain(rule)
      // Nothing that is planted on one board is told of another.
      expect(
        here.every(({ on }) => on.size === 1),
        what,
      ).toBe(true)
    })
  })

  it('every rule that a drawing can break has a mistake planted', () => {
    const planted = new Set([...MISTAKES, ...BOARDS].map((m) => m.rule))
    const notes = ['P4', 'K6', 'R6']
    expect(RULES.map((r) => r.id).filter((id) => !planted.has(id) && !notes.includes(id))).toEqual(NOT_DRAWN)
  })

  it('the main demo is of the size that it is said to be', () => {
    const van = vetVan()
    expect(van.parts.length).toBeGreaterThanOrEqual(60)
    expect(van.conductors.length).toBeGreaterThanOrEqual(120)
  })

  for (const { file, make } of DEMOS)
    it(`public/demos/${file} is the design that the code makes`, () => {
      const text = readFileSync(new URL(`../../public/demos/${file}`, import.meta.url), 'utf8')
      const read = readDesign(text)
      expect(read.problems).toEqual([])
      const bare = (d: Design): Design => ({
        ...d,
        parts: d.parts.map((p) => ({ ...p, x: 0, y: 0 })),
      })
      if (!read.design) throw new Error('the file was not read')
      expect(bare(read.design)).toEqual(bare(make()))
    })
})
