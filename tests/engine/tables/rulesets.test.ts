import { describe, expect, test } from 'vitest'
import { SOURCES, sourceOf } from '../../../engine/sources'
import { COLOURS, colourName, isColour } from '../../../engine/tables/colours'
import type { Figured } from '../../../engine/tables/figure'
import { fuseColour, nextRating, RATINGS } from '../../../engine/tables/fuseratings'
import {
  leastSectionMm2,
  nearSourceM,
  RULE_SETS,
  type RuleSet,
  ruleSetByKey,
} from '../../../engine/tables/rulesets'

const cfr = ruleSetByKey('us-33cfr183')!
const caravan = ruleSetByKey('caravan-au-nz')!

describe('lengths ahead of the first device', () => {
  // 33 CFR 183.455(b): 7 inches; 40 inches in a sheath or enclosure throughout.
  test('US 33 CFR 183', () => {
    expect(nearSourceM(cfr, false)).toBeCloseTo(7 * 0.0254, 9)
    expect(nearSourceM(cfr, true)).toBeCloseTo(40 * 0.0254, 9)
  })

  // AS/NZS 3001.2:2022 section 5.4 as restated: 200 mm; under 1.0 m where suitably enclosed.
  test('caravans in Australia and New Zealand', () => {
    expect(nearSourceM(caravan, false)).toBe(0.2)
    expect(nearSourceM(caravan, true)).toBe(1)
  })
})

// 33 CFR 183.425: least size 16 AWG, 18 AWG inside a sheath. ISO 10133:2012: 1 mm², 0.75 mm² inside a sheath.
test('least sizes', () => {
  expect([leastSectionMm2(cfr, false), leastSectionMm2(cfr, true)]).toEqual([1.309, 0.823])
  expect([leastSectionMm2(caravan, false), leastSectionMm2(caravan, true)]).toEqual([1, 0.75])
})

// ABYC E-11: 3 % critical, 10 % others. NFPA 70: 125 % of a continuous load, which is 80 % of the rating.
test('drop limits and continuous loads', () => {
  expect(cfr.dropPercent.critical.value).toBe(3)
  expect(cfr.dropPercent.general.value).toBe(10)
  for (const set of RULE_SETS) expect(1 / set.continuousShare.value).toBe(1.25)
})

const figuresOf = (set: RuleSet): readonly Figured[] => [
  set.deviceShare,
  set.continuousShare,
  set.nearSource.open,
  set.nearSource.sheathed,
  set.dropPercent.critical,
  set.dropPercent.general,
  set.leastMm2.open,
  set.leastMm2.sheathed,
  ...[30, 40, 50].flatMap((c) => set.ambientFactor(c, 105, false) ?? []),
  ...[60, 75, 90, 105, 200].flatMap((c) => set.ambientFactor(30, c, true) ?? []),
  ...[1, 3, 9, 20].flatMap((n) => set.bunchFactor(n) ?? []),
]

test('every figure names a source that is in the list, and none from memory passes as confirmed', () => {
  for (const set of RULE_SETS) {
    expect(figuresOf(set).length).toBeGreaterThan(10)
    for (const figure of figuresOf(set)) {
      const source = sourceOf(figure.source)
      expect(source, figure.source).toBeDefined()
      if (figure.confirmed) expect(source!.status).not.toBe('from memory')
    }
    for (const letters of Object.values(set.colours)) expect(isColour(letters)).toBe(true)
  }
})

test('sources say what they are', () => {
  for (const [key, source] of Object.entries(SOURCES)) {
    expect(source.title, key).not.toBe('')
    expect(source.note, key).toMatch(/\.$/)
  }
  expect(sourceOf('constructor')).toBeUndefined()
})

describe('standard ratings', () => {
  // DIN 72581-3 and ISO 8820 as restated on two public pages.
  test('blade fuses and their colours', () => {
    expect(RATINGS.blade.amps.map((a) => fuseColour('blade', a))).toEqual([
      'black',
      'grey',
      'violet',
      'pink',
      'light brown',
      'brown',
      'red',
      'blue',
      'yellow',
      'clear',
      'green',
      'blue-green',
      'orange',
    ])
    expect(fuseColour('large-blade', 60)).toBe('light blue')
    expect(fuseColour('bolt-in', 100)).toBeNull()
    for (const amps of RATINGS['large-blade'].amps) expect(fuseColour('large-blade', amps)).not.toBeNull()
  })

  // Worked example of the 125 % rule: a continuous load of 16 A takes a 20 A device.
  test('the next rating', () => {
    expect(nextRating('breaker', 16 * 1.25)).toBe(20)
    expect(nextRating('blade', 31)).toBe(35)
    expect(nextRating('blade', 41)).toBeUndefined()
    for (const { amps } of Object.values(RATINGS)) expect([...amps]).toEqual([...amps].sort((a, b) => a - b))
  })
})

// IEC 60757: letters of colours; green and yellow together only as GNYE.
test('colour letters', () => {
  expect(Object.keys(COLOURS)).toContain('GNYE')
  expect(['RD', 'BK', 'BKRD', 'GNYE', 'RDBU'].map(isColour)).toEqual([true, true, true, true, true])
  expect(['', 'red', 'RDRD', 'XX', 'RDB', 'YEGN'].map(isColour)).toEqual([
    false,
    false,
    false,
    false,
    false,
    false,
  ])
  expect(colourName('BKRD')).toBe('black and red')
  expect(colourName('GNYE')).toBe('green-yellow')
  expect(colourName('??')).toBe('??')
})
