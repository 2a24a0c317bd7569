import { describe, expect, it } from 'vitest'
import { carriedOver, changed } from '../../../engine/calc/operating/change'
import { controlsOf } from '../../../engine/calc/operating/control'
import { NOTHING_SET, type OperatingState } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import { design, partNamed } from '../../build'
import { vetVan } from '../../scenarios/demos/vetvan'

const van = vetVan()

describe('controls of a design', () => {
  const designations = (is: string): string[] =>
    controlsOf(van).flatMap((c) => (c.is === is ? [van.parts.find((p) => p.id === c.part)!.designation] : []))

  it('are its hand contacts, fuses, loads, sources and batteries, not the contacts of relays nor coils', () => {
    expect(designations('contact')).toEqual(expect.arrayContaining(['Q1', 'S1', 'S2', 'S3']))
    expect(designations('contact').filter((x) => x.startsWith('K'))).toEqual([])
    expect(designations('load')).toEqual(expect.arrayContaining(['E1', 'M1', 'T5']))
    expect(designations('load').filter((x) => /^K[123]$/.test(x))).toEqual([])
    expect(designations('source').sort()).toEqual(['G4', 'G5', 'G6', 'G7', 'T4', 'T5'])
    expect(designations('charge')).toEqual(['G1', 'G2', 'G3'])
  })

  it('are named by way where a part has several, and have ids that a state takes', () => {
    const fuses = controlsOf(van).filter((c) => c.is === 'fuse' && c.part === partNamed(van, 'F5').id)
    expect(fuses.length).toBeGreaterThanOrEqual(12)
    expect(new Set(fuses.map((c) => c.name)).size).toBe(fuses.length)
    const usual = usualState(van)
    for (const c of controlsOf(van)) {
      if (c.is === 'load') expect(usual.loads.get(c.id)).toBe(1)
      if (c.is === 'charge') expect(usual.charge.get(c.id)).toBe(1)
      if (c.is === 'source') expect(usual.sources.has(c.id)).toBe(true)
    }
  })

  it('take in a latching relay, and a cut-out without typed voltages', () => {
    const d = design()
      .part('relay-latching', 'K1')
      .part('low-voltage-cut-out', 'K2')
      .part('low-voltage-cut-out', 'K3', { opensV: 11, closesV: 12 })
      .part('relay', 'K4')
      .build()
    expect(controlsOf(d).map((c) => c.id)).toEqual(
      expect.arrayContaining([`${partNamed(d, 'K1').id}/30-87`, `${partNamed(d, 'K2').id}/contact`]),
    )
    expect(controlsOf(d).filter((c) => c.is === 'contact')).toHaveLength(2)
  })
})

describe('changes of a state', () => {
  it('open and close, take out and put in', () => {
    const open = changed(NOTHING_SET, { set: 'contact', id: 'p1/contact', open: true })
    expect(open.open).toEqual(new Set(['p1/contact']))
    expect(NOTHING_SET.open.size).toBe(0)
    expect(changed(open, { set: 'contact', id: 'p1/contact', open: false })).toEqual(NOTHING_SET)
    const out = changed(open, { set: 'fuse', id: 'p2/link', out: true })
    expect(out.blown).toEqual(new Set(['p2/link']))
    expect(out.open).toBe(open.open)
    expect(changed(out, { set: 'throw', id: 'p3/30', position: '87' }).throws.get('p3/30')).toBe('87')
  })

  it('set shares within 0 and 1, one or all', () => {
    const one = changed(NOTHING_SET, { set: 'load', id: 'a/load', share: 1.7 })
    const two = changed(one, { set: 'load', id: 'b/load', share: -1 })
    expect([...two.loads]).toEqual([
      ['a/load', 1],
      ['b/load', 0],
    ])
    expect([...changed(two, { set: 'loads', share: 0.5 }).loads.values()]).toEqual([0.5, 0.5])
    expect(changed(two, { set: 'source', id: 'c/array', share: 0.3 }).sources.get('c/array')).toBe(0.3)
    expect(changed(two, { set: 'charge', id: 'g/cells', share: 0.3 }).charge.get('g/cells')).toBe(0.3)
    expect(() => changed(two, { set: 'load', id: 'a/load', share: Number.NaN })).toThrow(RangeError)
  })

  it('give back the same state where nothing changes', () => {
    const state = changed(NOTHING_SET, { set: 'load', id: 'a/load', share: 0.4 })
    expect(changed(state, { set: 'load', id: 'a/load', share: 0.4 })).toBe(state)
    expect(changed(state, { set: 'contact', id: 'x', open: false })).toBe(state)
    expect(changed(state, { set: 'sources', share: 1 })).toBe(state)
  })

  it('are carried over to an edited design: what is gone is left out, what is new is as usual', () => {
    const before = design().part('battery', 'G1').part('load', 'E1', { currentA: 1 }).part('isolator', 'Q1')
    const [g1, e1, q1] = ['G1', 'E1', 'Q1'].map((x) => partNamed(before.build(), x).id)
    const set: OperatingState = {
      ...usualState(before.build()),
      open: new Set([`${q1}/contact`, 'gone/contact']),
      blown: new Set(['gone/link']),
      loads: new Map([
        [`${e1}/load`, 0.5],
        ['gone/load', 0.1],
      ]),
    }
    const after = before.part('load', 'E2', { currentA: 2 }).build()
    expect(carriedOver(set, usualState(after), after)).toEqual({
      open: new Set([`${q1}/contact`]),
      blown: new Set(),
      throws: new Map(),
      loads: new Map([
        [`${e1}/load`, 0.5],
        [`${partNamed(after, 'E2').id}/load`, 1],
      ]),
      sources: new Map(),
      charge: new Map([[`${g1}/cells`, 1]]),
    })
  })
})
