import { describe, expect, it } from 'vitest'
import { analyse, type Design } from '../../../engine/index'
import type { Values } from '../../../engine/model/fields'
import { figures, mended, of, system, toldOf } from './system'

/** The design with values of a part changed. */
const having = (d: Design, designation: string, values: Values): Design => ({
  ...d,
  parts: d.parts.map((p) =>
    p.designation === designation ? { ...p, values: { ...p.values, ...values } } : p,
  ),
})
const laid = (d: Design, number: string, words: object): Design => ({
  ...d,
  conductors: d.conductors.map((c) => (c.number === number ? { ...c, ...words } : c)),
})
const sound = system().build()
const idOf = (d: Design, number: string): string => d.conductors.find((c) => c.number === number)!.id

describe('loads beyond what a thing bears', () => {
  it('C1: 10 A through 1 mm² at 55 °C around it: 19 A × 0.61 = 11.6 A is enough, for 12 A it is not', () => {
    // 0.61: IEC 60364-5-52, PVC 70 °C at 55 °C, confirmed through a printed table.
    const at = (currentA: number) =>
      having(
        laid({ ...sound, settings: { ...sound.settings, ambientC: 55 } }, 'E1+', { size: '1mm2' }),
        'E1',
        { currentA },
      )
    expect(toldOf('C1', at(11))).toEqual([])
    expect(toldOf('C1', at(12))).toEqual(['danger E1+'])
    expect(figures(of('C1', at(12))[0])).toEqual([12, 11.59])
  })

  it("C1: a designer's own figure counts, and is told where the drawing gives more than the conductor bears", () => {
    const own = (amps: number, currentA: number) =>
      having(laid(sound, 'E1+', { designCurrent: { amps, reason: 'measured' } }), 'E1', { currentA })
    expect(toldOf('C1', own(40, 10))).toEqual(['danger E1+'])
    expect(toldOf('C1', own(5, 40))).toEqual(['danger E1-', 'warning E1+'])
    expect(figures(of('C1', own(5, 40)).find((f) => f.level === 'warning'))).toEqual([40, 32])
    expect(toldOf('C1', own(5, 30))).toEqual([])
  })

  it('B1: 20 A of charge and 50 A of battery to 70 A of loads pass the block; the bar is rated 40 A', () => {
    // Loads of 15 A only: what can pass the block is the charge: 20 A to a battery that takes 50 A, or 15 A out.
    expect(toldOf('B1', having(sound, 'F2', { ratingA: 19 }))).toEqual(['danger F2'])
    expect(figures(of('B1', having(sound, 'F2', { ratingA: 19 }))[0])).toEqual([20, 19])
    expect(toldOf('B1', having(sound, 'F2', { ratingA: 20 }))).toEqual([])
  })

  it('F1: 15 A of load and 20 A of charge pass a main fuse of 19 A, not of 20 A', () => {
    expect(toldOf('F1', having(sound, 'F1', { ratingA: 19 }))).toEqual(['warning F1'])
    expect(figures(of('F1', having(sound, 'F1', { ratingA: 19 }))[0])).toEqual([20, 19])
    expect(toldOf('F1', having(sound, 'F1', { ratingA: 20 }))).toEqual([])
  })

  it('S1: an isolator of 19 A in the feed, or of 20 A', () => {
    const at = (ratingA: number) =>
      system({}, 'feed')
        .part('isolator', 'Q1', { ratingA })
        .join('F1.2', 'Q1.1', { size: '35mm2', lengthM: 0.5 })
        .join('Q1.2', 'F2.in', { size: '35mm2', lengthM: 0.5 })
        .build()
    expect(toldOf('S1', at(19))).toEqual(['danger Q1'])
    expect(figures(of('S1', at(19))[0])).toEqual([20, 19])
    expect(toldOf('S1', at(20))).toEqual([])
  })
})

describe('one load of unknown current', () => {
  // E2 unknown; E1 alone takes 90 A, the charger gives 20 A; "feed" of 6 mm² bears 54 A, the bar 40 A, the fuse 80 A.
  const unknown = (currentA: number) =>
    having(
      having(having(laid(sound, 'feed', { size: '6mm2' }), 'E1', { currentA }), 'E2', { currentA: null }),
      'F2',
      { ratingA: 40 },
    )

  it('does not hide what the others bring about without it', () => {
    const d = unknown(90)
    expect(analyse(d).answers.runs.get(idOf(d, 'feed'))!.design).toMatchObject({
      notChecked: 'missing-figure',
    })
    expect(toldOf('C1', d)).toContain('danger feed')
    expect(figures(of('C1', d).find((f) => f.conductors.includes(idOf(d, 'feed'))))).toEqual([90, 54])
    expect(toldOf('B1', d)).toContain('danger F2')
    expect(toldOf('F1', d)).toContain('warning F1')
  })

  it('nor what they load a fuse with for hours, nor their drop', () => {
    // 70 A of the 80 A fuse, which bears 64 A for hours. E1 over 2 + 12 m of 2.5 mm²: far beyond 10 %.
    const d = laid(unknown(70), 'E1-', { lengthM: 12 })
    expect(toldOf('F3', d)).toContain('warning F1')
    expect(toldOf('E1', d)).toEqual(['warning E1- E1'])
    const { drops } = analyse(d).answers
    expect([...drops.values()].filter((x) => 'notChecked' in x.drop).length).toBeGreaterThan(0)
  })

  it('and nothing is claimed where they stay within', () => {
    const d = unknown(30)
    expect(toldOf('C1', d)).toEqual([])
    expect(toldOf('B1', d)).toEqual([])
    expect(toldOf('D2', d)).toEqual(['not-checked E2'])
  })
})

describe('C2: no bound', () => {
  const two = (limits: Values) =>
    system()
      .part('battery', 'G2', { capacityAh: 100, internalMOhm: 4, ...limits })
      .part('fuse-cartridge', 'F3', { ratingA: 80, voltageV: 125, breakingKA: 20 })
      .join('G2.+', 'F3.1', { size: '35mm2', lengthM: 0.15 })
      .join('F3.2', 'F2.in', { size: '35mm2', lengthM: 1 })
      .join('G2.-', 'B1.b', { size: '35mm2', lengthM: 0.3 })
      .build()
  const free = (d: Design) => having(d, 'G1', { dischargeA: null, chargeA: null })

  it('two batteries without limits facing each other; one with limits bounds the other', () => {
    const d = free(two({ dischargeA: null, chargeA: null }))
    expect(toldOf('C2', d)).toEqual(['not-checked G1', 'not-checked G2'])
    expect(of('C2', d)[0]?.facts).toMatchObject({ charge: true, discharge: true })
    expect(toldOf('C2', two({ dischargeA: 100, chargeA: 50 }))).toEqual([])
    expect(toldOf('C2', free(two({ dischargeA: 100, chargeA: 50 })))).toEqual([])
  })

  it("a designer's own figures on every conductor do not hide it", () => {
    const d = free(two({ dischargeA: null, chargeA: null }))
    const own = {
      ...d,
      conductors: d.conductors.map((c) => ({ ...c, designCurrent: { amps: 1, reason: 'x' } })),
    }
    expect(toldOf('C2', own)).toEqual(['not-checked G1', 'not-checked G2'])
  })

  it('a solar controller, whose input takes what the array gives, is not asked for a limit', () => {
    const d = free(two({ dischargeA: null, chargeA: null }))
    const withSolar = having(d, 'T1', {})
    expect(of('C2', withSolar).every((f) => f.facts.part !== 'T1')).toBe(true)
  })
})

describe('C4: parallel conductors', () => {
  const pair = (size: string, lengthM: number) =>
    system({}, 'feed')
      .part('load', 'E5', { currentA: 60 })
      .join('F1.2', 'F2.in', { size: '16mm2', lengthM: 1, number: 'a' })
      .join('F1.2', 'F2.in', { size, lengthM, number: 'b' })
      .join('F2.in', 'E5.+', { size: '35mm2', lengthM: 1 })
      .join('E5.-', 'W2.4r', { size: '35mm2', lengthM: 1 })
      .build()

  it('1 m and 2 m of one size share as 2 to 1, and are told; equal ones are not', () => {
    expect(toldOf('C4', pair('16mm2', 2))).toEqual(['note a b'])
    const [found] = of('C4', pair('16mm2', 2))
    // 75 A in all. 16 mm² at 20 °C, 1.21 mΩ/m (IEC 60228) or 1.16 (DIN ISO 6722-3), two terminations of 0.02 mΩ each:
    // 2.36 to 1.2 in the one, 2.46 to 1.25 in the other: 66.3 % in both.
    expect(found?.facts.total).toBeCloseTo(75, 9)
    expect(Number(found?.facts.amps) / 75).toBeCloseTo(0.663, 3)
    expect(found?.facts.equal).toBeCloseTo(37.5, 9)
    expect(Number(found?.actual?.value)).toBeGreaterThan(Number(found?.facts.amps))
    expect(toldOf('C4', pair('16mm2', 1))).toEqual([])
  })

  it('equal ones are told where a poor termination takes one beyond its ampacity', () => {
    // 10 mm² of 0.1 m: 0.182 mΩ and 0.04 mΩ of terminations; the other's poor ones add 0.16 mΩ:
    // share 0.382 / (0.382 + 0.222) = 63 %: 47.4 A of 75 A, more than the 42 A of 4 mm² but less than 73 A of 10 mm².
    const short = (size: string) =>
      laid(laid(pair(size, 0.1), 'a', { size, lengthM: 0.1 }), 'b', { size, lengthM: 0.1 })
    expect(toldOf('C4', short('10mm2'))).toEqual([])
    const four = short('4mm2')
    // 4 mm²: 0.471 + 0.04 mΩ against 0.671 mΩ: 56.8 % of 75 A is 42.6 A, above 42 A; an equal share is 37.5 A.
    expect(toldOf('C4', four)).toEqual(['warning a b'])
    expect(figures(of('C4', four)[0])[1]).toBe(42)
    expect(Number(of('C4', four)[0]?.actual?.value)).toBeCloseTo(42.6, 0)
  })
})

describe('D1 to D5: figures that are missing or wrong', () => {
  it('D1: a length or a size', () => {
    expect(toldOf('D1', laid(sound, 'E1+', { lengthM: null }))).toEqual(['not-checked E1+'])
    expect(of('D1', laid(sound, 'E1+', { size: null }))[0]?.facts).toMatchObject({
      size: true,
      length: false,
    })
    expect(toldOf('D1', sound)).toEqual([])
  })

  it('D2: a load with neither current nor power; with either it is not', () => {
    const none = having(sound, 'E1', { currentA: null })
    expect(toldOf('D2', none)).toEqual(['not-checked E1'])
    expect(of('D2', none)[0]?.facts.fields).toEqual(['Running current or power'])
    expect(toldOf('D2', having(sound, 'E1', { currentA: null, powerW: 120 }))).toEqual([])
    const feed = sound.conductors.find((c) => c.number === 'feed')!
    expect(analyse(none).answers.runs.get(feed.id)?.design).toMatchObject({ notChecked: 'missing-figure' })
  })

  it('D2: a way of a block that is in use and has no fuse stated; one that is not in use may', () => {
    const ways = (second: number | null, third: number | null) =>
      having(system({}, 'charger').build(), 'F2', {
        ways: [
          { ratingA: 15, label: '' },
          { ratingA: second, label: '' },
          { ratingA: third, label: '' },
        ],
      })
    expect(toldOf('D2', ways(null, 30))).toEqual(['not-checked F2'])
    expect(of('D2', ways(null, 30))[0]?.facts.fields).toEqual(['Rating of way 2'])
    expect(toldOf('D2', ways(10, null))).toEqual([])
  })

  it('D3: surroundings beyond the factors of the rule set', () => {
    const hot = { ...sound, settings: { ...sound.settings, ambientC: 75 } }
    expect(of('D3', hot)).toHaveLength(1)
    expect(of('D3', hot)[0]?.conductors).toHaveLength(sound.conductors.length)
    expect(toldOf('D3', sound)).toEqual([])
  })

  it('D5: 60 W behind a converter to 12 V in a 24 V system count as 5 A once the voltage is typed', () => {
    const d = system({ systemV: 24 }, 'charger')
      .part('step-down', 'T2', { outputA: 10, outputV: 12 })
      .part('fuse-blade', 'F4', { ratingA: 10 })
      .part('load', 'E7', { powerW: 60 })
      .join('F2.3', 'T2.in+', { size: '6mm2', lengthM: 1 })
      .join('T2.-', 'W2.5r', { size: '6mm2', lengthM: 1 })
      .join('T2.out+', 'F4.1', { size: '2.5mm2', lengthM: 0.2 })
      .join('F4.2', 'E7.+', { size: '2.5mm2', lengthM: 1, number: 'E7+' })
      .join('E7.-', 'W2.6r', { size: '2.5mm2', lengthM: 1 })
      .build()
    const amps = (of: Design) => {
      const run = analyse(of).answers.runs.get(of.conductors.find((c) => c.number === 'E7+')!.id)!
      return 'value' in run.design ? run.design.value : null
    }
    expect(toldOf('D5', d)).toEqual(['warning E7'])
    expect(figures(of('D5', d)[0])).toEqual([24, 12])
    expect(amps(d)).toBeCloseTo(2.5, 9)
    const after = mended(d, of('D5', d)[0])
    expect(toldOf('D5', after)).toEqual([])
    expect(amps(after)).toBeCloseTo(5, 9)
  })

  it('a mesh with a length missing, or a contact without a rating, gives no figure at all', () => {
    const ring = (lengthM: number | null, ratingA: number | null) =>
      system()
        .part('isolator', 'Q1', { ratingA })
        .join('F1.2', 'Q1.1', { size: '35mm2', lengthM, number: 'x' })
        .join('Q1.2', 'F2.in', { size: '35mm2', lengthM: 1, number: 'y' })
        .build()
    const forward = (d: Design) =>
      analyse(d).answers.runs.get(d.conductors.find((c) => c.number === 'feed')!.id)!.forward
    expect(forward(ring(1, 150))).toHaveProperty('value')
    expect(forward(ring(null, 150))).toMatchObject({ notChecked: 'missing-run' })
    expect(forward(ring(1, null))).toMatchObject({ notChecked: 'missing-figure' })
    // With the isolator open the feed carries all 20 A of charge, more than its share in the ring.
    const open = forward(ring(1, 150))
    const back = analyse(ring(1, 150)).answers.runs.get(
      sound.conductors.find((c) => c.number === 'feed')!.id,
    )!.backward
    expect('value' in open && open.value.amps).toBeCloseTo(15, 9)
    expect('value' in back && back.value.amps).toBeCloseTo(20, 9)
  })
})
