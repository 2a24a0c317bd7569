import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { canJoin } from '../../../engine/edit/canjoin'
import { type JoinEdit, joinEdit } from '../../../engine/edit/joinedit'
import type { Conductor, Design, TerminalRef } from '../../../engine/model/design'
import { type DesignBuilder, design, partNamed } from '../../build'

const end = (of: Design, text: string): TerminalRef => ({
  part: partNamed(of, text.split('.')[0]!).id,
  terminal: text.slice(text.indexOf('.') + 1),
})

/** Code of the refusal, or null. */
const refused = (of: Design, from: string, to: string): string | null => {
  const refusal = canJoin(of, end(of, from), end(of, to))
  if (refusal) expect(refusal.why).toMatch(/^[A-Z].*\.$/)
  expect(canJoin(of, end(of, to), end(of, from))?.code).toBe(refusal?.code)
  return refusal?.code ?? null
}

function joined(of: Design, from: string, to: string): { edit: JoinEdit; made: Conductor[]; now: Design } {
  const edit = joinEdit(of, end(of, from), end(of, to))
  if ('refused' in edit) throw new Error(edit.why)
  const result = apply(of, edit)
  if (result.refused) throw new Error(result.why)
  const now = result.design
  return { edit, now, made: now.conductors.slice(of.conductors.length) }
}

/** "F1.2 → E1.+" of each conductor made. */
const ways = (of: Design, made: readonly Conductor[]): string[] =>
  made.map((c) =>
    [c.from, c.to]
      .map((t) => `${of.parts.find((p) => p.id === t.part)!.designation}.${t.terminal}`)
      .join(' → '),
  )

describe('a join is refused', () => {
  const of = design()
    .part('battery', 'G1')
    .part('battery', 'G2')
    .part('battery', 'G3')
    .part('pv-array', 'G4')
    .part('pv-array', 'G5')
    .part('alternator', 'G6')
    .part('load', 'E1')
    .part('load', 'E2')
    .part('fuse-bolt-in', 'F1')
    .part('busbar', 'W90')
    .part('busbar', 'W91', { pole: 'negative' })
    .part('shunt', 'B1')
    .part('inverter', 'T1')
    .part('solar-controller', 'T2')
    .part('chassis-point', 'X1')
    .join('G1.+', 'F1.1')
    .join('F1.2', 'W90.1l')
    .build()

  test.each([
    ['E1.+', 'E1.+', 'same-terminal'],
    ['W90.2l', 'W90.5r', 'same-bar'],
    ['B1.data', 'G1.-', 'data'],
    ['B1.data', 'B1.sense-v', 'data'],
    ['T1.mains', 'G1.-', 'mains'],
    ['T1.mains', 'B1.data', 'mains'],
    ['G1.+', 'G1.-', 'short-circuit'],
    ['W90.2l', 'G1.-', 'short-circuit'],
    ['G1.+', 'E1.-', 'poles'],
    ['W90.2l', 'E1.-', 'poles'],
    ['W91.1l', 'E1.+', 'poles'],
    ['W91.1l', 'W90.2l', 'poles'],
    ['G4.+', 'G1.-', 'poles'],
    ['G6.+', 'G5.-', 'poles'],
    ['E1.+', 'E2.-', 'poles'],
    ['G1.+', 'F1.1', 'already-joined'],
  ])('%s to %s: %s', (from, to, code) => {
    expect(refused(of, from, to)).toBe(code)
  })

  test.each([
    ['G2.+', 'G3.-', 'batteries in series'],
    ['G4.+', 'G5.-', 'PV arrays in series'],
    ['W90.2l', 'G2.+', 'batteries side by side'],
    ['B1.sense-v', 'G1.+', 'a voltage is sensed where it is'],
    ['B1.b', 'G1.-', 'a shunt in the negative'],
    ['B1.data', 'T2.data', 'a data link'],
    ['X1.31', 'G1.-', 'a battery on the frame'],
    ['E1.+', 'F1.2', 'a load on a feed'],
    ['E1.-', 'E2.-', 'two returns'],
  ])('%s to %s is accepted: %s', (from, to) => {
    expect(refused(of, from, to)).toBeNull()
  })

  test('a bank in series may be built up, closed on itself it may not', () => {
    const bank = design()
      .part('battery', 'G1')
      .part('battery', 'G2')
      .part('battery', 'G3')
      .part('load', 'E1')
      .join('G1.+', 'G2.-')
      .build()
    expect(refused(bank, 'G2.+', 'G3.-')).toBeNull()
    // A tap on the middle of the bank is neither pole alone.
    expect(refused(bank, 'G2.-', 'E1.+')).toBeNull()
    expect(refused(bank, 'G2.-', 'E1.-')).toBeNull()
    expect(refused(bank, 'G1.+', 'G1.-')).toBe('short-circuit')
    const loaded = design()
      .part('battery', 'G1')
      .part('battery', 'G2')
      .part('load', 'E1')
      .join('G1.+', 'E1.+')
      .build()
    expect(canJoin(loaded, end(loaded, 'G1.+'), end(loaded, 'G2.-'))!.why).toContain('in series')
  })

  test('the frame joins what is bolted to it', () => {
    const framed = design()
      .part('battery', 'G1')
      .part('chassis-point', 'X1')
      .part('chassis-point', 'X2')
      .join('G1.-', 'X1.31')
      .build()
    expect(refused(framed, 'X2.31', 'G1.+')).toBe('short-circuit')
  })

  test('a changeover contact is not a way through', () => {
    const of2 = design().part('battery', 'G1').part('relay-changeover', 'K1').join('G1.+', 'K1.87').build()
    expect(refused(of2, 'K1.87a', 'G1.-')).toBeNull()
  })

  test('a full terminal takes no more', () => {
    const full = design()
      .part('shunt', 'B1')
      .part('solar-controller', 'T1')
      .part('solar-controller', 'T2')
      .join('B1.data', 'T1.data')
      .build()
    expect(refused(full, 'B1.data', 'T2.data')).toBe('full')
    expect(canJoin(full, end(full, 'B1.data'), end(full, 'T2.data'))!.why).toContain('W1')
  })

  test('nothing new joins a part of unknown kind, or a terminal that is not there', () => {
    const strange = {
      ...of,
      parts: of.parts.map((p) => (p.designation === 'E2' ? { ...p, kind: 'later' } : p)),
    }
    expect(refused(strange, 'E2.+', 'G1.+')).toBe('unknown-kind')
    expect(refused(of, 'E1.x', 'G1.+')).toBe('no-terminal')
    expect(canJoin(of, { part: 'p99', terminal: '+' }, end(of, 'G1.+'))!.code).toBe('no-part')
  })

  test('a second conductor beside one is accepted where it is asked for', () => {
    expect(canJoin(of, end(of, 'G1.+'), end(of, 'F1.1'), { parallel: true })).toBeNull()
  })
})

/** Battery, main bars, a load-side shunt with its bar, and a fuse block. */
const base = (returnBar = false): DesignBuilder =>
  design({ ruleSet: 'metric-automotive' })
    .part('battery', 'G1')
    .part('busbar', 'W90', {}, { name: 'negative main', x: 0, y: 200 })
    .part('shunt', 'B1', { role: 'load' })
    .part('busbar', 'W91', {}, { name: 'load returns', x: 600, y: 200 })
    .part('fuse-block', 'F1', { returnBar })
    .part('load', 'E1', {}, { x: 10, y: 200 })
    .part('load', 'E2')
    .join('G1.-', 'W90.1l')
    .join('W90.2l', 'B1.b')
    .join('B1.s', 'W91.1l')
    .join('G1.+', 'F1.in')

describe('a feed makes its return', () => {
  test('to the return bar of its own block, with both conductors in one edit', () => {
    const of = base(true).build()
    const { edit, made } = joined(of, 'F1.1', 'E1.+')
    expect(edit.do).toBe('all')
    expect(ways(of, made)).toEqual(['F1.1 → E1.+', 'E1.- → F1.r1'])
    expect(made.map((c) => c.number)).toEqual(['W92', 'W93'])
    expect(made[1]!.returnOf).toBe(made[0]!.id)
    expect(edit.why).toContain('return bar of F1')
  })

  test('drawn from the load, it is the same', () => {
    const of = base(true).build()
    expect(ways(of, joined(of, 'E1.+', 'F1.1').made)).toEqual(['F1.1 → E1.+', 'E1.- → F1.r1'])
  })

  test('on the next free screw of the bar', () => {
    const { now } = joined(base(true).build(), 'F1.1', 'E1.+')
    expect(ways(now, joined(now, 'F1.2', 'E2.+').made)[1]).toBe('E2.- → F1.r2')
  })

  test('to the bar where others of the block return, even past a nearer one behind the shunt', () => {
    const of = base()
      .part('busbar', 'W92', { pole: 'negative' }, { x: 1200, y: 0 })
      .part('load', 'E3')
      .join('F1.2', 'E3.+')
      .join('E3.-', 'W92.1l')
      .build()
    const { edit, made } = joined(of, 'F1.1', 'E1.+')
    expect(ways(of, made)[1]).toMatch(/^E1\.- → W92\./)
    expect(edit.why).toContain('other consumers fed from F1')
  })

  test('behind the load-side shunt, though another bar is nearer', () => {
    const of = base().build()
    const { edit, made } = joined(of, 'F1.1', 'E1.+')
    expect(ways(of, made)[1]).toMatch(/^E1\.- → W91\./)
    expect(edit.why).toContain('behind the load-side shunt')
  })

  test('of what also charges, not behind the load-side shunt', () => {
    const of = base().part('inverter-charger', 'T1', {}, { x: 600, y: 220 }).build()
    const { edit, made } = joined(of, 'F1.1', 'T1.+')
    expect(ways(of, made)[1]).toMatch(/^T1\.- → W90\./)
    expect(edit.why).toContain('battery side')
  })

  test('of a charger on the battery side too, whichever way it is drawn', () => {
    const of = base().part('solar-controller', 'T1', {}, { x: 600, y: 220 }).build()
    expect(ways(of, joined(of, 'T1.bat+', 'F1.2').made)).toEqual(['F1.2 → T1.bat+', 'T1.bat- → W90.1r'])
    const alternator = base().part('alternator', 'G9').part('alternator-charger', 'T1').build()
    expect(ways(alternator, joined(alternator, 'G9.+', 'T1.in+').made)).toEqual([
      'G9.+ → T1.in+',
      'T1.- → G9.-',
    ])
  })

  test('never to the wrong side of the load-side shunt, though the right side is full', () => {
    const full = design()
      .part('battery', 'G1')
      .part('busbar', 'W90')
      .part('shunt', 'B1', { role: 'load' })
      .part('busbar', 'W91', { studs: 2 })
      .part('fuse-blade', 'F1')
      .part('load', 'E1')
      .part('inverter-charger', 'T1')
      .join('G1.-', 'W90.1l')
      .join('W90.2l', 'B1.b')
      .join('G1.+', 'F1.1')
      .join('B1.s', 'W91.1l')
    const taken = ['1l', '1r', '1r', '2l', '2l', '2r', '2r']
    const of = taken
      .reduce((d, stud, i) => d.part('load', `E${i + 10}`).join(`E${i + 10}.-`, `W91.${stud}`), full)
      .build()
    const load = joined(of, 'F1.2', 'E1.+')
    expect(load.made.length).toBe(1)
    expect(load.edit.why).toContain('no bar behind the load-side shunt')
    expect(ways(of, joined(of, 'F1.2', 'T1.+').made)[1]).toMatch(/^T1\.- → W90\./)
  })

  test('of what charges, not to its block where that block returns behind the shunt', () => {
    const of = base(true).part('inverter-charger', 'T1').join('F1.return', 'W91.2l').build()
    expect(ways(of, joined(of, 'F1.1', 'T1.+').made)[1]).toMatch(/^T1\.- → W90\./)
    expect(ways(of, joined(of, 'F1.1', 'E1.+').made)[1]).toBe('E1.- → F1.r1')
  })

  test('of a step-down converter behind the shunt: what it takes is load', () => {
    const of = base().part('step-down', 'T1').build()
    expect(ways(of, joined(of, 'F1.1', 'T1.in+').made)[1]).toMatch(/^T1\.- → W91\./)
    expect(joined(of, 'T1.out+', 'F1.1').made.length).toBe(1)
  })

  test('to the battery itself while there is no bar', () => {
    const of = design()
      .part('battery', 'G1')
      .part('fuse-blade', 'F1')
      .part('load', 'E1')
      .join('G1.+', 'F1.1')
      .build()
    expect(ways(of, joined(of, 'F1.2', 'E1.+').made)).toEqual(['F1.2 → E1.+', 'E1.- → G1.-'])
  })

  test('to the nearest negative bar where there is no such shunt', () => {
    const of = design()
      .part('battery', 'G1')
      .part('busbar', 'W90', {}, { x: 0, y: 0 })
      .part('busbar', 'W91', { pole: 'negative' }, { x: 500, y: 0 })
      .part('fuse-blade', 'F1')
      .part('load', 'E1', {}, { x: 450, y: 0 })
      .join('G1.-', 'W90.1l')
      .join('G1.+', 'F1.1')
      .build()
    expect(ways(of, joined(of, 'F1.2', 'E1.+').made)[1]).toMatch(/^E1\.- → W91\./)
  })

  test('through a low-voltage cut-out it finds its block', () => {
    const of = base(true).part('low-voltage-cut-out', 'K1').join('F1.3', 'K1.1').build()
    expect(ways(of, joined(of, 'K1.2', 'E1.+').made)[1]).toBe('E1.- → F1.r1')
  })

  test('through a relay and a splice it still finds its block', () => {
    const of = base(true)
      .part('relay', 'K1')
      .part('junction', 'X1')
      .join('F1.3', 'K1.30')
      .join('K1.87', 'X1.l')
      .build()
    expect(ways(of, joined(of, 'X1.r', 'E1.+').made)[1]).toBe('E1.- → F1.r1')
  })

  test('to the array itself where an array feeds a controller', () => {
    const of = base().part('pv-array', 'G9').part('solar-controller', 'T1').build()
    expect(ways(of, joined(of, 'G9.+', 'T1.pv+').made)).toEqual(['G9.+ → T1.pv+', 'T1.pv- → G9.-'])
  })

  test('only once, and not where there is no bar: the feed alone, and why', () => {
    const { now } = joined(base(true).build(), 'F1.1', 'E1.+')
    expect(joined(now, 'F1.2', 'E1.+').made.length).toBe(1)
    const bare = design().part('fuse-blade', 'F1').part('load', 'E1').build()
    const { edit, made } = joined(bare, 'F1.2', 'E1.+')
    expect(made.length).toBe(1)
    expect(edit.why).toContain('No return was drawn')
  })

  test('in the colours of the rule set', () => {
    const of = base(true).build()
    expect(joined(of, 'F1.1', 'E1.+').made.map((c) => c.colour)).toEqual(['RD', 'BN'])
    const us: Design = { ...of, settings: { ...of.settings, ruleSet: 'us-33cfr183' } }
    expect(joined(us, 'F1.1', 'E1.+').made.map((c) => c.colour)).toEqual(['RD', 'BK'])
    expect(joined(of, 'W90.4l', 'W91.4l').made[0]!.colour).toBe('BN')
  })
})
