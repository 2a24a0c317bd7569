import { describe, expect, it } from 'vitest'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { type EndProtection, protection } from '../../../engine/calc/protection'
import { endFlowByLp } from '../../reference/flowprograms'
import { battery, fuse, load, network, source, wire } from '../../reference/handmade'

/** Worked by hand: invented networks, the arithmetic beside each figure. */

function at(form: NetworkForm, id: string, end: 'from' | 'to'): EndProtection {
  const p = prepare(form)
  return protection(p).end(p.branchIndex.get(id)!, end)
}

const limited = (flow: number, ...members: [string, number][]) => ({
  flow,
  cut: expect.toSatisfy(
    (cut: { id: string; amps: number }[]) =>
      cut.length === members.length &&
      members.every(([id, a]) => cut.some((m) => m.id === id && m.amps === a)),
  ),
})

describe('feeds', () => {
  it('a string of panels is fed by the other strings side by side', () => {
    // Three strings of 1.25 × 8 A = 10 A on one bar, the solar controller takes from it. Nothing comes back out of
    // the controller's input. Into the bar end of string 1's lead: strings 2 and 3, 10 + 10 = 20 A. With a 15 A fuse
    // in each string's lead at the bar the sum is still 20 A: 2 × min(10, 15).
    const strings = [1, 2, 3].map((k) => source(`G${k}`, `s${k}`, 'neg', 10))
    const controller = load('A1', 'bar', 'neg', 30)
    const bare = network(
      [1, 2, 3].map((k) => wire(`W${k}`, `s${k}`, 'bar')),
      [...strings, controller],
    )
    expect(at(bare, 'W1', 'to')).toEqual(limited(20, ['G2', 10], ['G3', 10]))
    expect(at(bare, 'W1', 'from')).toEqual(limited(10, ['G1', 10]))
    const fused = network(
      [1, 2, 3].flatMap((k) => [wire(`W${k}`, `s${k}`, `f${k}`), fuse(`F${k}`, `f${k}`, 'bar', 15)]),
      [...strings, controller],
    )
    // Now the lead's own 15 A fuse stands between it and the 20 A.
    expect(at(fused, 'W1', 'to')).toEqual(limited(15, ['F1', 15]))
  })

  it('two batteries feed each other’s conductors', () => {
    // Each battery: lead, 100 A or 80 A fuse, bar. Lead 1 is unlimited at its battery; at its fuse end it sees the
    // other battery through 80 A in series with its own 100 A: min = 80 A, named at the 80 A fuse.
    const form = network(
      [
        wire('W1', 'b1', 'f1'),
        fuse('F1', 'f1', 'bar', 100),
        wire('W2', 'b2', 'f2'),
        fuse('F2', 'f2', 'bar', 80),
        wire('W3', 'bar', 'far'),
      ],
      [battery('G1', 'b1', 'neg'), battery('G2', 'b2', 'neg')],
    )
    expect(at(form, 'W1', 'from')).toEqual({ flow: 'unlimited', path: [], source: 'G1' })
    expect(at(form, 'W1', 'to')).toEqual(limited(80, ['F2', 80]))
    expect(at(form, 'W2', 'to')).toEqual(limited(80, ['F2', 80]))
    expect(at(form, 'W3', 'from')).toEqual(limited(180, ['F1', 100], ['F2', 80]))
    expect(at(form, 'W3', 'to')).toEqual({ flow: 0, cut: [] })
  })

  it('a charger’s conductor is fed from its far end by the battery', () => {
    // Charger 30 A – W1 – bar – 60 A fuse – battery. At the charger 30 A, at the bar the battery through 60 A.
    // Without the fuse the bar end is unlimited: the lead has a source that limits itself at one end only.
    const branches = [wire('W1', 'out', 'bar'), fuse('F1', 'bar', 'b1', 60)]
    const devices = [source('G2', 'out', 'neg', 30), battery('G1', 'b1', 'neg')]
    const form = network(branches, devices)
    expect(at(form, 'W1', 'from')).toEqual(limited(30, ['G2', 30]))
    expect(at(form, 'W1', 'to')).toEqual(limited(60, ['F1', 60]))
    const unfused = network([branches[0]!, wire('W2', 'bar', 'b1')], devices)
    expect(at(unfused, 'W1', 'to')).toEqual({ flow: 'unlimited', path: ['W2'], source: 'G1' })
  })

  it('fuses side by side add, and a fuse with a conductor across it is no fuse', () => {
    const base = [
      wire('W1', 'b1', 'a'),
      fuse('F1', 'a', 'b', 50),
      fuse('F2', 'b', 'a', 30),
      wire('W2', 'b', 'c'),
    ]
    const devices = [battery('G1', 'b1', 'neg')]
    expect(at(network(base, devices), 'W2', 'from')).toEqual(limited(80, ['F1', 50], ['F2', 30]))
    expect(at(network([...base, wire('W3', 'a', 'b')], devices), 'W2', 'from')).toEqual({
      flow: 'unlimited',
      path: ['W1', 'W3'],
      source: 'G1',
    })
  })

  it('one of two unfused conductors side by side is unlimited from both ends, by way of the other', () => {
    // Drawn together first, the two would vanish into one point and the question with them.
    const form = network(
      [wire('W1', 'b1', 'stud'), wire('W2', 'b1', 'stud'), fuse('F1', 'stud', 'bar', 100)],
      [battery('G1', 'b1', 'neg')],
    )
    expect(at(form, 'W1', 'from')).toEqual({ flow: 'unlimited', path: [], source: 'G1' })
    expect(at(form, 'W1', 'to')).toEqual({ flow: 'unlimited', path: ['W2'], source: 'G1' })
  })

  it('of two cuts that are equally small the one nearest the conductor is named', () => {
    const form = network(
      [fuse('F1', 'b1', 'a', 40), wire('W1', 'a', 'b'), fuse('F2', 'b', 'c', 40), wire('W2', 'c', 'd')],
      [battery('G1', 'b1', 'neg')],
    )
    expect(at(form, 'W2', 'from')).toEqual(limited(40, ['F2', 40]))
  })
})

describe('nets that hold negative terminals of devices', () => {
  // A 24 V bank of two 12 V batteries: neg – G1 – mid – G2 – top.
  const bank = [battery('G1', 'mid', 'neg'), battery('G2', 'top', 'mid')]

  it('a tap behind an 80 A fuse can carry 124 A when a load of 44 A comes back on its far side', () => {
    // mid – F1 80 A – tap – W1 – 12 V loads; a 24 V load of 44 A is returned to the tap by mistake: it pushes its
    // 44 A into the tap past the fuse. 80 + 44 = 124 A, where counting only what comes up from below gives 80 A.
    const form = network(
      [fuse('F1', 'mid', 'tap', 80), wire('W1', 'tap', 'lamps'), wire('W2', 'top', 'feed')],
      [...bank, load('E1', 'lamps', 'neg', 20), load('E2', 'feed', 'tap', 44)],
    )
    expect(at(form, 'W1', 'from')).toEqual(limited(124, ['F1', 80], ['E2', 44]))
    expect(endFlowByLp(form, 1, 'from', { plain: true })).toBeCloseTo(80, 9)
    expect(endFlowByLp(form, 1, 'from')).toBeCloseTo(124, 9)
    // The physical problem with the fault led back to the bank's negative lets out the whole of it: the bound is met.
    expect(endFlowByLp(form, 1, 'from', { backAt: 'neg' })).toBeCloseTo(124, 9)
  })

  it('current comes down backwards through a battery: plain flow 0, true flow the fuse of the other string', () => {
    // Two strings on one 24 V bar, the second behind 100 A at its top. W1 joins the upper battery of string 1 to its
    // midpoint. Into W1 at the battery: nothing lifts current there from below, but string 2 can drive its 100 A down
    // through G2 into a short at the midpoint.
    const form = network(
      [wire('W1', 'mid', 'g2minus'), fuse('F2', 'top2', 'top', 100), wire('W2', 'mid2', 'g4minus')],
      [
        battery('G1', 'mid', 'neg'),
        battery('G2', 'top', 'g2minus'),
        battery('G3', 'mid2', 'neg'),
        battery('G4', 'top2', 'g4minus'),
      ],
    )
    expect(at(form, 'W1', 'to')).toEqual(limited(100, ['F2', 100]))
    expect(endFlowByLp(form, 0, 'to', { plain: true })).toBeCloseTo(0, 9)
    expect(at(form, 'W1', 'from')).toEqual({ flow: 'unlimited', path: [], source: 'G1' })
  })

  it('conductors of the common negative take nothing by this rule: they are judged as returns', () => {
    const form = network(
      [wire('W1', 'minus', 'bar'), wire('W2', 'b1', 'x')],
      [battery('G1', 'b1', 'minus'), load('E1', 'x', 'bar', 10)],
    )
    expect(at(form, 'W1', 'from')).toEqual({ flow: 0, cut: [] })
    expect(at(form, 'W1', 'to')).toEqual({ flow: 0, cut: [] })
  })
})

describe('what cannot be answered', () => {
  it('sources in a circle: nothing is said about nets below or in it, and its devices are named', () => {
    // G2 is the wrong way round.
    const form = network(
      [wire('W1', 'b1', 'bar'), wire('W2', 'minus', 'bar2'), wire('W3', 'panel', 'box')],
      [battery('G1', 'b1', 'minus'), battery('G2', 'bar2', 'bar'), source('G3', 'panel', 'other', 8)],
    )
    const answer = at(form, 'W1', 'from')
    if (!('notChecked' in answer) || answer.notChecked.code !== 'source-cycle') throw new Error('answered')
    expect([...answer.notChecked.devices].sort()).toEqual(['G1', 'G2'])
    expect(at(form, 'W2', 'to')).toEqual({ notChecked: expect.objectContaining({ code: 'source-cycle' }) })
    // Another system on the same sheet is not held up by it.
    expect(at(form, 'W3', 'from')).toEqual(limited(8, ['G3', 8]))
  })

  it('a source with both terminals in one net is a circle of its own', () => {
    const form = network([wire('W1', 'a', 'b')], [source('G1', 'a', 'b', 5)])
    expect(at(form, 'W1', 'from')).toEqual({ notChecked: { code: 'source-cycle', devices: ['G1'] } })
  })

  it('a fuse without a rating is named where the answer hangs on it, and only there', () => {
    const { rating: _, ...blank } = fuse('F1', 'b1', 'bar', 0)
    const form = network(
      [
        blank,
        wire('W1', 'bar', 'x'),
        fuse('F2', 'x', 'y', 10),
        wire('W2', 'y', 'z'),
        fuse('F3', 'b1', 'x', 60),
      ],
      [battery('G1', 'b1', 'neg')],
    )
    expect(at(form, 'W1', 'from')).toEqual({ notChecked: { code: 'missing-rating', fuses: ['F1'] } })
    // With F1 at nothing F3 alone still fills F2: 10 A either way.
    expect(at(form, 'W2', 'from')).toEqual(limited(10, ['F2', 10]))
  })

  it('only conductors have ends to protect', () => {
    const form = network([fuse('F1', 'a', 'b', 5)], [battery('G1', 'a', 'neg')])
    expect(at(form, 'F1', 'from')).toEqual({ notChecked: { code: 'not-a-conductor' } })
  })
})
