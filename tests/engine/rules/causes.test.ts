import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { analyse, type Design, sentence } from '../../../engine/index'
import type { Values } from '../../../engine/model/fields'
import { type DesignBuilder, design, type JoinWords } from '../../build'
import { told } from './system'

/**
 * One mistake planted in a sound system of any size must read as one thing, and be gone when it is mended. Common sense, no
 * source. Each block of loads has a fuse, a feed, a return bar of its own and a lead from that to the load-side bar.
 */
interface Size {
  readonly batteries: number
  readonly blocks: number
  readonly loads: number
}

interface Plant {
  readonly main?: Values
  readonly feed?: JoinWords
  /** Where the return lead of the first block is landed. */
  readonly lead?: string
}

const BIG = '70mm2'

function systemOf({ batteries, blocks, loads }: Size, plant: Plant = {}): DesignBuilder {
  const fuse = { voltageV: 125, breakingKA: 50, breakingV: 125, class: 't', fullDuty: true }
  let d = design({ systemV: 12, ruleSet: 'metric-automotive', ambientC: 30 })
    .part('busbar', 'W1', { studs: 12, pole: 'positive', ratingA: 500 })
    .part('busbar', 'W2', { studs: 12, pole: 'negative', ratingA: 500 })
    .part('busbar', 'W3', { studs: 12, pole: 'negative', ratingA: 500 })
    .part('shunt', 'B2', { role: 'load', ratingA: 500, data: 'none' })
    .join('W2.1r', 'B2.b', { number: 'back', size: BIG, lengthM: 0.3 })
    .join('B2.s', 'W3.1l', { number: 'on', size: BIG, lengthM: 0.3 })
  for (let i = 1; i <= batteries; i++)
    d = d
      .part('battery', `G${i}`, { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 5 })
      .part('fuse-cartridge', `F${i}`, { ...fuse, ratingA: 100, ...(i === 1 ? plant.main : {}) })
      .join(`G${i}.+`, `F${i}.1`, { number: `G${i}+`, size: BIG, lengthM: 0.15 })
      .join(`F${i}.2`, `W1.${i}l`, { number: `F${i}+`, size: BIG, lengthM: 1 })
      .join(`G${i}.-`, `W2.${i}l`, { number: `G${i}-`, size: BIG, lengthM: 1 })
  for (let k = 1; k <= blocks; k++) {
    const at = 10 * k
    d = d
      .part('fuse-block', `F${at}`, {
        ratingA: 200,
        breakingKA: 50,
        ways: Array.from({ length: loads }, () => ({ ratingA: 5, label: '' })),
      })
      .part('busbar', `W${at}`, { studs: 12, pole: 'negative', ratingA: 500 })
      .join(`W1.${k}r`, `F${at}.in`, {
        number: `feed${k}`,
        size: BIG,
        lengthM: 2,
        ...(k === 1 ? plant.feed : {}),
      })
      .join(`W${at}.12r`, k === 1 && plant.lead ? plant.lead : `W3.${k}r`, {
        number: `lead${k}`,
        size: BIG,
        lengthM: 2,
      })
    for (let n = 1; n <= loads; n++) {
      const E = `E${at}${n}`
      d = d
        .part('lamp', E, { currentA: 3 })
        .join(`F${at}.${n}`, `${E}.+`, { number: `${E}+`, size: '2.5mm2', lengthM: 2 })
        .join(`${E}.-`, `W${at}.${n}l`, { number: `${E}-`, size: '2.5mm2', lengthM: 2, returnOf: `${E}+` })
    }
  }
  return d
}

const sizes = fc.record({
  batteries: fc.integer({ min: 1, max: 2 }),
  blocks: fc.integer({ min: 1, max: 3 }),
  loads: fc.integer({ min: 2, max: 6 }),
})

/** Dangers and warnings, as text. */
const grave = (d: Design): string[] =>
  analyse(d)
    .findings.filter((f) => f.level === 'danger' || f.level === 'warning')
    .map((f) => `${f.rule} ${told(d, f)}`)
const rules = (d: Design): string[] => grave(d).map((line) => line.split(' ')[0]!)

const without = (d: Design, number: string): Design => ({
  ...d,
  conductors: d.conductors.filter((c) => c.number !== number),
})

const holds = (check: (size: Size) => void): void =>
  fc.assert(
    fc.property(sizes, (size) => {
      check(size)
    }),
    { numRuns: 8, seed: 7 },
  )

describe('one mistake reads as one thing', () => {
  it('the system as it is has none', () => holds((size) => expect(grave(systemOf(size).build())).toEqual([])))

  it('a main fuse that is bridged', () =>
    holds((size) => {
      const d = systemOf(size).join('F1.1', 'F1.2', { number: 'bridge', size: BIG, lengthM: 0.2 }).build()
      expect(rules(d)).toEqual(['P1'])
      expect(grave(without(d, 'bridge'))).toEqual([])
    }))

  it('a main fuse that is far too big for what is behind it, feeds and returns alike', () =>
    holds((size) => {
      const d = systemOf(size, { main: { ratingA: 400 } }).build()
      const found = rules(d)
      expect(found.filter((rule) => rule === 'P2')).toHaveLength(1)
      expect(new Set(found)).toEqual(new Set(['P2']))
    }))

  it('a length of a shared feed typed five hundred times too long', () =>
    holds((size) => {
      const d = systemOf(size, { feed: { lengthM: 1000 } }).build()
      expect(rules(d).filter((rule) => rule === 'E1')).toHaveLength(1)
      const { findings } = analyse(d)
      const [drop] = findings.filter((f) => f.rule === 'E1')
      expect(told(d, drop!)).toMatch(/^warning feed1 /)
      expect(drop!.parts).toHaveLength(size.loads)
    }))

  it('the lead of a return bar landed before the load-side shunt', () =>
    holds((size) => {
      if (size.blocks === 1) return
      const d = systemOf(size, { lead: 'W2.12r' }).build()
      expect(rules(d)).toEqual(['M1'])
      const [found] = analyse(d).findings.filter((f) => f.rule === 'M1')
      expect(told(d, found!)).toMatch(/^warning lead1 /)
      expect(sentence(found!, d).text).toContain('lead1')
    }))
})

describe('returns name the bare feeds that are theirs', () => {
  const tapped = (size: Size): Design =>
    ['a', 'b']
      .reduce(
        (d, name, i) =>
          d
            .part('lamp', `E${i + 1}`, { currentA: 1 })
            .join('G1.+', `E${i + 1}.+`, { number: `${name}+`, size: '1mm2', lengthM: 2 })
            .join(`E${i + 1}.-`, `W3.${10 + i}r`, { number: `${name}-`, size: '1mm2', lengthM: 2 }),
        systemOf(size),
      )
      .build()
  const bareOf = (d: Design, number: string): readonly string[] | null => {
    const { answers } = analyse(d)
    const run = answers.runs.get(d.conductors.find((c) => c.number === number)!.id)!
    if (!run.sustained || !('value' in run.sustained) || run.sustained.value.amps !== 'unlimited') return null
    return run.sustained.value.bare.map((id) => d.conductors.find((c) => c.id === id)!.number)
  }

  it('each its own where there are two, both where either is enough, and none once they are mended', () =>
    holds((size) => {
      const d = tapped(size)
      expect(rules(d)).toEqual(['P1', 'P1'])
      expect(bareOf(d, 'a-')).toEqual(['a+'])
      expect(bareOf(d, 'b-')).toEqual(['b+'])
      expect(bareOf(d, 'G1-')).toEqual(['a+', 'b+'])
      expect(bareOf(d, 'E101-')).toBeNull()
      expect(bareOf(without(d, 'a+'), 'G1-')).toEqual(['b+'])
      expect(bareOf(without(d, 'a+'), 'a-')).toBeNull()
      expect(bareOf(without(without(d, 'a+'), 'b+'), 'G1-')).toBeNull()
    }))

  it('an unrelated bare feed does not hide a return that is too thin', () => {
    const thin = tapped({ batteries: 1, blocks: 1, loads: 6 })
    const d = {
      ...thin,
      conductors: thin.conductors.map((c) => (c.number === 'lead1' ? { ...c, size: '1mm2' } : c)),
    }
    expect(grave(d).filter((line) => line.startsWith('P5'))).toEqual(['P5 danger lead1'])
  })
})
