import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { controlsByPart, partWords } from '../../../app/tryit/atpart'
import { flipOf, isOn, meant, stateWords } from '../../../app/tryit/flip'
import { arrowsOn, flowOf } from '../../../app/tryit/flow'
import { groupsOf } from '../../../app/tryit/groups'
import { changed, controlsOf, type Design, operate, readDesign, usualState } from '../../../engine'
import { smallVan } from '../../e2e/van'

const read = (text: string): Design => readDesign(text).design!
const demo = (name: string) =>
  read(readFileSync(new URL(`../../../public/demos/${name}.json`, import.meta.url), 'utf8'))
const van = read(smallVan())
const controls = controlsOf(van)
const usual = usualState(van)
const partId = (designation: string) => van.parts.find((p) => p.designation === designation)!.id
const of = (designation: string) => controlsByPart(controls).get(partId(designation)) ?? []
const runId = (number: string) => van.conductors.find((c) => c.number === number)!.id
const at = (state = usual) => {
  const point = operate(van, state)
  if (!point.ok) throw new Error('no operating point')
  return point
}

describe('flipping', () => {
  it.each(['veterinary-van', 'expedition-truck', 'camping-trailer'])(
    'of every control of %s changes whether it is on, and flips back',
    (name) => {
      const design = demo(name)
      const state = usualState(design)
      for (const c of controlsOf(design)) {
        const there = changed(state, flipOf(c, state))
        expect([c.id, isOn(c, there)]).toEqual([c.id, !isOn(c, state)])
        expect(stateWords(c, there)).not.toBe(stateWords(c, state))
        if (c.is === 'stage' || (c.is === 'throw' && c.positions.length > 2)) continue
        expect(isOn(c, changed(there, flipOf(c, there)))).toBe(isOn(c, state))
      }
    },
  )
  it('of a fuse way stops its load and no other', () => {
    const [way] = meant(of('F2'), '1')
    const point = at(changed(usual, flipOf(way!, usual)))
    expect(flowOf(point, runId('W3'), runId('W4')).amps).toBe(0)
    expect(flowOf(point, runId('W5'), runId('W6')).amps).toBeGreaterThan(7)
  })
})

describe('what a touch means', () => {
  it('is the only control of a part', () => expect(meant(of('E1'), null)).toHaveLength(1))
  it('is the way nearest to the touch on a block', () => {
    expect(meant(of('F2'), '2').map((c) => c.id)).toEqual([`${partId('F2')}/2`])
    expect(meant(of('F2'), '2r').map((c) => c.id)).toEqual([`${partId('F2')}/2`])
    expect(meant(of('F2'), 'in')).toEqual([])
  })
  it('is nothing on a battery', () => expect(meant(of('G1'), '+')).toEqual([]))
})

describe('flow', () => {
  it('runs from the battery to the load in the feed and back in the return', () => {
    const point = at()
    expect(flowOf(point, runId('W3'), null)).toMatchObject({ forward: true, pace: 'slow' })
    expect(flowOf(point, runId('W4'), null).forward).toBe(true)
    // One line for both goes the way of the feed; with the feed cut, it shows what is left in the return.
    expect(flowOf(point, runId('W3'), runId('W4')).amps).toBeCloseTo(3, 1)
  })
  it('is drawn as arrow heads that turn round with the current', () => {
    const points = [
      [0, 0],
      [20, 0],
    ] as const
    expect(arrowsOn(points, true, 1)).toContain('M11.4 0L8.6 1.4L8.6 -1.4Z')
    expect(arrowsOn(points, false, 1)).toContain('M8.6 0L11.4')
    expect(arrowsOn([points[0], [2, 0]], true, 1)).toBe('')
  })
})

describe('words at a part', () => {
  const words = (designation: string, state = usual) => {
    const part = van.parts.find((p) => p.designation === designation)!
    const point = at(state)
    return partWords(part, of(designation), { design: van, controls, state, point }, point)
  }
  it('give a load its current, and say when it is off', () => {
    expect(words('E1')).toEqual({ text: '3 A', off: false })
    expect(words('E1', changed(usual, flipOf(of('E1')[0]!, usual)))).toEqual({ text: 'off', off: true })
  })
  it('name the ways that are out, and are silent about fuses that are in', () => {
    expect(words('F2')).toBeNull()
    expect(words('F2', changed(usual, flipOf(of('F2')[1]!, usual)))!.text).toBe('2 out')
  })
  it('give a shunt what it shows, and the truth where that differs', () => {
    expect(words('B1')!.text).toMatch(/^shows 11(\.\d+)? A$/)
    const planted = demo('planted-mistakes')
    const state = usualState(planted)
    const point = operate(planted, state)
    if (!point.ok) throw new Error('no operating point')
    const all = planted.parts.flatMap((p) =>
      point.shunts.has(p.id)
        ? [partWords(p, [], { design: planted, controls: [], state, point }, point)!]
        : [],
    )
    expect(all.some((w) => w.off && w.text.includes('truly'))).toBe(true)
  })
})

it('every control stands in one group of the panel', () => {
  const design = demo('veterinary-van')
  const all = controlsOf(design)
  expect(groupsOf(design, all).flatMap((g) => g.members)).toHaveLength(all.length)
  expect(groupsOf(design, all)[0]!.title).toBe('Sun')
})
