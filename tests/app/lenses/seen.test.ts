import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { dropShare, loadFigures } from '../../../app/lenses/drop'
import { guardedBy, guardsOf } from '../../../app/lenses/guards'
import { LENS_KEYS, LENSES, type Lens, seenThrough } from '../../../app/lenses/lens'
import type { Look } from '../../../app/lenses/look'
import { analyse, type Design, readDesign } from '../../../engine'
import { smallVan } from '../../e2e/van'

const read = (text: string): Design => readDesign(text).design!
const van = read(smallVan())
const { answers } = analyse(van)
const planted = read(
  readFileSync(new URL('../../../public/demos/planted-mistakes.json', import.meta.url), 'utf8'),
)
const wrong = analyse(planted)

const idIn = (design: Design, number: string) => design.conductors.find((c) => c.number === number)!.id
const partIn = (design: Design, name: string) => design.parts.find((p) => p.designation === name)!.id
const seen = (lens: Lens, ...numbers: string[]) =>
  seenThrough(
    lens,
    answers,
    numbers.map((n) => idIn(van, n)),
    null,
  )

describe('looks', () => {
  it.each(LENS_KEYS)('of %s can be told apart without colour', (lens) => {
    const shape = ({ widthMm, dash, coreMm }: Look) => JSON.stringify([widthMm, dash, coreMm])
    const shapes = LENSES[lens].looks.map(shape)
    expect(new Set(shapes).size).toBe(shapes.length)
  })
  it('have keys of their own', () => {
    expect(new Set(LENS_KEYS.map((l) => LENSES[l].key)).size).toBe(LENS_KEYS.length)
  })
  it.each(LENS_KEYS)('of %s are all in its key, but the ones that stand back', (lens) => {
    const shown = new Set(LENSES[lens].looks)
    for (const { design, checked } of [
      { design: van, checked: answers },
      { design: planted, checked: wrong.answers },
    ])
      for (const { id } of design.conductors) {
        const { look } = seenThrough(lens, checked, [id], null)
        if (look.ink !== 'faint') expect(shown).toContain(look)
      }
  })
})

describe('worst-case current', () => {
  // The lamp takes 3 A; nothing else hangs on W3 and W4.
  it('is the figure on the line', () => expect(seen('current', 'W3').figure).toBe('3 A'))
  it('gives heavier lines to greater currents', () => {
    // Lamp and pump together pass the main fuse: 3 A and 8 A.
    const main = seen('current', 'W2')
    expect(Number.parseFloat(main.figure!)).toBeGreaterThanOrEqual(11)
    expect(main.look.widthMm).toBeGreaterThan(seen('current', 'W3').look.widthMm)
    expect(main.rank).toBeGreaterThan(seen('current', 'W3').rank)
  })
  it('of a feed with its return is the greater', () =>
    expect(seen('current', 'W3', 'W2').figure).toBe(seen('current', 'W2').figure))
})

describe('protection', () => {
  it('lights up what the pointed device guards', () => {
    const guarded = guardedBy(answers.runs).get(partIn(van, 'F2'))!
    const pump = [idIn(van, 'W5')]
    const on = seenThrough('protection', answers, pump, guarded)
    const off = seenThrough('protection', answers, [idIn(van, 'W2')], guarded)
    expect(on.look.words).toBe('Guarded by it')
    expect(off.look.ink).toBe('faint')
  })
  it('says the same from the other end: who guards a conductor', () => {
    for (const [id, run] of answers.runs)
      for (const g of guardsOf(run))
        if (g.is === 'device') expect(guardedBy(answers.runs).get(g.part)).toContain(id)
  })
  it('never hides an unprotected run behind a pointed device', () => {
    const bare = [...wrong.answers.runs].filter(
      ([, r]) => 'value' in r.verdict && r.verdict.value === 'unprotected',
    )
    expect(bare.length).toBeGreaterThan(0)
    for (const pointed of [null, new Set<string>(), new Set(bare.map(([id]) => id))])
      for (const [id] of bare) {
        const { look, figure } = seenThrough('protection', wrong.answers, [id], pointed)
        expect([look.words, figure]).toEqual(['No protection', 'no protection'])
      }
  })
})

describe('meter truth', () => {
  it('tells measured from source side', () => {
    expect(seen('meter', 'W4').look.words).toBe('Measured')
    const before = [...wrong.answers.runs].find(([, r]) => r.metered === 'source-side')![0]
    expect(seenThrough('meter', wrong.answers, [before], null).look.words).toBe('Source side of the shunt')
  })
  it('shows the planted bypass, also on the line that stands for both', () => {
    const past = [...wrong.answers.runs].filter(([, r]) => r.metered === 'bypasses').map(([id]) => id)
    expect(past.length).toBeGreaterThan(0)
    const measured = [...wrong.answers.runs].find(([, r]) => r.metered === 'measured')![0]
    for (const id of past)
      expect(seenThrough('meter', wrong.answers, [measured, id], null).figure).toBe('not measured')
  })
})

describe('drop', () => {
  it('adds up along the way of a load to what stands at the load', () => {
    for (const { drop } of answers.drops.values()) {
      if (!('value' in drop)) continue
      const share = dropShare(
        answers.drops,
        drop.value.conductors.map((c) => c.conductor),
      )!
      expect(share).toBeGreaterThanOrEqual(drop.value.percent - 1e-9)
    }
    expect(loadFigures(answers.drops).get(partIn(van, 'M1'))!.text).toMatch(/%$/)
  })
  it('of the pump: 8 A through 8 m of 2.5 mm² and the common way, in per cent of 12 V', () => {
    // Copper at 20 °C, 0.01724 Ω mm²/m (IEC 60028): 8 A × 8 m × 0.01724 / 2.5 = 0.44 V, 3.7 %. Warm copper takes more.
    const { percent } = loadFigures(answers.drops).get(partIn(van, 'M1'))!
    expect(percent).toBeGreaterThan(3.7)
    expect(percent).toBeLessThan(3.7 * 1.6)
  })
})
