import { describe, expect, it } from 'vitest'
import { envelopes } from '../../../engine/calc/envelope'
import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import type { MaybeUnlimited } from '../../../engine/units'

const wire = (id: string, from: string, to: string, resistance = 0.01): NetworkBranch => ({
  id,
  from,
  to,
  resistance,
  kind: 'conductor',
})

const device = (
  id: string,
  positive: string,
  negative: string,
  min: MaybeUnlimited,
  max: MaybeUnlimited,
): NetworkDevice => ({ id, positive, negative, min, max, sustainedFault: max })

const form = (branches: NetworkBranch[], devices: NetworkDevice[]): NetworkForm => ({
  nodes: [
    ...new Set([
      ...branches.flatMap((b) => [b.from, b.to]),
      ...devices.flatMap((d) => [d.positive, d.negative]),
    ]),
  ],
  branches,
  devices,
})

/** [min, max] by branch id. */
function ranges(f: NetworkForm): Map<string, [MaybeUnlimited, MaybeUnlimited]> {
  const p = prepare(f)
  const r = envelopes(p)
  return new Map(
    f.branches.map((b, e) => {
      const found = r.envelope(e)
      if ('noAnswer' in found) throw new Error(found.noAnswer)
      return [b.id, [found.min, found.max]]
    }),
  )
}

describe('worst-case currents, worked by hand', () => {
  it('takes the lesser of what one side supplies and the other draws', () => {
    // Battery 100 A out, 50 A in; inverter 150 A, lamps 20 A, charger 30 A on the bar.
    // Battery lead: out min(100, 150 + 20) = 100; in min(50, 30) = 30.
    // Inverter lead: min(100 + 30, 150) = 130. Lamp lead: 20. Charger lead: min(30, 50 + 150 + 20) = 30.
    const f = form(
      [
        wire('battery', 'post', 'bar'),
        wire('inverter', 'bar', 'inv'),
        wire('lamps', 'bar', 'lamp'),
        wire('charger', 'chg', 'bar'),
      ],
      [
        device('B', 'post', 'minus', -50, 100),
        device('I', 'inv', 'minus', -150, 0),
        device('L', 'lamp', 'minus', -20, 0),
        device('C', 'chg', 'minus', 0, 30),
      ],
    )
    expect(Object.fromEntries(ranges(f))).toEqual({
      battery: [-30, 100],
      inverter: [0, 130],
      lamps: [0, 20],
      charger: [0, 30],
    })
    const p = prepare(f)
    expect(envelopes(p).witness(p.branchIndex.get('inverter')!, 'max')).toEqual({
      devices: [
        { device: 'B', current: 100 },
        { device: 'I', current: -130 },
        { device: 'C', current: 30 },
      ],
      ray: [],
    })
  })

  it('divides a meshed part by its resistances', () => {
    // Feed of two parallel conductors, 1 mΩ and 3 mΩ, to a load of 80 A: 60 A and 20 A.
    const f = form(
      [wire('short', 'post', 'bar', 0.001), wire('long', 'post', 'bar', 0.003)],
      [device('B', 'post', 'minus', 0, 200), device('L', 'bar', 'minus', -80, 0)],
    )
    const r = ranges(f)
    expect(r.get('short')![1]).toBeCloseTo(60, 9)
    expect(r.get('long')![1]).toBeCloseTo(20, 9)
    expect([r.get('short')![0], r.get('long')![0]]).toEqual([0, 0])
  })

  it('finds the worst mix in a ring, which is not all loads on', () => {
    // Ring of equal conductors s-a, a-b, b-s. A load of 30 A at a sends 10 A backwards through b (a-b carries −10),
    // one of 60 A at b sends 20 A forwards: −10 and +20, each with the other load off.
    const f = form(
      [wire('sa', 's', 'a'), wire('ab', 'a', 'b'), wire('bs', 'b', 's')],
      [
        device('B', 's', 'minus', 0, 500),
        device('A', 'a', 'minus', -30, 0),
        device('L', 'b', 'minus', -60, 0),
      ],
    )
    const [min, max] = ranges(f).get('ab')!
    expect(min).toBeCloseTo(-10, 9)
    expect(max).toBeCloseTo(20, 9)
  })

  it('balances each circuit on a shared negative by itself', () => {
    // The 150 A starter draws from the starting battery only, which gives 100 A; the house battery's 200 A cannot help.
    // Chassis strap: 100 A back to the starting battery, nothing of the house passes it.
    const f = form(
      [wire('strap', 'chassis', 'minus'), wire('cable', 'start', 'motor')],
      [
        device('S', 'start', 'minus', -20, 100),
        device('M', 'motor', 'chassis', -150, 0),
        device('H', 'house', 'minus', -50, 200),
        device('L', 'house', 'minus', -70, 0),
      ],
    )
    expect(Object.fromEntries(ranges(f))).toEqual({ strap: [0, 100], cable: [0, 100] })
  })

  it('solves series batteries with a tap as one ring of nets', () => {
    // Upper battery 0..100 A between mid and top, lower 0..100 A between minus and mid; a 24 V load of 60 A across
    // both, a 12 V load of 70 A on the tap. Lower lead: 60 + 70 = 130, but the lower battery gives 100.
    // Middle lead (mid to upper battery): 60 A. Tap: 70 A.
    const f = form(
      [wire('lower', 'post', 'mid'), wire('middle', 'mid', 'base'), wire('tap', 'mid', 'load')],
      [
        device('lowerBattery', 'post', 'minus', 0, 100),
        device('upperBattery', 'top', 'base', 0, 100),
        device('load24', 'top', 'minus', -60, 0),
        device('load12', 'load', 'minus', -70, 0),
      ],
    )
    expect(Object.fromEntries(ranges(f))).toEqual({ lower: [0, 100], middle: [0, 60], tap: [0, 70] })
  })

  it('gives 0 to self-loops, dead ends, floating parts and lone devices', () => {
    const f = form(
      [wire('loop', 'a', 'a'), wire('end', 'a', 'b'), wire('apart', 'x', 'y'), wire('lone', 'c', 'd')],
      [
        device('B', 'a', 'minus', -10, 10),
        device('L', 'a', 'minus', -5, 0),
        device('only', 'd', 'nowhere', -5, 5),
      ],
    )
    expect([...ranges(f).values()]).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
      [0, 0],
    ])
  })

  it('drives the current of a device within one net through what lies between its terminals', () => {
    const f = form([wire('ab', 'a', 'b'), wire('bc', 'b', 'c')], [device('D', 'c', 'a', -3, 7)])
    expect(Object.fromEntries(ranges(f))).toEqual({ ab: [-7, 3], bc: [-7, 3] })
  })
})

describe('currents without limit', () => {
  it('are unlimited only where two unlimited devices face each other', () => {
    // Two batteries without stated limits, each on a lead to the bar, and a 40 A load: between the batteries no limit;
    // the load's lead carries 40.
    const f = form(
      [wire('one', 'p1', 'bar'), wire('two', 'p2', 'bar'), wire('load', 'bar', 'l')],
      [
        device('B1', 'p1', 'minus', 'unlimited', 'unlimited'),
        device('B2', 'p2', 'minus', 'unlimited', 'unlimited'),
        device('L', 'l', 'minus', -40, 0),
      ],
    )
    expect(Object.fromEntries(ranges(f))).toEqual({
      one: ['unlimited', 'unlimited'],
      two: ['unlimited', 'unlimited'],
      load: [0, 40],
    })
    const p = prepare(f)
    expect(envelopes(p).witness(0, 'max').ray).toEqual([
      { device: 'B1', current: 1 },
      { device: 'B2', current: -1 },
    ])
  })

  it('stay finite where finite loads balance an unlimited battery', () => {
    const f = form(
      [wire('lead', 'p', 'bar'), wire('twin', 'p', 'bar')],
      [device('B', 'p', 'minus', 'unlimited', 'unlimited'), device('L', 'bar', 'minus', -40, 0)],
    )
    expect(Object.fromEntries(ranges(f))).toEqual({ lead: [0, 20], twin: [0, 20] })
  })

  it('leave a balanced bridge at 0, and an unbalanced one without limit', () => {
    // Four equal conductors and a fifth across: nothing crosses, however much goes round. Unequal: it does.
    const bridge = (r: number): NetworkForm =>
      form(
        [
          wire('a', 's', 'l', 0.003),
          wire('b', 's', 'r', 0.003),
          wire('c', 'l', 't', 0.007),
          wire('d', 'r', 't', r),
          wire('across', 'l', 'r', 0.011),
        ],
        [
          device('B1', 's', 'minus', 'unlimited', 'unlimited'),
          device('B2', 't', 'minus', 'unlimited', 'unlimited'),
        ],
      )
    expect(ranges(bridge(0.007)).get('across')).toEqual([0, 0])
    expect(ranges(bridge(0.0070001)).get('across')).toEqual(['unlimited', 'unlimited'])
  })

  it('do not leak past the joint of a block', () => {
    // Both unlimited batteries hang on one joint of the ring: nothing of theirs goes round it.
    const f = form(
      [wire('b1', 'p1', 's'), wire('b2', 'p2', 's'), wire('sa', 's', 'a'), wire('twin', 's', 'a')],
      [
        device('B1', 'p1', 'minus', 'unlimited', 'unlimited'),
        device('B2', 'p2', 'minus', 'unlimited', 'unlimited'),
        device('L', 'a', 'minus', -10, 0),
      ],
    )
    expect(ranges(f).get('sa')).toEqual([0, 5])
    expect(ranges(f).get('b1')).toEqual(['unlimited', 'unlimited'])
  })

  it('never turn 0 times unlimited into NaN', () => {
    const f = form(
      [wire('ab', 'a', 'b'), wire('ba', 'b', 'a'), wire('bc', 'b', 'c')],
      [device('D', 'a', 'a', 'unlimited', 'unlimited'), device('E', 'c', 'c', 'unlimited', 'unlimited')],
    )
    expect([...ranges(f).values()]).toEqual([
      [0, 0],
      [0, 0],
      [0, 0],
    ])
  })
})

describe('no answer', () => {
  it('is given with its reason where conductances go beyond numbers', () => {
    const f = form(
      [wire('tiny', 'a', 'b', 1e-320), wire('twin', 'a', 'b', 1e-320), wire('lead', 'b', 'c')],
      [device('B', 'a', 'minus', 0, 10), device('L', 'c', 'minus', -5, 0)],
    )
    const r = envelopes(prepare(f))
    expect(r.envelope(0)).toEqual({ branch: 'tiny', noAnswer: 'resistance-out-of-range' })
    expect(r.min[0]).toBeNaN()
    expect(r.witness(0, 'max')).toEqual({ devices: [], ray: [] })
    expect(r.envelope(2)).toMatchObject({ min: 0, max: 5 })
  })
})
