import { describe, expect, it } from 'vitest'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { returns } from '../../../engine/calc/returns'
import { battery, fuse, load, network, source, wire } from '../../reference/handmade'

/** Worked by hand: invented networks, the arithmetic beside each figure. */

function at(form: NetworkForm, id: string) {
  const p = prepare(form)
  const result = returns(p)
  const e = p.branchIndex.get(id)!
  const sustained = result.sustained(e)
  if ('notChecked' in sustained) throw new Error(sustained.notChecked.code)
  return {
    amps: sustained.sustained,
    by: sustained.limiting.map((x) => x.id).sort(),
    short: result.singleShort(e),
  }
}

/** Battery – 100 A – bus, three loads behind 10 A each, their returns on one bar, the bar on the battery. */
const loads = (mainRating: number): NetworkForm =>
  network(
    [
      fuse('F0', 'b1', 'bus', mainRating),
      ...[1, 2, 3].flatMap((k) => [
        fuse(`F${k}`, 'bus', `f${k}`, 10),
        wire(`W${k}`, `f${k}`, `p${k}`),
        wire(`R${k}`, `n${k}`, 'bar'),
      ]),
      wire('R0', 'bar', 'minus'),
    ],
    [battery('G1', 'b1', 'minus'), ...[1, 2, 3].map((k) => load(`E${k}`, `p${k}`, `n${k}`, 5))],
  )

describe('returns', () => {
  it('a return carries what the fuse on its positive side lets past, however small the load', () => {
    // A load of 5 A behind 10 A: a partial short in it lasts up to 10 A. The bar's return: 3 × 10 = 30 A, not 100 A;
    // with a 20 A main fuse 20 A.
    expect(at(loads(100), 'R1')).toEqual({ amps: 10, by: ['F1'], short: { amps: 10, device: 'E1' } })
    expect(at(loads(100), 'R0')).toMatchObject({ amps: 30, by: ['F1', 'F2', 'F3'] })
    expect(at(loads(20), 'R0')).toMatchObject({ amps: 20, by: ['F0'] })
    // Explained by the worst single short: one load at a time puts 10 A through the bar's return.
    expect(at(loads(100), 'R0').short).toMatchObject({ amps: 10 })
  })

  it('without a fuse on the positive side a return is unlimited', () => {
    const form = network(
      [wire('W1', 'b1', 'p1'), wire('R1', 'n1', 'minus')],
      [battery('G1', 'b1', 'minus'), load('E1', 'p1', 'n1', 5)],
    )
    expect(at(form, 'R1')).toEqual({ amps: 'unlimited', by: [], short: { amps: 'unlimited', device: 'E1' } })
  })

  it('a chassis path beside the conductor takes its share by resistance', () => {
    // 30 A as above, from the bar to the battery by a conductor of 1 mΩ and beside it a chassis path of 3 mΩ:
    // 30 · 3/(1 + 3) = 22.5 A in the conductor, 30 · 1/4 = 7.5 A in the chassis.
    const base = loads(100)
    const chassis = { ...wire('R9', 'bar', 'minus'), resistance: 0.003 }
    const form = { ...base, branches: [...base.branches, chassis] }
    expect(at(form, 'R0').amps).toBeCloseTo(22.5, 9)
    expect(at(form, 'R0').by).toEqual(['F1', 'F2', 'F3'])
    expect(at(form, 'R9').amps).toBeCloseTo(7.5, 9)
  })

  it('house and starting circuit on one chassis add up in the strap that both use', () => {
    // Starter circuit: its battery and a heater behind 25 A. House: 30 A as above. Both batteries stand on the bar at
    // the near end of the strap, all loads at its far end: 30 + 25 = 55 A.
    const base = loads(100)
    const form = network(
      [...base.branches.filter((b) => b.id !== 'R0'), wire('S1', 'bar', 'minus'), fuse('F9', 'b2', 'h', 25)],
      [...base.devices, battery('G2', 'b2', 'minus'), load('E9', 'h', 'bar', 20)],
    )
    expect(at(form, 'S1')).toMatchObject({ amps: 55, by: ['F1', 'F2', 'F3', 'F9'] })
  })

  it('a battery’s negative lead is limited by the fuse in its positive one', () => {
    // G1 behind 100 A, G2 behind 80 A, loads of 3 × 10 A: G1 can feed 80 + 30 = 110 A into the rest, its fuse stops it
    // at 100 A. G2 can feed 100 + 30 A, its fuse stops it at 80 A. Both leads land on the bar.
    const base = loads(100)
    const form = network(
      [...base.branches, fuse('F8', 'b2', 'bus', 80), wire('R8', 'minus2', 'bar')],
      [...base.devices, battery('G2', 'b2', 'minus2')],
    )
    expect(at(form, 'R0')).toMatchObject({ amps: 100, by: ['F0'] })
    expect(at(form, 'R8')).toMatchObject({ amps: 80, by: ['F8'] })
  })

  it('a string’s return carries the other strings when its own panels are shorted', () => {
    // Three strings of 10 A: forwards 10 A, backwards 10 + 10 = 20 A through a shorted string.
    const form = network(
      [1, 2, 3].flatMap((k) => [wire(`W${k}`, `s${k}`, 'bar'), wire(`R${k}`, `m${k}`, 'minus')]),
      [...[1, 2, 3].map((k) => source(`G${k}`, `s${k}`, `m${k}`, 10)), load('A1', 'bar', 'minus', 30)],
    )
    expect(at(form, 'R1')).toEqual({ amps: 20, by: ['G2', 'G3'], short: { amps: 20, device: 'G1' } })
  })

  it('the link at the midpoint of a series bank is limited by the fuse of the bank', () => {
    // minus – G1 – mid –W1– mid2 – G2 – top – F1 150 A – loads: whatever is shorted behind F1, 150 A.
    const form = network(
      [wire('W1', 'mid', 'mid2'), fuse('F1', 'top', 'bus', 150), wire('W2', 'bus', 'p1')],
      [battery('G1', 'mid', 'minus'), battery('G2', 'top', 'mid2'), load('E1', 'p1', 'minus', 40)],
    )
    expect(at(form, 'W1')).toEqual({ amps: 150, by: ['F1'], short: { amps: 150, device: 'E1' } })
  })

  it('a positive conductor is no return', () => {
    const form = loads(100)
    const p = prepare(form)
    expect(returns(p).sustained(p.branchIndex.get('W1')!)).toEqual({ notChecked: { code: 'not-a-return' } })
  })
})
