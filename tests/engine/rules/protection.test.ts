import { describe, expect, it } from 'vitest'
import { analyse, ruleSetByKey } from '../../../engine/index'
import { sentence } from '../../../engine/words/findings'
import { figures, mended, of, system, toldOf } from './system'

/**
 * Ampacities: DIN ISO 6722-3 at 30 °C, 70 °C PVC, as restated in public (1 mm² 19 A, 1.5 mm² 24 A, 2.5 mm² 32 A,
 * 35 mm² 158 A); the rule set allows a device of 100 % of that, and 0.2 m ahead of the first device.
 */
describe('P1 to P4: feeds', () => {
  it('a tap straight off the battery is unprotected', () => {
    const d = system()
      .part('lamp', 'E3', { currentA: 1 })
      .join('G1.+', 'E3.+', { size: '1mm2', lengthM: 2, number: 'tap' })
      .join('E3.-', 'W2.4r', { size: '1mm2', lengthM: 2, number: 'tap-' })
      .build()
    expect(toldOf('P1', d)).toEqual(['danger tap G1'])
    expect(figures(of('P1', d)[0])).toEqual(['unlimited', undefined])
  })

  it('the same tap through a 10 A fuse at the battery is not', () => {
    const d = system()
      .part('fuse-blade', 'F3', { ratingA: 10 })
      .part('lamp', 'E3', { currentA: 1 })
      .join('G1.+', 'F3.1', { size: '1.5mm2', lengthM: 0.2, number: 'tap' })
      .join('F3.2', 'E3.+', { size: '1mm2', lengthM: 2, number: 'on' })
      .join('E3.-', 'W2.4r', { size: '1mm2', lengthM: 2, number: 'on-' })
      .build()
    expect(toldOf('P1', d)).toEqual([])
    expect(toldOf('P4', d)).toContain('note tap')
  })

  it('0.21 m ahead of the fuse is beyond the 0.2 m of the rule set, 0.2 m is not', () => {
    const at = (lengthM: number) => {
      const d = system().build()
      return {
        ...d,
        conductors: d.conductors.map((c) => (c.number === 'main' ? { ...c, lengthM } : c)),
      }
    }
    expect(ruleSetByKey('metric-automotive')?.nearSource.open.value).toBe(0.2)
    expect(toldOf('P1', at(0.21))).toEqual(['danger main G1'])
    expect(toldOf('P1', at(0.2))).toEqual([])
    expect(figures(of('P4', at(0.2))[0])).toEqual([0.2, 0.2])
  })

  it('ahead of the first device, within the allowance, it must still bear what that device lets through', () => {
    const main = (size: string) => {
      const d = system().build()
      return { ...d, conductors: d.conductors.map((c) => (c.number === 'main' ? { ...c, size } : c)) }
    }
    // 80 A through 10 mm² (73 A) and through 16 mm² (98 A).
    expect(toldOf('P2', main('10mm2'))).toEqual(['danger main F1'])
    expect(figures(of('P2', main('10mm2'))[0])).toEqual([80, 73])
    expect(toldOf('P4', main('10mm2'))).toEqual([])
    expect(toldOf('P2', main('16mm2'))).toEqual([])
    expect(toldOf('P4', main('16mm2'))).toEqual(['note main'])
  })

  it('two fuses on one lead ahead of them add up, told as what it is', () => {
    const d = system()
      .part('busbar', 'W3', { studs: 4, pole: 'positive', ratingA: 300 })
      .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
      .part('fuse-blade', 'F3', { ratingA: 30 })
      .part('fuse-blade', 'F4', { ratingA: 30 })
      .part('lamp', 'E3', { currentA: 5 })
      .join('G2.+', 'W3.1l', { size: '4mm2', lengthM: 0.1, number: 'lead' })
      .join('W3.1r', 'F3.1', { size: '4mm2', lengthM: 0.05, number: 'one' })
      .join('W3.2r', 'F4.1', { size: '4mm2', lengthM: 0.05, number: 'two' })
      .join('F3.2', 'E3.+', { size: '4mm2', lengthM: 1, number: 'on' })
      .join('E3.-', 'G2.-', { size: '4mm2', lengthM: 1, number: 'on-' })
      .build()
    expect(toldOf('P3', d)).toEqual(['warning lead F3 F4'])
    const [finding] = of('P3', d)
    expect(figures(finding)).toEqual([60, 42])
    expect(sentence(finding!, d).text).toContain('lead runs ahead of the first devices')
  })

  it('a fault found at one end stands though the rating that the other end needs is missing', () => {
    // F3 without a rating feeds the far end; the near end is joined to the battery through nothing.
    const d = system()
      .part('fuse-blade', 'F3')
      .join('G1.+', 'F2.in', { size: '4mm2', lengthM: 2, number: 'bare' })
      .join('F1.2', 'F3.1', { size: '4mm2', lengthM: 1, number: 'in' })
      .join('F3.2', 'F2.in', { size: '4mm2', lengthM: 1, number: 'out' })
      .build()
    expect(toldOf('P1', d)).toEqual(['danger bare feed in out G1'])
  })

  it('P2: a 30 A fuse before 1.5 mm² (24 A) is too big, a 20 A fuse is not', () => {
    const at = (ratingA: number) =>
      system()
        .part('fuse-blade', 'F3', { ratingA })
        .part('lamp', 'E3', { currentA: 5 })
        .join('F1.2', 'F3.1', { size: '16mm2', lengthM: 0.2, number: 'in' })
        .join('F3.2', 'E3.+', { size: '1.5mm2', lengthM: 2, number: 'out' })
        .join('E3.-', 'W2.4r', { size: '4mm2', lengthM: 2, number: 'out-' })
        .build()
    expect(toldOf('P2', at(30))).toEqual(['danger out F3'])
    expect(figures(of('P2', at(30))[0])).toEqual([30, 24])
    expect(toldOf('P2', at(20))).toEqual([])
  })

  it('P3: 15 A and 15 A feed 1.5 mm² together with 30 A of 24 A; with 10 A and 10 A it is within', () => {
    const at = (ratingA: number) =>
      system()
        .part('fuse-blade', 'F3', { ratingA })
        .part('fuse-blade', 'F4', { ratingA })
        .part('busbar', 'W3', { studs: 4, pole: 'positive', ratingA: 100 })
        .part('lamp', 'E3', { currentA: 5 })
        .join('F1.2', 'F3.1', { size: '35mm2', lengthM: 0.2 })
        .join('F1.2', 'F4.1', { size: '35mm2', lengthM: 0.2 })
        .join('F3.2', 'W3.1l', { size: '2.5mm2', lengthM: 1 })
        .join('F4.2', 'W3.2l', { size: '2.5mm2', lengthM: 1 })
        .join('W3.1r', 'E3.+', { size: '1.5mm2', lengthM: 2, number: 'out' })
        .join('E3.-', 'W2.4r', { size: '4mm2', lengthM: 2 })
        .build()
    expect(toldOf('P3', at(15))).toEqual(['warning out F3 F4'])
    expect(figures(of('P3', at(15))[0])).toEqual([30, 24])
    expect(toldOf('P3', at(10))).toEqual([])
  })

  it('a charger of unknown size is not checked, and no danger is made of it', () => {
    const known = system({}, 'charger').join('F2.3', 'T1.+', { size: '6mm2', lengthM: 1, number: 'T1+' })
    const d = known.join('T1.-', 'W1.2r', { size: '6mm2', lengthM: 1, number: 'T1-' }).build()
    const unknown = {
      ...d,
      parts: d.parts.map((p) =>
        p.designation === 'T1' ? { ...p, values: { ...p.values, outputA: null } } : p,
      ),
    }
    const { answers, findings } = analyse(unknown)
    expect(findings.filter((f) => f.level === 'danger')).toEqual([])
    expect(toldOf('D2', unknown)).toEqual(['not-checked T1'])
    const run = answers.runs.get(d.conductors.find((c) => c.number === 'T1+')!.id)!
    expect(run.verdict).toMatchObject({ notChecked: 'missing-figure' })
    expect(run.sustained).toBeNull()
  })
})

describe('P5: returns', () => {
  const at = (size: string) =>
    system({}, 'return1').join('E1.-', 'W2.2r', { size, lengthM: 2, number: 'E1-', returnOf: 'E1+' }).build()

  it('1 mm² (19 A) behind a 25 A fuse is too thin, behind a 15 A fuse it is not', () => {
    // E1 short-circuited: what its own fuse carries for ever.
    const thin = at('1mm2')
    const raised = {
      ...thin,
      parts: thin.parts.map((p) =>
        p.designation === 'F2'
          ? {
              ...p,
              values: {
                ...p.values,
                ways: [
                  { ratingA: 25, label: 'Heater' },
                  { ratingA: 10, label: 'Light' },
                  { ratingA: 30, label: 'Charger' },
                ],
              },
            }
          : p,
      ),
    }
    expect(toldOf('P5', thin)).toEqual([])
    expect(toldOf('P5', raised)).toEqual(['danger E1-'])
    expect(figures(of('P5', raised)[0])).toEqual([25, 19])
    expect(of('P5', raised)[0]?.fix?.title).toBe('Make E1- as thick as its feed, 2.5 mm²')
    expect(toldOf('P5', mended(raised, of('P5', raised)[0]))).toEqual([])
  })

  it('a feed as thin as its return offers no fix', () => {
    const d = at('1mm2')
    const both = {
      ...d,
      conductors: d.conductors.map((c) => (c.number === 'E1+' ? { ...c, size: '1mm2' } : c)),
      parts: d.parts.map((p) =>
        p.designation === 'F2'
          ? { ...p, values: { ...p.values, ways: [{ ratingA: 25 }, { ratingA: 10 }, { ratingA: 30 }] } }
          : p,
      ),
    }
    expect(of('P5', both as typeof d)[0]?.fix).toBeUndefined()
  })
})
