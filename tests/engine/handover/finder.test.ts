import { describe, expect, test } from 'vitest'
import { effectsOf } from '../../../engine/calc/handover/effects'
import { fuseFinds } from '../../../engine/calc/handover/finder'
import { changed } from '../../../engine/calc/operating/change'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Design } from '../../../engine/model/design'
import { type DesignBuilder, design } from '../../build'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { drawing } from './loadflow'

const SOUND = DEMOS.filter((d) => d.file !== 'planted-mistakes.json')

/** Kirchhoff's laws, as the load flow solves them, decide which fuse makes what dead. */
describe.each(SOUND.map((d) => [d.title, d.make()] as const))('%s', (_, d) => {
  const usual = usualState(d)
  const before = drawing(d, usual)
  const finds = fuseFinds(d).filter((f) => before.has(f.thing.part.id))

  test('every load that draws is found, and told as working', () => {
    expect(finds.length).toBe(before.size)
    expect(finds.every((f) => f.works)).toBe(true)
  })

  test('a fuse is told to stop a thing where the load flow has it dead without the fuse, and only there', () => {
    for (const id of effectsOf(d).fuses.keys()) {
      const after = drawing(d, changed(usual, { set: 'fuse', id, out: true }))
      for (const { thing, fuses } of finds) {
        const step = fuses.find((s) => s.fuse.id === id)
        const told = step !== undefined && step.why !== 'one of several'
        expect([thing.part.designation, id, told]).toEqual([
          thing.part.designation,
          id,
          !after.has(thing.part.id),
        ])
      }
    }
  })

  test('of several side by side, all out make it dead, and any one alone keeps it alive', () => {
    for (const { thing, fuses } of finds) {
      const several = fuses.filter((s) => s.why === 'one of several')
      if (several.length === 0) continue
      const out = several.reduce((s, { fuse }) => changed(s, { set: 'fuse', id: fuse.id, out: true }), usual)
      expect(drawing(d, out).has(thing.part.id)).toBe(false)
      for (const { fuse } of several) {
        const whole = changed(out, { set: 'fuse', id: fuse.id, out: false })
        expect(drawing(d, whole).has(thing.part.id)).toBe(true)
      }
    }
  })

  test('a switch that must be on stops it in the load flow too', () => {
    for (const { thing, switches } of finds)
      for (const h of switches) {
        const off = h.branches.reduce(
          (s, id) =>
            changed(
              s,
              h.is === 'breaker' ? { set: 'fuse', id, out: true } : { set: 'contact', id, open: true },
            ),
          usual,
        )
        expect(drawing(d, off).has(thing.part.id)).toBe(false)
      }
  })
})

/** A random tree of fuse blocks below one battery; the fuses above each load are known as it grows. */
function grown(seed: number): { readonly made: Design; readonly above: Map<string, string[]> } {
  const random = new Random(seed)
  const above = new Map<string, string[]>()
  let b: DesignBuilder = design()
    .part('battery', 'G1', { capacityAh: 100 })
    .part('fuse-cartridge', 'F1', { ratingA: 100 })
    .part('busbar', 'W100', { studs: 40, pole: 'negative' })
    .join('G1.+', 'F1.1')
    .join('G1.-', 'W100.1l')
  let next = 2
  let returns = 2
  const open = [{ from: 'F1.2', path: ['F1'] }]
  for (const { from, path } of open) {
    const block = `F${next++}`
    const ways = random.whole(2, 3)
    b = b
      .part('fuse-block', block, { ways: Array.from({ length: ways }, () => ({ ratingA: 10, label: '' })) })
      .join(from, `${block}.in`)
    for (let way = 1; way <= ways; way++) {
      const longer = [`${block}:${way}`, ...path]
      if (open.length < 5 && random.chance(0.5)) open.push({ from: `${block}.${way}`, path: longer })
      else {
        const load = `E${above.size + 1}`
        above.set(load, longer)
        b = b
          .part('lamp', load, { currentA: 1 })
          .join(`${block}.${way}`, `${load}.+`)
          .join(`${load}.-`, `W100.${returns}l`)
        returns += 1
      }
    }
  }
  return { made: b.build(), above }
}

test('in a random tree the fuses above a load are those it grew below, nearest first', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const { made, above } = grown(seed)
    const found = new Map(
      fuseFinds(made).map(({ thing, fuses }) => [
        thing.part.designation,
        fuses.map(({ fuse, why }) => {
          expect(why).toBe('in the way')
          return fuse.way === null ? fuse.part.designation : `${fuse.part.designation}:${fuse.way}`
        }),
      ]),
    )
    expect(found).toEqual(above)
  }
})

test('the fuse of a coil comes after what is in the way of the current, nearest to the coil first', () => {
  const made = design()
    .part('battery', 'G1', { capacityAh: 100 })
    .part('fuse-cartridge', 'F1', { ratingA: 100 })
    .part('fuse-block', 'F2', {
      ways: [
        { ratingA: 15, label: 'Pump' },
        { ratingA: 3, label: 'Control' },
      ],
    })
    .part('relay', 'K1', { ratingA: 30 })
    .part('panel-switch', 'S1', { ratingA: 6 }, { name: 'Pump switch' })
    .part('fuse-blade', 'F3', { ratingA: 1 })
    .part('pump', 'M1', { currentA: 5 })
    .part('busbar', 'W100', { studs: 8, pole: 'negative' })
    .join('G1.+', 'F1.1')
    .join('F1.2', 'F2.in')
    .join('F2.1', 'K1.30')
    .join('K1.87', 'M1.+')
    .join('F2.2', 'S1.1')
    .join('S1.2', 'F3.1')
    .join('F3.2', 'K1.86')
    .join('M1.-', 'W100.1l')
    .join('K1.85', 'W100.2l')
    .join('G1.-', 'W100.3l')
    .build()
  const [find] = fuseFinds(made)
  expect(find?.fuses.map(({ fuse, why }) => [fuse.part.designation, fuse.way, why])).toEqual([
    ['F2', '1', 'in the way'],
    ['F1', null, 'in the way'],
    ['F3', null, 'feeds the switching'],
    ['F2', '2', 'feeds the switching'],
  ])
  expect(find?.switches.map((h) => h.part.designation)).toEqual(['S1'])
})
