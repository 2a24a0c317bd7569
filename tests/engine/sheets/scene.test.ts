import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import { conductorById } from '../../../engine/model/lookup'
import { analyse } from '../../../engine/rules/analyse'
import { extentOf } from '../../../engine/sheets/extent'
import { sceneOf } from '../../../engine/sheets/makescene'
import { runWords } from '../../../engine/sheets/runwords'
import type { Scene } from '../../../engine/sheets/scene'
import { type DrawnQuality, drawnQuality, onPaperOf } from '../../bench/drawnquality'
import { design } from '../../build'

const DEMOS = ['camping-trailer', 'expedition-truck', 'mountain-cabin', 'veterinary-van', 'planted-mistakes']

function demo(name: string): Design {
  const file = new URL(`../../../public/demos/${name}.json`, import.meta.url)
  const { design: read } = readDesign(readFileSync(file, 'utf8'))
  if (!read) throw new Error(`${name} is no design`)
  return read
}

/** The text of a label, lines in order. */
const textOf = (scene: Scene, of: Record<string, string>): string =>
  scene.labels
    .filter((l) => JSON.stringify(l.of) === JSON.stringify(of))
    .flatMap((l) => l.marks.map((m) => (m.is === 'text' ? m.text : '')))
    .join(' ')

const trailer = () =>
  design({ systemV: 12 })
    .part('battery', 'G1', { capacityAh: 100, dischargeA: 100, chargeA: 50 }, { x: 0, y: 40 })
    .part('fuse-block', 'F1', { ratingA: 100, ways: [{ ratingA: 10, label: 'Fridge' }] }, { x: 80, y: 20 })
    .part('busbar', 'W9', { ratingA: 100 }, { x: 80, y: 80 })
    .part('load', 'E1', { currentA: 4 }, { x: 200, y: 20, name: 'Fridge' })
    .join('G1.+', 'F1.in', { size: '16mm2', lengthM: 0.4, colour: 'RD' })
    .join('W9.1l', 'G1.-', { size: '16mm2', lengthM: 0.5 })
    .join('F1.1', 'E1.+', { size: '2.5mm2', lengthM: 3, colour: 'RD' })
    .join('E1.-', 'W9.1r', { size: '2.5mm2', lengthM: 3, returnOf: 'W3' })
    .build()

describe('views', () => {
  test('single-line: a return is part of the line of its feed, and its words name the bar', () => {
    const d = trailer()
    const scene = sceneOf(d, analyse(d).answers, 'single-line')
    expect(scene.conductors.map((c) => c.id)).toEqual(['c1', 'c2', 'c3'])
    expect(scene.conductors.map((c) => c.withReturn)).toEqual([null, null, 'c4'])
    const words = textOf(scene, { conductor: 'c3' })
    for (const piece of ['W3/W4', '2.5 mm²', 'RD/BK', '3 m', 'max 4 A', 'F1 10 A', 'returns to W9:1'])
      expect(words).toContain(piece)
  })

  test('both poles: every conductor', () => {
    const d = trailer()
    const scene = sceneOf(d, null, 'both-poles')
    expect(scene.conductors.map((c) => [c.id, c.nature])).toEqual([
      ['c1', 'positive'],
      ['c2', 'negative'],
      ['c3', 'positive'],
      ['c4', 'negative'],
    ])
  })

  test('data: links alone, and the parts that they reach', () => {
    const d = demo('camping-trailer')
    const scene = sceneOf(d, null, 'data')
    expect(scene.conductors.length).toBeGreaterThan(2)
    expect(scene.conductors.every((c) => c.nature === 'data')).toBe(true)
    const ends = new Set(scene.conductors.flatMap((c) => [c.from.part, c.to.part]))
    expect(new Set(scene.parts.map((p) => p.id))).toEqual(ends)
  })
})

describe('words', () => {
  test('of a load: designation, name, current, measured or not', () => {
    const d = trailer()
    const { answers } = analyse(d)
    expect(textOf(sceneOf(d, answers, 'single-line'), { part: 'p4' })).toBe('E1  Fridge 4 A · not measured')
    expect(textOf(sceneOf(d, null, 'single-line'), { part: 'p4' })).toBe('E1  Fridge 4 A · metering ?')
  })

  test('a figure that is not known is a question, never a blank', () => {
    const d = design()
      .part('battery', 'G1')
      .part('load', 'E1', {}, { x: 100 })
      .join('G1.+', 'E1.+')
      .join('E1.-', 'G1.-')
      .build()
    const words = textOf(sceneOf(d, analyse(d).answers, 'both-poles'), { conductor: 'c1' })
    expect(words).toContain('? mm²')
    expect(words).toContain('? m')
    expect(words).toMatch(/max not checked|max unlimited/)
    expect(words).toMatch(/NO PROTECTION|protection not checked/)
    expect(textOf(sceneOf(d, null, 'both-poles'), { part: 'p2' })).toContain('? A')
  })

  test('of a pair: trouble of the return stands on the drawing too', () => {
    const d = demo('planted-mistakes')
    const feed = d.conductors.find((c) => c.number === 'W71')!
    const words = textOf(sceneOf(d, analyse(d).answers, 'single-line'), { conductor: feed.id })
    expect(words).toMatch(/W72 .* F5:11 25 A: TOO THIN · returns to W4:12/)
  })

  test('of a return without a limit: the feed that is bare, as rule P5 has it', () => {
    const d = demo('planted-mistakes')
    const { answers } = analyse(d)
    const unlimited = d.conductors.filter((c) => {
      const sustained = answers.runs.get(c.id)?.sustained
      return sustained && 'value' in sustained && sustained.value.amps === 'unlimited'
    })
    expect(unlimited.length).toBeGreaterThan(3)
    for (const c of unlimited)
      expect(runWords(d, c, answers).protection).toBe('without limit while W201 is bare')
  })

  test('of a pair alike in all but how it is laid: the return by its number', () => {
    const sized = { size: '2.5mm2', lengthM: 3, sheathed: true }
    const d = design({ systemV: 12 })
      .part('battery', 'G1', { capacityAh: 100, dischargeA: 100, chargeA: 50 })
      .part('fuse-block', 'F1', { ratingA: 100, returnBar: true, ways: [{ ratingA: 20, label: '' }] })
      .part('load', 'E1', { currentA: 12 }, { x: 300 })
      .join('G1.+', 'F1.in', { size: '35mm2', lengthM: 0.1 })
      .join('F1.return', 'G1.-', { size: '35mm2', lengthM: 0.1 })
      .join('F1.1', 'E1.+', sized)
      .join('E1.-', 'F1.r1', { ...sized, bunched: 30, returnOf: 'W3' })
      .build()
    const words = textOf(sceneOf(d, analyse(d).answers, 'single-line'), { conductor: 'c3' })
    expect(words).toContain('W3/W4  · 2.5 mm² BK · 3 m · in a sheath')
    expect(words).toContain('F1 20 A · W4 F1 20 A: TOO THIN · returns to F1 return 1')
  })

  test('of an array and its controller: what limits, and the terminal that the return goes to', () => {
    const d = design({ systemV: 12 })
      .part('pv-array', 'G5', { vocV: 24.3, iscA: 9.8, vmpV: 20, impA: 9.5, maxFuseA: 20 })
      .part('solar-controller', 'T3', {}, { x: 200 })
      .join('G5.+', 'T3.pv+', { size: '6mm2', lengthM: 3, colour: 'RD' })
      .join('G5.-', 'T3.pv-', { size: '6mm2', lengthM: 3, returnOf: 'W1' })
      .build()
    const words = textOf(sceneOf(d, analyse(d).answers, 'single-line'), { conductor: 'c1' })
    // 1.25 × 9.8 A = 12.25 A, printed to three figures.
    expect(words).toContain('limited by G5 12.3 A')
    expect(words).toContain('returns to T3 PV −')
  })

  test('of a part of an unknown kind', () => {
    const known = trailer()
    const d = { ...known, parts: known.parts.map((p) => (p.id === 'p4' ? { ...p, kind: 'teleporter' } : p)) }
    const scene = sceneOf(d, analyse(d).answers, 'both-poles')
    expect(textOf(scene, { part: 'p4' })).toContain('unknown kind')
    expect(scene.conductors.every((c) => c.routed)).toBe(true)
  })
})

/** What must be none in every drawing. */
const faultsOf = ({ overlaps, tooNear, passes, touches, labelCollisions, textsInLanes }: DrawnQuality) => ({
  ...{ overlaps, tooNear, passes, touches, labelCollisions, textsInLanes },
})
const NO_FAULTS = { overlaps: 0, tooNear: 0, passes: 0, touches: 0, labelCollisions: 0, textsInLanes: 0 }

describe.each(DEMOS)('demo %s', (name) => {
  const d = demo(name)
  const { answers } = analyse(d)

  test.each(['single-line', 'both-poles', 'data'] as const)('%s: nothing lies on anything', (view) => {
    const scene = sceneOf(d, answers, view)
    expect(faultsOf(drawnQuality(d, scene))).toEqual(NO_FAULTS)
    expect(scene.conductors.filter((c) => !c.routed).map((c) => conductorById(d, c.id)!.number)).toEqual([])
  })

  test.each(['single-line', 'both-poles'] as const)('%s on paper: nothing lies on anything', (view) => {
    for (const quality of onPaperOf(d, answers, view)) expect(faultsOf(quality)).toEqual(NO_FAULTS)
  })

  test('no leader runs through words, or through a symbol that is not its own', () => {
    const scene = sceneOf(d, answers, 'single-line')
    const words = scene.labels.map(extentOf)
    const struck = scene.labels.filter(({ leader, of }) => {
      if (!leader) return false
      const others = scene.parts.filter((p) => !('part' in of && of.part === p.id))
      const within = (x: number, y: number): boolean =>
        [...words, ...others].some(
          (r) => x > r.x + 0.2 && x < r.x + r.w - 0.2 && y > r.y + 0.2 && y < r.y + r.h - 0.2,
        )
      const [[x1, y1], [x2, y2]] = leader
      return Array.from({ length: 60 }, (_, i) => (i + 1) / 62).some((t) =>
        within(x1 + t * (x2 - x1), y1 + t * (y2 - y1)),
      )
    })
    expect(struck.map((l) => textOf(scene, l.of as Record<string, string>))).toEqual([])
  })

  test('an edit elsewhere moves few words', () => {
    const first = sceneOf(d, answers, 'single-line')
    const moved = d.parts.at(-1)!
    const edited = { ...d, parts: d.parts.map((p) => (p === moved ? { ...p, x: p.x + 5, y: p.y + 5 } : p)) }
    const again = sceneOf(edited, answers, 'single-line', first)
    const before = new Set(first.labels.map((l) => JSON.stringify(l)))
    const stayed = again.labels.filter((l) => before.has(JSON.stringify(l)))
    expect(stayed.length).toBeGreaterThan(0.75 * first.labels.length)
    expect(drawnQuality(edited, again).labelCollisions).toBe(0)
  })

  test('a scene made again from itself stays as it is', () => {
    const first = sceneOf(d, answers, 'single-line')
    const again = sceneOf(d, answers, 'single-line', first)
    expect(again.conductors).toEqual(first.conductors)
    expect(again.labels).toEqual(first.labels)
  })
})
