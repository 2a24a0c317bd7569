import { describe, expect, test } from 'vitest'
import { withOpen } from '../../../engine/calc/handover/effects'
import { isolationOf } from '../../../engine/calc/handover/isolation'
import { switchEffects } from '../../../engine/calc/handover/switches'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Part } from '../../../engine/model/design'
import { design } from '../../build'
import { DEMOS } from '../../scenarios/demos/all'
import { drawing } from './loadflow'

const demo = (file: string) => DEMOS.find((d) => d.file === `${file}.json`)!.make()
const names = (of: readonly ({ readonly part: Part } | Part)[]): string[] =>
  of.map((x) => ('part' in x ? x.part : x).designation)

describe('what a switch does', () => {
  test.each(DEMOS.map((d) => [d.title, d.make()] as const))('%s: as the load flow has it', (_, d) => {
    const usual = usualState(d)
    const before = drawing(d, usual)
    for (const { handle, off } of switchEffects(d)) {
      const after = drawing(d, withOpen(usual, handle))
      const gone = [...before].filter((id) => !after.has(id)).sort()
      const told = off.flatMap((t) => (before.has(t.part.id) ? [t.part.id] : [])).sort()
      expect([handle.part.designation, told]).toEqual([handle.part.designation, gone])
    }
  })

  test('a panel switch reaches through relay and master relay', () => {
    const effects = new Map(switchEffects(demo('veterinary-van')).map((e) => [e.handle.part.designation, e]))
    expect(names(effects.get('S2')!.off)).toEqual(['M1'])
    expect(names(effects.get('S1')!.off)).toContain('M1')
    expect(names(effects.get('S1')!.off)).not.toContain('E7')
    expect(effects.get('X1')?.handle.is).toBe('plug')
  })

  test('a changeover stops one thing and starts another', () => {
    const made = design()
      .part('battery', 'G1', { capacityAh: 100 })
      .part('relay-changeover', 'K1', { ratingA: 30 })
      .part('panel-switch', 'S1', { ratingA: 6 })
      .part('lamp', 'E1', { currentA: 1 })
      .part('lamp', 'E2', { currentA: 1 })
      .part('busbar', 'W100', { studs: 8, pole: 'negative' })
      .join('G1.+', 'K1.30')
      .join('G1.+', 'S1.1')
      .join('S1.2', 'K1.86')
      .join('K1.87', 'E1.+')
      .join('K1.87a', 'E2.+')
      .join('E1.-', 'W100.1l')
      .join('E2.-', 'W100.2l')
      .join('K1.85', 'W100.3l')
      .join('G1.-', 'W100.4l')
      .build()
    // With the switch on the coil is fed: E1 runs, E2 does not.
    const [s] = switchEffects(made)
    expect(names(s!.off)).toEqual(['E1'])
    expect(names(s!.on)).toEqual(['E2'])
  })
})

describe('isolating', () => {
  test('the van: engine, shore lead, the isolator, the breakers of its arrays', () => {
    const i = isolationOf(demo('veterinary-van'))
    expect(names(i.engines)).toEqual(['G4'])
    expect(names(i.mains)).toEqual(['X21'])
    expect(names(i.batteries)).toEqual(['Q1'])
    expect(names(i.arrays)).toEqual(['F11', 'F12', 'F13'])
    expect(i.stillOn).toEqual([])
    expect(names(i.unswitched)).toEqual(['G3'])
    expect(names(i.stillLive)).toEqual(expect.arrayContaining(['F1', 'F2', 'Q1', 'F9']))
    expect(names(i.stillLive)).not.toContain('F3')
  })

  test('the truck: its isolators part bars, not batteries, and this is told', () => {
    const i = isolationOf(demo('expedition-truck'))
    expect(i.batteries).toEqual([])
    expect(names(i.feeding)).toEqual(['G1', 'G2', 'G3'])
    expect(names(i.lastFuses)).toEqual(['F1', 'F2', 'F3'])
    expect(i.stillOn.length).toBeGreaterThan(10)
  })

  test('the trailer: an array without a switch may go on feeding loads', () => {
    const i = isolationOf(demo('camping-trailer'))
    expect(names(i.batteries)).toEqual(['Q1'])
    expect(names(i.sunFed)).toEqual(['T1'])
  })

  test('a string in series is taken off as one', () => {
    const i = isolationOf(demo('mountain-cabin'))
    expect(names(i.batteries)).toEqual(['Q1'])
    expect(i.unswitched).toEqual([])
  })

  test.each(DEMOS.map((d) => [d.title, d.make()] as const))(
    '%s: what goes on is what the load flow has drawing with all of them open',
    (_, d) => {
      const i = isolationOf(d)
      const open = [...i.batteries, ...i.arrays].reduce(withOpen, usualState(d))
      const before = drawing(d, usualState(d))
      const told = i.stillOn.flatMap((t) => (before.has(t.part.id) ? [t.part.id] : []))
      expect([...drawing(d, open)].sort()).toEqual([...told].sort())
    },
  )

  test('two batteries with an isolator each: both are told, though neither alone stops anything', () => {
    const made = design()
      .part('battery', 'G1', { capacityAh: 100 })
      .part('battery', 'G2', { capacityAh: 100 })
      .part('isolator', 'Q1', { ratingA: 100, voltageV: 32 })
      .part('isolator', 'Q2', { ratingA: 100, voltageV: 32 })
      .part('busbar', 'W100', { studs: 8, pole: 'positive' })
      .part('busbar', 'W101', { studs: 8, pole: 'negative' })
      .part('lamp', 'E1', { currentA: 1 })
      .join('G1.+', 'Q1.1')
      .join('G2.+', 'Q2.1')
      .join('Q1.2', 'W100.1l')
      .join('Q2.2', 'W100.2l')
      .join('W100.3l', 'E1.+')
      .join('E1.-', 'W101.1l')
      .join('G1.-', 'W101.2l')
      .join('G2.-', 'W101.3l')
      .build()
    const i = isolationOf(made)
    expect(names(i.batteries)).toEqual(['Q1', 'Q2'])
    expect(i.stillOn).toEqual([])
    expect(i.unswitched).toEqual([])
    expect(switchEffects(made).map((e) => e.off)).toEqual([[], []])
  })
})
