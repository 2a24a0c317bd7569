import { describe, expect, it } from 'vitest'
import { analyse, type Design } from '../../../engine/index'
import { design } from '../../build'
import { figures, mended, of, system, toldOf } from './system'

const size = '2.5mm2'
const sound = system().build()

describe('J1 to J8', () => {
  it('a sound system has none of them', () => {
    for (const rule of ['J1', 'J2', 'J3', 'J4', 'J5', 'J6', 'J7', 'J8', 'X1', 'X2', 'X3', 'D4', 'L1', 'V1'])
      expect(toldOf(rule, sound), rule).toEqual([])
  })

  it('J1: the feed joined to the return: the sources are named, not every load beside them', () => {
    const d = system().join('F2.in', 'W1.6r', { size, lengthM: 1 }).build()
    expect(toldOf('J1', d)).toEqual(['danger G1', 'danger T1'])
    expect(toldOf('J3', d)).toEqual([])
  })

  it('J1: a relay that turns a motor either way round joins nothing to itself', () => {
    const d = system()
      .part('relay-changeover', 'K1', { ratingA: 30, breakRatingA: 20 })
      .part('relay-changeover', 'K2', { ratingA: 30, breakRatingA: 20 })
      .part('motor', 'M1', { currentA: 4 })
      .join('F2.2', 'K1.87', { size, lengthM: 1 })
      .join('F2.2', 'K2.87', { size, lengthM: 1 })
      .join('K1.87a', 'W2.4r', { size, lengthM: 1 })
      .join('K2.87a', 'W2.5r', { size, lengthM: 1 })
      .join('K1.30', 'M1.+', { size, lengthM: 1 })
      .join('K2.30', 'M1.-', { size, lengthM: 1 })
      .build()
    expect(toldOf('J1', d).filter((t) => t.startsWith('danger'))).toEqual([])
    expect(toldOf('J7', d)).toEqual([])
  })

  it('J2: one pole, or none', () => {
    const d = system().part('lamp', 'E3', { currentA: 1 }).part('lamp', 'E4', { currentA: 1 })
    const one = d.join('F2.1', 'E3.+', { size, lengthM: 1 }).build()
    expect(toldOf('J2', one)).toEqual(['warning E3', 'note E4'])
  })

  it('J2: an alternator whose case is its negative is joined, once something else is on the frame', () => {
    const d = system({}, 'charger')
      .part('alternator', 'G5', { ratedA: 25, throughCase: true })
      .join('F2.3', 'G5.+', { size: '6mm2', lengthM: 1 })
    expect(toldOf('J2', d.part('lamp', 'E3').build())).toEqual(['warning G5', 'note T1', 'note E3'])
    const bonded = d.part('chassis-point', 'X1').join('X1.31', 'W1.6r', { size: '16mm2', lengthM: 1 }).build()
    expect(toldOf('J2', bonded)).toEqual(['note T1'])
  })

  it('J3: a reversed battery', () => {
    const d = system()
      .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 50 })
      .join('G2.-', 'F2.in', { size: '35mm2', lengthM: 1 })
      .join('G2.+', 'W1.6r', { size: '35mm2', lengthM: 1 })
      .build()
    expect(of('J3', d)).toHaveLength(1)
    expect(of('J3', d)[0]?.level).toBe('danger')
    expect(toldOf('J3', d)[0]).toContain('G2')
  })

  it('J4: two conductors on a screw that takes one', () => {
    const d = system()
      .part('relay', 'K1', { ratingA: 30 })
      .part('monitor-hub', 'K5', { dataPorts: 1 })
      .join('B1.sense-b', 'B2.sense-b', { size: '0.75mm2', lengthM: 1, number: 's1' })
      .join('B1.sense-b', 'B2.sense-s', { size: '0.75mm2', lengthM: 1, number: 's2' })
      .build()
    expect(toldOf('J4', d)).toEqual(['warning s1 s2 B1'])
    expect(figures(of('J4', d)[0])).toEqual([2, 1])
  })

  it('J5: mains on an extra-low-voltage terminal', () => {
    const d = system()
      .part('inverter', 'T3', { powerW: 500 })
      .join('T3.mains', 'F2.in', { size, lengthM: 1, number: 'm' })
      .build()
    expect(toldOf('J5', d)).toEqual(['danger m'])
  })

  it('J6: a load on a bar that nothing feeds', () => {
    const d = system()
      .part('busbar', 'W5', { studs: 4, pole: 'positive', ratingA: 100 })
      .part('lamp', 'E3', { currentA: 2 })
      .join('W5.1l', 'E3.+', { size, lengthM: 1 })
      .join('E3.-', 'W2.4r', { size, lengthM: 1 })
    expect(toldOf('J6', d.build())).toEqual(['warning E3'])
    expect(toldOf('J6', d.join('F2.1', 'W5.2l', { size, lengthM: 1 }).build())).toEqual([])
  })

  it('J7: a load the wrong way round, mended by exchanging its conductors', () => {
    const d = system({}, 'return1')
      .part('load', 'E3', { currentA: 2 })
      .join('F2.1', 'E3.-', { size, lengthM: 1 })
      .join('E3.+', 'W2.4r', { size, lengthM: 1 })
      .join('E1.-', 'W2.2r', { size, lengthM: 2 })
      .build()
    expect(toldOf('J7', d)).toEqual(['danger E3'])
    expect(toldOf('J7', mended(d, of('J7', d)[0]))).toEqual([])
  })

  it('J8: a conductor with both ends on one bar, or on one terminal', () => {
    const d = system().join('W1.5l', 'W1.6l', { size, lengthM: 1, number: 'o' }).build()
    expect(toldOf('J8', d)).toEqual(['note o'])
  })
})

describe('X1 to X3, D4, L1, V1', () => {
  it('X1: a part of an unknown kind; what could run through it is not checked, the rest is', () => {
    const d: Design = {
      ...sound,
      parts: sound.parts.map((p) => (p.designation === 'E1' ? { ...p, kind: 'from-tomorrow' } : p)),
    }
    expect(toldOf('X1', d)).toEqual(['not-checked E1'])
    const { answers } = analyse(d)
    const run = (number: string) => answers.runs.get(d.conductors.find((c) => c.number === number)!.id)!
    expect(run('E1+').design).toHaveProperty('notChecked')
    expect(run('feed').design).toHaveProperty('notChecked')
    expect(run('E1+').verdict).toHaveProperty('notChecked')
    expect(run('E2+').design).toEqual({ value: 5 })
  })

  it('X2: a rule set that is not known', () => {
    const d = { ...sound, settings: { ...sound.settings, ruleSet: 'of-tomorrow' } }
    expect(toldOf('X2', d)).toEqual(['not-checked'])
  })

  it('X3: a ring of more isolators than can be tried; what lies in it is not checked', () => {
    let d = system()
    for (let i = 0; i < 9; i++)
      d = d
        .part('isolator', `Q${i}`, { ratingA: 100 })
        .join('F1.2', `Q${i}.1`, { size: '16mm2', lengthM: 1 })
        .join(`Q${i}.2`, 'F2.in', { size: '16mm2', lengthM: 1 })
    const ring = d.build()
    expect(of('X3', ring)[0]?.parts).toHaveLength(9)
    const feed = analyse(ring).answers.runs.get(ring.conductors.find((c) => c.number === 'feed')!.id)!
    expect(feed.forward).toMatchObject({ notChecked: 'too-many-positions' })
  })

  it('D4: a load on a panel alone has no voltage to drop from', () => {
    const d = design()
      .part('pv-array', 'G1', { vocV: 22, iscA: 5, vmpV: 18, impA: 4.5, maxFuseA: 15 })
      .part('fan', 'M1', { currentA: 2 })
      .join('G1.+', 'M1.+', { size, lengthM: 2 })
      .join('G1.-', 'M1.-', { size, lengthM: 2 })
      .build()
    expect(toldOf('D4', d)).toEqual(['not-checked M1'])
    expect(of('D4', d)[0]?.facts.code).toBe('no-battery-feeds-it')
  })

  it('L1: more data leads than ports, and a lead that is not joined', () => {
    const hub = (dataPorts: number) =>
      system()
        .part('monitor-hub', 'K5', { dataPorts })
        .part('shunt', 'B5', { data: 'wired' })
        .part('shunt', 'B6', { data: 'wired' })
        .join('B5.data', 'K5.data1', { size: '0.75mm2', lengthM: 1 })
        .build()
    expect(toldOf('L1', hub(1))).toEqual(['warning B6'])
    expect(figures(of('L1', hub(1))[0])).toEqual([2, 1])
    expect(figures(of('L1', hub(3))[0])).toEqual([2, 3])
  })

  it('V1: 22.0 V, −0.30 %/K, −5 °C is 23.98 V: too much for 23.9 V, not for 24 V', () => {
    // The law is that of IEC 62548 and NFPA 70; the example is worked by hand: 22 · (1 + 0.003 · 30) = 23.98.
    const at = (pvMaxV: number, coldestC = -5, vocPerKelvin: number | null = -0.3) =>
      design({ coldestC })
        .part('pv-array', 'G1', { vocV: 22, iscA: 5, vmpV: 18, impA: 4.5, maxFuseA: 15, vocPerKelvin })
        .part('solar-controller', 'T1', { outputA: 20, pvMaxV, data: 'none' })
        .join('G1.+', 'T1.pv+', { size, lengthM: 3 })
        .join('G1.-', 'T1.pv-', { size, lengthM: 3 })
        .build()
    expect(toldOf('V1', at(23.9))).toEqual(['danger T1'])
    expect(figures(of('V1', at(23.9))[0])).toEqual([23.98, 23.9])
    expect(toldOf('V1', at(24))).toEqual([])
    expect(toldOf('V1', at(24, -50, null))).toEqual(['not-checked T1'])
  })

  it('nothing at all gives nothing', () => {
    expect(analyse(design().build()).findings).toEqual([])
  })
})
