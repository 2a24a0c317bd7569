import { describe, expect, it } from 'vitest'
import type { Ahead } from '../../../engine/calc/ahead'
import type { EndProtection } from '../../../engine/calc/protection'
import { type JudgedEnd, verdict } from '../../../engine/calc/verdict'

/** The table of verdicts, row by row. */

const fed = (...cut: [kind: 'fuse' | 'source', id: string, amps: number][]): JudgedEnd => ({
  protection: {
    flow: cut.reduce((sum, [, , amps]) => sum + amps, 0),
    cut: cut.map(([kind, id, amps]) => ({ kind, id, amps })),
  },
  ahead: null,
  behind: [],
})
const nothing = fed()
const open = (ahead: Partial<Ahead>, behind: readonly [id: string, amps: number][] = []): JudgedEnd => ({
  protection: { flow: 'unlimited', path: ['W9'], source: 'G1' },
  ahead: { toFarEndM: 0, toDeviceM: 0, toDeviceAtLeastM: 0, missing: [], ...ahead },
  behind: behind.map(([id, amps]) => ({ kind: 'fuse', id, amps })),
})
const openFor = (metres: number) => open({ toDeviceM: metres, toDeviceAtLeastM: metres })
const unknown = (protection: EndProtection): JudgedEnd => ({ protection, ahead: null, behind: [] })
const rules = { amps: 50, aheadM: 0.175 }

describe('verdict', () => {
  it('unprotected: an unlimited source, further off than the allowance, or where there is none', () => {
    expect(verdict(openFor(0.2), nothing, rules)).toEqual({
      verdict: 'unprotected',
      end: 'from',
      path: ['W9'],
      source: 'G1',
      aheadM: 0.2,
      allowedM: 0.175,
    })
    expect(verdict(nothing, openFor(0.1), { amps: 50, aheadM: null })).toMatchObject({
      verdict: 'unprotected',
      end: 'to',
    })
    const noDevice = openFor(Number.POSITIVE_INFINITY)
    expect(verdict(noDevice, nothing, rules)).toMatchObject({ verdict: 'unprotected', aheadM: 'unlimited' })
  })

  it('near the source: unprotected, but a device stands within the allowance, both lengths told', () => {
    expect(verdict(openFor(0.175), nothing, rules)).toEqual({
      verdict: 'near-source',
      end: 'from',
      source: 'G1',
      aheadM: 0.175,
      allowedM: 0.175,
    })
  })

  it('near the source, but the devices behind let through more than the conductor may have', () => {
    const ahead = (...behind: readonly [id: string, amps: number][]) =>
      verdict(open({ toDeviceM: 0.1, toDeviceAtLeastM: 0.1 }, behind), nothing, rules)
    expect(ahead(['F1', 80], ['F2', 10])).toEqual({
      verdict: 'device-too-big',
      end: 'from',
      member: { kind: 'fuse', id: 'F1', amps: 80 },
      allowedA: 50,
    })
    expect(ahead(['F1', 30], ['F2', 30])).toMatchObject({ verdict: 'sources-add-up', flow: 60 })
    expect(ahead(['F1', 50])).toMatchObject({ verdict: 'near-source' })
    expect(ahead(['F1', 50], ['F2', Number.NaN])).toMatchObject({
      verdict: 'not-checked',
      because: { code: 'missing-rating', fuses: ['F2'] },
    })
  })

  it('device too big: one device or source alone', () => {
    expect(verdict(fed(['fuse', 'F1', 60]), nothing, rules)).toEqual({
      verdict: 'device-too-big',
      end: 'from',
      member: { kind: 'fuse', id: 'F1', amps: 60 },
      allowedA: 50,
    })
    const other = fed(['source', 'G2', 70], ['fuse', 'F1', 10])
    expect(verdict(fed(['fuse', 'F1', 60]), other, rules)).toMatchObject({ end: 'to', member: { id: 'G2' } })
  })

  it('sources add up: each within, the sum not; exactly at the limit is within', () => {
    expect(verdict(nothing, fed(['fuse', 'F1', 30], ['fuse', 'F2', 21]), rules)).toMatchObject({
      verdict: 'sources-add-up',
      end: 'to',
      flow: 51,
      allowedA: 50,
    })
    expect(verdict(fed(['fuse', 'F1', 30], ['fuse', 'F2', 20]), nothing, rules)).toEqual({
      verdict: 'protected',
    })
    expect(verdict(fed(['fuse', 'F1', 50]), nothing, rules)).toEqual({ verdict: 'protected' })
  })

  it('the gravest of both ends stands, in the order of the table', () => {
    const big = fed(['fuse', 'F1', 60])
    const sum = fed(['fuse', 'F1', 30], ['fuse', 'F2', 30])
    const gap = unknown({ notChecked: { code: 'missing-rating', fuses: ['F7'] } })
    const grave = [openFor(1), big, sum, gap, openFor(0.1), nothing]
    const names = [
      'unprotected',
      'device-too-big',
      'sources-add-up',
      'not-checked',
      'near-source',
      'protected',
    ]
    grave.forEach((a, i) => {
      grave.forEach((b, k) => {
        expect(verdict(a, b, rules).verdict).toBe(names[Math.min(i, k)])
      })
    })
  })

  it('not checked is never passed: no ampacity, no length, a circle of sources', () => {
    const blank = { amps: null, aheadM: 0.175 }
    expect(verdict(fed(['fuse', 'F1', 1]), nothing, blank)).toEqual({
      verdict: 'not-checked',
      end: 'from',
      because: { code: 'missing-ampacity' },
    })
    expect(verdict(nothing, nothing, blank)).toEqual({ verdict: 'protected' })
    const unmeasured = open({ toDeviceM: null, toDeviceAtLeastM: 0.1, missing: ['W3'] })
    expect(verdict(unmeasured, nothing, rules)).toEqual({
      verdict: 'not-checked',
      end: 'from',
      because: { code: 'missing-length', conductors: ['W3'] },
    })
    // Already too long without the missing length.
    const tooLong = open({ toDeviceM: null, toDeviceAtLeastM: 0.3, missing: ['W3'] })
    expect(verdict(tooLong, nothing, rules)).toMatchObject({ verdict: 'unprotected', aheadM: null })
    const circle = unknown({ notChecked: { code: 'source-cycle', devices: ['G1', 'G2'] } })
    expect(verdict(circle, nothing, rules)).toMatchObject({
      verdict: 'not-checked',
      because: { code: 'source-cycle' },
    })
  })
})
