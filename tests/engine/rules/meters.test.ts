import { describe, expect, it } from 'vitest'
import { analyse } from '../../../engine/index'
import { mistakes } from '../../scenarios/demos/mistakes'
import { figures, mended, of, system, told, toldOf } from './system'

/** Shares by hand: a return lands on one side of a shunt or the other. Common practice, no source. */
const size = '2.5mm2'

describe('M1: loads past the load-side shunt', () => {
  const past = system({}, 'return1').join('E1.-', 'W1.3r', { size, lengthM: 2, number: 'E1-' }).build()

  it('a return on the source bar is found, with what is not shown; on the load bar it is not', () => {
    expect(toldOf('M1', past)).toEqual(['warning E1- E1 B2'])
    expect(of('M1', past)[0]?.facts.amps).toBe(10)
    expect(toldOf('M1', system().build())).toEqual([])
  })

  it('its fix takes the finding away and brings no other', () => {
    const before = analyse(past).findings.map((f) => f.key)
    const after = analyse(mended(past, of('M1', past)[0])).findings.map((f) => f.key)
    expect(after).toEqual(before.filter((key) => !key.startsWith('M1')))
  })

  it('so it is in the demo with planted mistakes', () => {
    const d = mistakes()
    const [found] = of('M1', d)
    const { findings } = analyse(d)
    const after = analyse(mended(d, found)).findings.map((f) => f.key)
    expect(after).toEqual(findings.map((f) => f.key).filter((key) => key !== found?.key))
  })

  it('two load-side shunts may share the loads between them', () => {
    const d = system({}, 'return1')
      .part('shunt', 'B3', { role: 'load', ratingA: 100, data: 'none' })
      .join('E1.-', 'B3.s', { size, lengthM: 2, number: 'E1-' })
      .join('B3.b', 'W1.3r', { size: '16mm2', lengthM: 0.3 })
      .build()
    expect(toldOf('M1', d)).toEqual([])
  })

  it('a load that nothing feeds is not blamed', () => {
    const d = system().part('lamp', 'E3', { currentA: 1 }).join('F2.1', 'E3.+', { size, lengthM: 1 }).build()
    expect(toldOf('M1', d)).toEqual([])
    expect(toldOf('J2', d)).toEqual(['warning E3'])
  })
})

describe('M2 and M3', () => {
  it('M2: a charger that returns through the load-side shunt', () => {
    const d = system({}, 'charger')
      .join('F2.3', 'T1.+', { size: '6mm2', lengthM: 1 })
      .join('T1.-', 'W2.5r', { size: '6mm2', lengthM: 1 })
      .build()
    expect(toldOf('M2', d)).toEqual(['warning T1 B2'])
    expect(toldOf('M2', system().build())).toEqual([])
  })

  it('M3: a second return beside the shunt takes its share by resistance', () => {
    // Way 1, W2 to W1 through B2: 0.5 m and 0.3 m of 35 mm² (0.554 mΩ/m, IEC 60228 class 5, or the rule of the
    // catalogue), four terminations, and 50 mV / 150 A of the shunt. Way 2: 1 m of 16 mm². The figure is checked
    // against the resistances of the answers themselves.
    const d = system().join('W2.6r', 'W1.6r', { size: '16mm2', lengthM: 1, number: 'beside' }).build()
    const { answers } = analyse(d)
    const ohms = (number: string): number => {
      const answer = answers.runs.get(d.conductors.find((c) => c.number === number)!.id)!.ohms
      return 'value' in answer ? answer.value : Number.NaN
    }
    const through = ohms('back3') + ohms('back4') + 0.05 / 150
    const share = ohms('beside') / (ohms('beside') + through)
    expect(toldOf('M3', d)).toEqual(['warning E1 B2', 'warning E2 B2'])
    expect(of('M3', d)[0]?.actual?.value).toBeCloseTo(100 * share, 6)
  })

  it('M3 gives no figure where a length is missing, and the reading error is not checked', () => {
    const d = system().join('W2.6r', 'W1.6r', { size: '16mm2', lengthM: null, number: 'beside' }).build()
    expect(toldOf('M3', d)).toEqual(['warning E1 B2', 'warning E2 B2'])
    expect(of('M3', d)[0]?.actual).toBeUndefined()
    const shunt = [...analyse(d).answers.shunts.values()].find((s) => s.role === 'load')
    expect(shunt?.over).toMatchObject({ notChecked: 'missing-run' })
  })
})

describe('M4: shunts the wrong way round', () => {
  const reversed = system({}, 'loadShunt')
    .join('W1.1r', 'B2.s', { size: '35mm2', lengthM: 0.3 })
    .join('B2.b', 'W2.1l', { size: '35mm2', lengthM: 0.5 })
    .build()

  it('is found, and its fix exchanges the conductors', () => {
    expect(toldOf('M4', reversed)).toEqual(['warning B2'])
    expect(toldOf('M4', system().build())).toEqual([])
    const after = mended(reversed, of('M4', reversed)[0])
    expect(analyse(after).findings.map((f) => told(after, f))).toEqual(
      analyse(system().build()).findings.map((f) => told(system().build(), f)),
    )
  })

  it('a load that passes it by is found all the same', () => {
    const d = system({}, 'loadShunt', 'return1')
      .join('W1.1r', 'B2.s', { size: '35mm2', lengthM: 0.3 })
      .join('B2.b', 'W2.1l', { size: '35mm2', lengthM: 0.5 })
      .join('E1.-', 'W1.3r', { size, lengthM: 2, number: 'E1-' })
      .build()
    expect(toldOf('M4', d)).toEqual(['warning B2'])
    expect(toldOf('M1', d)).toEqual(['warning E1- E1 B2'])
  })
})

describe('M5 to M9', () => {
  it('M5: a shunt inside the lead of one of two batteries', () => {
    const second = (end: string) =>
      system()
        .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
        .part('fuse-cartridge', 'F3', { ratingA: 80, voltageV: 125, breakingKA: 20 })
        .join('G2.+', 'F3.1', { size: '35mm2', lengthM: 0.15 })
        .join('F3.2', 'F2.in', { size: '35mm2', lengthM: 1 })
        .join('G2.-', end, { size: '35mm2', lengthM: 0.3 })
        .build()
    expect(toldOf('M5', second('W1.5r'))).toEqual(['warning B1'])
    expect(toldOf('M5', second('B1.b'))).toEqual([])
  })

  it('M6: a charger on the battery post behind the battery shunt', () => {
    const d = system({}, 'charger')
      .join('F2.3', 'T1.+', { size: '6mm2', lengthM: 1 })
      .join('T1.-', 'B1.b', { size: '6mm2', lengthM: 1 })
      .build()
    expect(toldOf('M6', d)).toEqual(['warning T1 B1'])
    expect(toldOf('M6', system().build())).toEqual([])
  })

  it('M7: 15 A through a shunt of 20 A is beyond two thirds, 10 A is not; 25 A is beyond the rating', () => {
    // Loads of 10 A and 5 A pass B2; two thirds of 20 A are 13.3 A.
    const at = (ratingA: number) => {
      const d = system().build()
      return {
        ...d,
        parts: d.parts.map((p) => (p.designation === 'B2' ? { ...p, values: { ...p.values, ratingA } } : p)),
      }
    }
    expect(toldOf('M7', at(20))).toEqual(['note B2'])
    expect(figures(of('M7', at(20))[0])).toEqual([15, 13.333])
    expect(toldOf('M7', at(14))).toEqual(['danger B2'])
    expect(toldOf('M7', at(23))).toEqual([])
  })

  it('M8: a load-side shunt that no load passes', () => {
    const d = system({}, 'loadShunt').join('W1.1r', 'W2.1l', { size: '35mm2', lengthM: 0.5 }).build()
    expect(toldOf('M8', d)).toEqual(['warning B2'])
    expect(toldOf('M1', d)).toEqual([])
    expect(toldOf('M8', system().build())).toEqual([])
  })

  it('M9: the starting circuit returns through the battery shunt of the house', () => {
    const starting = (end: string) =>
      system()
        .part('starting-battery', 'G9', { capacityAh: 80, dischargeA: 400, chargeA: 80 })
        .part('fuse-bolt-in', 'F9', { ratingA: 60, breakingKA: 10 })
        .part('load', 'E9', { currentA: 12 })
        .join('G9.+', 'F9.1', { size: '16mm2', lengthM: 0.15 })
        .join('F9.2', 'E9.+', { size: '16mm2', lengthM: 1 })
        .join('G9.-', 'B1.b', { size: '16mm2', lengthM: 1 })
        .join('E9.-', end, { size: '16mm2', lengthM: 1 })
        .build()
    const d = starting('W1.5r')
    expect(toldOf('M9', d)).toEqual(['warning B1'])
    expect(figures(of('M9', d)[0])).toEqual([12, undefined])
    expect(toldOf('M9', starting('B1.b'))).toEqual([])
  })
})
