import { describe, expect, test } from 'vitest'
import { sizeInPart } from '../../engine/calc/sizing/sizeinpart'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import type { RunChoice, Sized, Sizing, SizingScope } from '../../engine/calc/sizing/sizing'
import { apply } from '../../engine/edit/apply'
import { kindOf } from '../../engine/kinds/all'
import { readDesign } from '../../engine/kinds/readdesign'
import type { Design } from '../../engine/model/design'
import { writeDesign } from '../../engine/model/write'
import { analyse } from '../../engine/rules/analyse'
import { choiceWords, copperWords, keptWords, noSizeWords, whyChosen } from '../../engine/words/sizing'
import { conductorNumbered, design, partNamed } from '../build'
import { DEMOS } from '../scenarios/demos/all'

function sizedOf(of: Design, scope: SizingScope = 'all'): Sized {
  const sizing = sizeIt(of, scope)
  if ('infeasible' in sizing) throw new Error(sizing.infeasible.map((no) => noSizeWords(no, of)).join('\n'))
  return sizing
}

function applied(of: Design, { edit }: Sized): Design {
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  return result.design
}

function choiceOf(of: Design, sized: Sized, number: string): RunChoice {
  const { id } = conductorNumbered(of, number)
  return sized.choices.find((c): c is RunChoice => 'conductor' in c && c.conductor === id)!
}

/** One load behind one fuse, fed and returned over so many metres each way. */
const oneLoad = (amps: number, lengthM: number, more: object = {}, settings: object = {}): Design =>
  design({ ruleSet: 'us-33cfr183', ...settings })
    .part('battery', 'G1', { volts: '12', capacityAh: 100, dischargeA: 100, chargeA: 50 })
    .part('fuse-cartridge', 'F1', { class: 't' })
    .part('load', 'E1', { currentA: amps, ...more })
    .join('G1.+', 'F1.1', { lengthM: 0.1 })
    .join('F1.2', 'E1.+', { lengthM })
    .join('E1.-', 'G1.-', { lengthM })
    .build()

describe('worked examples', () => {
  // 12 V, 10 A, 21 ft round trip, 3 %: 10.75 · 10 A · 21 ft / 0.36 V = 6271 cmil, next size 12 AWG (6530 cmil): the formula
  // of the 2021 catalogue of Holland Marine, p. 52. Its printed table says 10 AWG, as its next column is 25 ft. At
  // 70 °C instead of the formula's warm 10.75 Ω·cmil/ft the copper has 15 % more, which takes the table's size too.
  test('12 V, 10 A, 21 ft round trip, 3 %: 10 AWG as in the printed table', () => {
    const lengthM = (21 * 0.3048) / 2
    const of = oneLoad(10, lengthM, { service: 'critical' })
    const sized = sizedOf(of)
    expect(choiceOf(of, sized, 'W2').to).toBe('10awg')
    expect(choiceOf(of, sized, 'W2').because).toMatchObject({ key: 'drop', limitPercent: 3 })
  })

  // The same at 10 %: 16 AWG by table and formula (same catalogue, p. 53).
  test('the same, 10 %: 16 AWG', () => {
    const of = oneLoad(10, (21 * 0.3048) / 2)
    expect(choiceOf(of, sizedOf(of), 'W2').to).toBe('16awg')
  })

  // 16 A that runs for hours takes a 20 A device: 125 % rule, as restated on public pages.
  test('16 A for hours: a device of 20 A', () => {
    const sized = sizedOf(oneLoad(16, 2))
    expect(sized.choices.find((c) => 'part' in c)).toMatchObject({ to: 20 })
  })
})

/** Ratings of fuses and breakers taken away, or all the same and wrong. */
function spoiled(of: Design, size: string | null, rated: number | null): Design {
  return {
    ...of,
    conductors: of.conductors.map((c) => ({ ...c, size })),
    parts: of.parts.map((part) => {
      const { fields } = kindOf(part.kind)!
      const values = { ...part.values }
      if (Array.isArray(values.ways)) values.ways = values.ways.map((way) => ({ ...way, ratingA: rated }))
      else if (fields.fullDuty) values.ratingA = rated
      return { ...part, values }
    }),
  }
}

/** What sizes and ratings decide. */
const DECIDED = ['P1', 'P2', 'P3', 'P5', 'C1', 'C3', 'F1', 'F3', 'E1', 'V4', 'D1', 'D2', 'J9', 'J10', 'K2']

const CLEAN = DEMOS.filter(({ file }) => !['planted-mistakes.json', 'training-boards.json'].includes(file))

describe.each(CLEAN)('$file', ({ make }) => {
  const clean = make()
  const notes = (of: Design): string[] =>
    analyse(of)
      .findings.filter((f) => DECIDED.includes(f.rule))
      .map((f) => f.key)

  test('sized by the tool: nothing that sizes and ratings decide', () => {
    expect(notes(applied(clean, sizedOf(clean)))).toEqual([])
  })

  test.each([
    ['taken away', null, null],
    ['all thin, all large', clean.settings.ruleSet === 'us-33cfr183' ? '18awg' : '0.75mm2', 500],
    ['all thick, all small', clean.settings.ruleSet === 'us-33cfr183' ? '4/0awg' : '150mm2', 1],
  ] as const)('%s: sized as from the clean design', (_, size, ratingA) => {
    const bad = spoiled(clean, size, ratingA)
    const sized = sizedOf(bad)
    const good = applied(bad, sized)
    expect(notes(good)).toEqual([])
    expect(sized.copperAfterKg! / sizedOf(clean).copperAfterKg!).toBeCloseTo(1, 2)
  })

  test('sized twice nothing changes', () => {
    const once = applied(clean, sizedOf(clean))
    const twice = sizedOf(once)
    expect(twice.changes).toEqual([])
    expect(twice.copperBeforeKg).toBe(twice.copperAfterKg)
  })

  test('no choice can be one size smaller by itself', () => {
    const sized = sizedOf(clean)
    const good = applied(clean, sized)
    const runs = sized.choices.filter((c): c is RunChoice => 'conductor' in c)
    for (const { conductor, because } of runs.filter((_, i) => i % 7 === 0)) {
      if (!('thinner' in because)) continue
      const worse = applied(good, {
        ...sized,
        edit: {
          do: 'all',
          edits: [{ do: 'conductor', conductors: [conductor], set: { size: because.thinner } }],
        },
      })
      expect(notes(worse), `${conductor} ${because.key}`).not.toEqual([])
    }
  }, 60_000)
})

describe('what may be chosen', () => {
  test('a locked size stays, and others make up for it', () => {
    const of = oneLoad(10, 6, {}, { ruleSet: 'metric-automotive' })
    const free = sizedOf(of)
    const { id } = conductorNumbered(of, 'W3')
    const locked = applied(of, {
      ...free,
      edit: {
        do: 'all',
        edits: [{ do: 'conductor', conductors: [id], set: { size: '1.5mm2', locked: true } }],
      },
    })
    const sized = sizedOf(locked)
    expect(applied(locked, sized).conductors.find((c) => c.id === id)?.size).toBe('1.5mm2')
    expect(sized.kept).toEqual([{ conductor: id, because: { key: 'locked' } }])
    expect(sized.copperAfterKg!).toBeGreaterThan(free.copperAfterKg!)
    expect(analyse(applied(locked, sized)).findings.filter((f) => f.rule === 'E1')).toEqual([])
    expect(keptWords(sized.kept, locked)[0]).toBe('W3 is left as it is. The size is locked.')
  })

  test('a selection only', () => {
    const { make } = CLEAN[1]!
    const of = make()
    const [first, second] = of.conductors
    const part = of.parts.find((p) => p.kind === 'fuse-cartridge')!
    const sized = sizedOf(of, { parts: [part.id], conductors: [first!.id, second!.id] })
    expect(sized.choices).toHaveLength(3)
    const changed = applied(of, sized)
    expect(changed.conductors.slice(2)).toEqual(of.conductors.slice(2))
  })

  test('a lock is written and read back', () => {
    const of = oneLoad(5, 2)
    const { id } = conductorNumbered(of, 'W2')
    const result = apply(of, { do: 'conductor', conductors: [id], set: { locked: true } })
    if (result.refused) throw new Error(result.why)
    const text = writeDesign(result.design)
    expect(text).toContain('"locked": true')
    expect(readDesign(text).design?.conductors).toEqual(result.design.conductors)
    expect(writeDesign(of)).not.toContain('locked')
  })

  test('an unknown load is left as it is, and said so', () => {
    const of = oneLoad(5, 2)
    const unknown = applied(of, {
      ...sizedOf(of),
      edit: {
        do: 'all',
        edits: [{ do: 'value', part: partNamed(of, 'E1').id, field: 'currentA', value: null }],
      },
    })
    const sized = sizedOf(unknown)
    expect(sized.choices).toEqual([])
    expect(sized.kept.map((k) => k.part ?? k.conductor)).toContain(partNamed(of, 'F1').id)
    expect(
      keptWords(
        sized.kept.filter((k) => k.part),
        unknown,
      )[0],
    ).toMatch(/^F1 is left as it is\. Not checked, because /)
  })
})

describe('no answer', () => {
  const reasons = (sizing: Sizing, of: Design): string[] =>
    'infeasible' in sizing ? sizing.infeasible.map((no) => noSizeWords(no, of)) : []

  // 150 mm² at 70 °C: 0.129 · 1.1965 mΩ/m · 300 m · 30 A = 1.39 V, 11.6 % of 12 V (IEC 60228).
  test('too far', () => {
    const of = oneLoad(30, 150, { service: 'critical' }, { ruleSet: 'metric-automotive' })
    expect(reasons(sizeIt(of, 'all'), of)).toEqual([
      expect.stringMatching(
        /^No standard size holds 3 % at 150 m: the drop at E1 would still be 11\.6 %\. Shorten/,
      ),
    ])
  })

  test('too much for any conductor', () => {
    const of = design({ ruleSet: 'metric-automotive' })
      .part('battery', 'G1', { volts: '12', capacityAh: 1000, dischargeA: 500, chargeA: 50 })
      .part('fuse-cartridge', 'F1', { class: 't', fullDuty: true })
      .part('load', 'E1', { currentA: 400 })
      .join('G1.+', 'F1.1', { lengthM: 0.1 })
      .join('F1.2', 'E1.+', { lengthM: 1 })
      .join('E1.-', 'G1.-', { lengthM: 1 })
      .build()
    expect(reasons(sizeIt(of, 'all'), of)[0]).toMatch(
      /^No standard size carries W1: it needs 400 A, and 150 mm² carries 344 A here\./,
    )
  })

  test('too much for any fuse', () => {
    const of = design({ ruleSet: 'metric-automotive' })
      .part('battery', 'G1', { volts: '12', capacityAh: 100, dischargeA: 100, chargeA: 50 })
      .part('fuse-blade', 'F1')
      .part('load', 'E1', { currentA: 60 })
      .join('G1.+', 'F1.1', { lengthM: 0.1 })
      .join('F1.2', 'E1.+', { lengthM: 1 })
      .join('E1.-', 'G1.-', { lengthM: 1 })
      .build()
    expect(reasons(sizeIt(of, 'all'), of)).toEqual([
      'No standard rating will do for F1: it needs 75 A, and the largest that fits is 40 A. Divide the load, or take another form of fuse.',
    ])
  })

  test('what is locked takes too much already', () => {
    const of = oneLoad(10, 20, {}, { ruleSet: 'metric-automotive' })
    const { id } = conductorNumbered(of, 'W3')
    const locked = {
      ...of,
      conductors: of.conductors.map((c) => (c.id === id ? { ...c, size: '1.5mm2', locked: true } : c)),
    }
    expect(reasons(sizeIt(locked, 'all'), locked)[0]).toMatch(
      /conductors that are not to be changed take 2\d/,
    )
  })
})

describe('words', () => {
  const of = oneLoad(10, 6, { service: 'critical' }, { ruleSet: 'metric-automotive' })
  const sized = sizedOf(of)

  test('of a size', () => {
    const choice = choiceOf(of, sized, 'W2')
    expect(choiceWords(choice, of)).toBe('W2: 10 mm²')
    expect(whyChosen(choice, of)).toMatch(
      /^6 mm² carries it, but the drop at E1 would be [34]\.\d+ % of 3 %\.$/,
    )
  })

  test('of a rating', () => {
    const rating = sized.choices.find((c) => 'part' in c)!
    expect(choiceWords(rating, of)).toBe('F1: 15 A')
    expect(whyChosen(rating, of)).toBe(
      '10 A may run for hours, and a device carries 80 % of its rating for so long.',
    )
  })

  test('of the copper', () => {
    expect(copperWords(sized)).toMatch(/^1\.0\d kg of copper\.$/)
    expect(copperWords(sizedOf(applied(of, sized)))).toMatch(/, as much as now\.$/)
  })
})

describe('a rating that is locked', () => {
  test('stays, and conductors are chosen for what it lets through', () => {
    const of = oneLoad(10, 2)
    const locked = (ratingA: number): Design => ({
      ...of,
      parts: of.parts.map((p) =>
        p.designation === 'F1' ? { ...p, values: { ...p.values, ratingA, ratingLocked: true } } : p,
      ),
    })
    const free = sizedOf(of)
    expect(free.choices.filter((c) => 'part' in c)).toHaveLength(1)
    const sized = sizedOf(locked(60))
    expect(sized.choices.filter((c) => 'part' in c)).toEqual([])
    expect(keptWords(sized.kept, of)).toEqual(['F1 is left as it is. The rating is locked.'])
    // 33 CFR 183.455: 60 A may protect a conductor of 40 A; 14 AWG bears 35 A and 12 AWG 45 A (table 5, 105 °C).
    expect(choiceOf(of, sized, 'W2').to).toBe('12awg')
    expect(choiceOf(of, free, 'W2').to).not.toBe('12awg')
  })

  test('a way of a block is locked by itself', () => {
    const of = design({ ruleSet: 'metric-automotive' })
      .part('battery', 'G1', { volts: '12', capacityAh: 100, dischargeA: 100, chargeA: 50 })
      .part('fuse-block', 'F1', {
        ways: [
          { ratingA: 20, label: '', locked: true },
          { ratingA: 20, label: '', locked: false },
        ],
      })
      .part('lamp', 'E1', { currentA: 2 })
      .part('lamp', 'E2', { currentA: 2 })
      .join('G1.+', 'F1.in', { lengthM: 0.1 })
      .join('F1.1', 'E1.+', { lengthM: 1 })
      .join('F1.2', 'E2.+', { lengthM: 1 })
      .join('E1.-', 'G1.-', { lengthM: 1 })
      .join('E2.-', 'G1.-', { lengthM: 1 })
      .build()
    const ways = partNamed(applied(of, sizedOf(of)), 'F1').values.ways as { ratingA: number }[]
    expect(ways[0]!.ratingA).toBe(20)
    expect(ways[1]!.ratingA).toBeLessThan(20)
  })
})

describe('sizing in part', () => {
  /** Two loads, each behind a fuse of its own; the far one is so far away that no size keeps its drop. */
  const two = (farM: number): Design =>
    design({ ruleSet: 'metric-automotive' })
      .part('battery', 'G1', { volts: '12', capacityAh: 100, dischargeA: 100, chargeA: 50 })
      .part('fuse-block', 'F1', {
        ways: [
          { ratingA: null, label: '' },
          { ratingA: null, label: '' },
        ],
      })
      .part('lamp', 'E1', { currentA: 5 })
      .part('lamp', 'E2', { currentA: 20, service: 'critical' })
      .join('G1.+', 'F1.in', { lengthM: 0.1 })
      .join('F1.1', 'E1.+', { lengthM: 2 })
      .join('E1.-', 'G1.-', { lengthM: 2 })
      .join('F1.2', 'E2.+', { lengthM: farM })
      .join('E2.-', 'G1.-', { lengthM: farM })
      .build()

  test('is the whole choice where everything can be held', () => {
    const of = two(3)
    expect(sizeInPart(of, 'all')).toEqual({ sized: sizeIt(of, 'all'), none: [] })
  })

  test('what can be chosen is as though the rest were not there, and the rest is told with its reason', () => {
    const of = two(300)
    expect('infeasible' in sizeIt(of, 'all')).toBe(true)
    const { sized, none } = sizeInPart(of, 'all')
    expect(none).toMatchObject([{ key: 'drop', part: partNamed(of, 'E2').id }])
    expect(noSizeWords(none[0]!, of)).toMatch(
      /No standard size holds 3 % at 300.* m: .* Shorten the run, or raise/,
    )
    if (!sized) throw new Error('nothing was chosen')
    const alone = sizedOf(two(3))
    for (const number of ['W2', 'W3'])
      expect(choiceOf(of, sized, number).to).toBe(choiceOf(two(3), alone, number).to)
    const after = analyse(applied(of, sized)).findings.filter(
      (f) => f.level === 'danger' || f.level === 'warning',
    )
    expect(after.filter((f) => ['P2', 'P3', 'P5', 'C1', 'F1'].includes(f.rule))).toEqual([])
  })

  test('a load that no conductor carries leaves the others to be chosen', () => {
    const of = two(2)
    const heavy = {
      ...of,
      parts: of.parts.map((p) =>
        p.designation === 'E2' ? { ...p, values: { ...p.values, currentA: 5000 } } : p,
      ),
    }
    const { sized, none } = sizeInPart(heavy, 'all')
    expect(none.map((no) => no.key)).toContain('rating')
    if (!sized) throw new Error('nothing was chosen')
    expect(choiceOf(of, sized, 'W2').to).toBe(choiceOf(of, sizedOf(of), 'W2').to)
  })

  test('what serves such a load alone is left as it is, and what it shares with others gets no thinner', () => {
    const of = two(300)
    const thick = {
      ...of,
      conductors: of.conductors.map((c) => (['W1', 'W4'].includes(c.number) ? { ...c, size: '95mm2' } : c)),
    }
    const { sized } = sizeInPart(thick, 'all')
    expect(choiceOf(of, sized!, 'W1').to).toBe('95mm2')
    for (const number of ['W4', 'W5']) expect(choiceOf(of, sized!, number)).toBeUndefined()
    expect(conductorNumbered(applied(thick, sized!), 'W4').size).toBe('95mm2')
  })
})

// NFPA 70 article 552, as restated: the bond of battery and frame is copper of 8 AWG at least, and no thinner than the lead.
test('a bond to the frame is chosen as thick as the lead of the battery', () => {
  const of = design({ ruleSet: 'metric-automotive' })
    .part('battery', 'G1', { volts: '12', capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
    .part('fuse-cartridge', 'F1', { class: 't' })
    .part('load', 'E1', { currentA: 80 })
    .part('chassis-point', 'X1', {})
    .part('chassis-point', 'X2', {})
    .part('busbar', 'W1', { studs: 6, pole: 'negative' })
    .join('G1.+', 'F1.1', { lengthM: 0.1 })
    .join('F1.2', 'E1.+', { lengthM: 1 })
    .join('E1.-', 'W1.1l', { lengthM: 1 })
    .join('W1.2l', 'X1.31', { lengthM: 1 })
    .join('W1.1r', 'G1.-', { lengthM: 1 })
    .build()
  const sized = sizedOf(of)
  const bond = choiceOf(of, sized, 'W4')
  expect(bond.to).toBe(choiceOf(of, sized, 'W5').to)
  expect(bond.because).toMatchObject({ key: 'bond', lead: conductorNumbered(of, 'W5').id })
  expect(whyChosen(bond, of)).toContain('as thick as the lead of the battery, W5')
  expect(analyse(applied(of, sized)).findings.filter((f) => f.rule === 'J10')).toEqual([])
})
