import { describe, expect, test } from 'vitest'
import { apply } from '../../../engine/edit/apply'
import { builtEdit, tickEdit, torqueEdit } from '../../../engine/edit/bench'
import type { Edit } from '../../../engine/edit/edit'
import { BENCH_STEPS, type BenchStep } from '../../../engine/model/bench'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import { benchSection } from '../../../engine/sheets/bench/bench.section'
import { benchList } from '../../../engine/sheets/bench/benchlist'
import { type BenchCard, benchCards } from '../../../engine/sheets/bench/card'
import { BENCH_ORDERS, type BenchOrder, benchGroups } from '../../../engine/sheets/bench/order'
import { benchProgress, cardsNumbered, nextCard } from '../../../engine/sheets/bench/progress'
import { conductorSchedule } from '../../../engine/sheets/schedules/conductors'
import { conductorNumbered, design } from '../../build'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { bench } from '../rules/bench'
import { randomDesign } from '../rules/randomdesign'

const NOW = { at: '2026-03-04T09:30:00.000Z', by: 'tablet' }
const ORDERS = Object.keys(BENCH_ORDERS) as BenchOrder[]
const cardsOf = (d: Design): readonly BenchCard[] => benchCards(d, analyse(d).answers)
const numbers = (cards: readonly BenchCard[]): string[] => cards.map((c) => c.number)

function made(d: Design, ...edits: readonly Edit[]): Design {
  return edits.reduce((now, edit) => {
    const result = apply(now, edit)
    if (result.refused) throw new Error(result.why)
    return result.design
  }, d)
}

const ticked = (d: Design, number: string, ...steps: readonly BenchStep[]): Design =>
  made(d, ...steps.map((step) => tickEdit(d, conductorNumbered(d, number), step, true, NOW)))

const places = () =>
  design()
    .part('battery', 'G1', {}, { location: 'bay' })
    .part('fuse-block', 'F2', {}, { location: 'wall' })
    .part('lamp', 'E1', { currentA: 2 }, { location: 'wall' })
    .part('lamp', 'E2', { currentA: 2 }, { location: 'roof' })
    .part('lamp', 'E3', { currentA: 2 })
    .join('G1.+', 'F2.in', { size: '16mm2', lengthM: 1, colour: 'RD' })
    .join('F2.2', 'E2.+', { size: '1.5mm2', lengthM: 2, colour: 'RD' })
    .join('F2.1', 'E1.+', { size: '1.5mm2', lengthM: 5, colour: 'RD' })
    .join('F2.3', 'E3.+', { size: '1.5mm2', lengthM: 3, colour: 'BK' })
    .join('E1.-', 'G1.-')
    .build()

describe('building order', () => {
  const d = places()
  const groups = (order: BenchOrder) =>
    benchGroups(d, cardsOf(d), order).map(({ title, cards }) => `${title}: ${numbers(cards).join(' ')}`)

  test('by part: at the part where more conductors meet, in the order of its terminals', () => {
    expect(groups('part')).toEqual(['E1: W5', 'F2: W3 W2 W4 W1'])
  })

  test('by part: a data lead does not draw copper away from the block that it lands on', () => {
    const van = DEMOS.map((demo) => demo.make()).find((v) => v.settings.name === 'Mobile veterinary van')!
    const block = benchGroups(van, cardsOf(van), 'part').find((g) => g.title === 'F4 Charging block')
    expect(numbers(block?.cards ?? [])).toEqual(['W27', 'W32', 'W39', 'W48'])
  })

  test('by size: as in the cut list, the longest first; what has no size comes last', () => {
    expect(groups('size')).toEqual([
      '1.5 mm² · BK black: W4',
      '1.5 mm² · RD red: W3 W2',
      '16 mm² · RD red: W1',
      'Size not chosen · BK black: W5',
    ])
  })

  test('by location: within one place, from there to another; what states none comes last', () => {
    expect(groups('location')).toEqual([
      'bay – wall: W1 W5',
      'roof – wall: W2',
      'wall: W3',
      'no place stated – wall: W4',
    ])
  })

  test.each(DEMOS.map((demo) => demo.make()))(
    'of $settings.name: every conductor once in every order',
    (demo) => {
      const cards = cardsOf(demo)
      const all = demo.conductors.map((c) => c.number).sort()
      for (const order of ORDERS)
        expect(numbers(benchGroups(demo, cards, order).flatMap((g) => g.cards)).sort()).toEqual(all)
    },
  )
})

describe('cards', () => {
  const d = bench().build()

  test('say what the conductor schedule says', () => {
    const rows = conductorSchedule(d, analyse(d).answers).rows
    for (const card of cardsOf(d)) {
      const { cells } = rows.find((r) => r.key === card.conductor.id)!
      expect([card.cut, card.marker, card.from.fitting, card.protection]).toEqual([
        cells.cut,
        cells.marker,
        cells.fromLug,
        cells.protection,
      ])
    }
  })

  test('as built where that differs, with a torque once somebody has read it', () => {
    const w3 = conductorNumbered(d, 'W3')
    const built = made(
      d,
      builtEdit(d, w3, { what: 'lengthM', value: 3.5 }, NOW),
      torqueEdit(d, w3.from, 2.5, NOW),
    )
    const card = cardsOf(built).find((c) => c.number === 'W3')!
    expect(card).toMatchObject({
      length: 3.5,
      cut: 3.7,
      from: { newtonMetres: 2.5 },
      to: { newtonMetres: null },
    })
    expect(card.differences).toHaveLength(1)
    expect(card.conductor.lengthM).toBe(3)
  })

  test('are found by number, the whole number first', () => {
    const named = (...list: string[]) =>
      list.reduce((now, number) => now.join('E1.+', 'E2.+', { number }), two).build()
    const two = design().part('lamp', 'E1', { currentA: 1 }).part('lamp', 'E2', { currentA: 1 })
    const cards = cardsOf(named('W112', 'W120', 'W12', 'W2'))
    expect(numbers(cardsNumbered(cards, '12'))).toEqual(['W12', 'W120', 'W112'])
    expect(numbers(cardsNumbered(cards, 'w2'))).toEqual(['W2'])
    expect(cardsNumbered(cards, '77')).toEqual([])
    expect(cardsNumbered(cards, ' ')).toEqual([])
  })
})

describe('progress', () => {
  const d = bench().build()
  const done = ticked(d, 'W1', ...BENCH_STEPS)

  test('counts conductors and steps; a step to be looked at again is not done', () => {
    expect(benchProgress(cardsOf(done))).toEqual({
      finished: 1,
      conductors: 6,
      stepsDone: 5,
      steps: 30,
      again: 0,
    })
    const changed = made(done, { do: 'conductor', conductors: ['c1'], set: { size: '50mm2' } })
    expect(benchProgress(cardsOf(changed))).toMatchObject({ finished: 0, stepsDone: 3, again: 2 })
  })

  test('the next one is the next in order with something left to do, round to the first', () => {
    const cards = cardsOf(done)
    expect(nextCard(cards, null)?.number).toBe('W2')
    expect(nextCard(cards, 'c2')?.number).toBe('W3')
    expect(nextCard(cards, 'c6')?.number).toBe('W2')
    const all = ['W1', 'W2', 'W3', 'W4', 'W5', 'W6'].reduce((now, n) => ticked(now, n, ...BENCH_STEPS), d)
    expect(nextCard(cardsOf(all), 'c2')).toBeNull()
    expect(nextCard([], null)).toBeNull()
  })
})

describe('bench list on paper', () => {
  test('has every conductor that is built here once, with a box for each of its steps, and no mains', () => {
    for (const demo of DEMOS.map((x) => x.make())) {
      const { answers, findings } = analyse(demo)
      const list = benchList(demo, answers)
      const cards = benchCards(demo, answers)
      expect(list.rows.map((r) => r.name).sort()).toEqual(
        numbers(cards.filter((c) => c.work !== 'mains')).sort(),
      )
      const boxes = list.rows.flatMap((r) => BENCH_STEPS.filter((step) => r.cells[step] !== ''))
      expect(boxes).toHaveLength(cards.flatMap((c) => c.steps).length)
      for (const paper of ['A3', 'A4'] as const) {
        const sheets = benchSection.sheets({ design: demo, answers, findings, paper, view: 'single-line' })
        const texts = sheets.flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])))
        for (const row of list.rows) expect(texts, row.name).toContain(row.name)
        // A box is a closed outline of 3.2 mm.
        const outlines = sheets.flatMap((s) =>
          s.marks.filter((m) => m.is === 'line' && isBox(m.points as readonly (readonly [number, number])[])),
        )
        expect(outlines).toHaveLength(boxes.length)
      }
    }
  })

  test('what is recorded is printed: ticks, what was built otherwise, what is to be looked at again', () => {
    const d = ticked(bench().build(), 'W3', 'cut', 'labelled')
    const built = made(d, builtEdit(d, conductorNumbered(d, 'W5'), { what: 'size', value: '4mm2' }, NOW))
    const changed = made(built, { do: 'conductor', conductors: ['c3'], set: { colour: 'BU' } })
    const { rows, notes } = benchList(changed, analyse(changed).answers)
    const cells = (number: string) => rows.find((r) => r.name === number)!.cells
    expect(cells('W3')).toMatchObject({ cut: 'again', crimped: 'open', labelled: 'done' })
    expect(cells('W5').otherwise).toBe('Size 4 mm², drawn 2.5 mm²')
    expect(notes.join('\n')).toContain('look at it again')
  })

  test('a torque that was recorded is printed at its end; elsewhere there is a line to write it on', () => {
    const d = bench().build()
    const [from, to] = cardsOf(d).flatMap((c) => (c.number === 'W2' ? [c.from.at, c.to.at] : []))
    const recorded = made(d, torqueEdit(d, from!, 12, NOW))
    const { rows } = benchList(recorded, analyse(recorded).answers)
    const cells = rows.find((r) => r.name === 'W2')!.cells
    expect(to).toBeDefined()
    expect(cells).toMatchObject({ fromTorque: '12', toTorque: '_____' })
    const crimped = rows.filter((r) => /crimp joint/.test(String(r.cells.toFitting)))
    for (const row of crimped) expect(row.cells.toTorque).toBe('')
  })

  test('what the checks find as built is printed above the list', () => {
    const d = bench().build()
    const built = made(d, builtEdit(d, conductorNumbered(d, 'W2'), { what: 'size', value: '6mm2' }, NOW))
    const { answers, findings } = analyse(built)
    const sheets = benchSection.sheets({
      ...{ design: built, answers, findings },
      ...({ paper: 'A4', view: 'single-line' } as const),
    })
    const text = sheets.flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))).join(' ')
    expect(text).toContain('As built: ')
    expect(text).toContain('Size 6 mm², drawn 35 mm²')
  })

  test('random designs give cards, groups and a list without an error', { timeout: 60_000 }, () => {
    for (let seed = 700; seed < 740; seed++) {
      const random = new Random(seed)
      const d = randomDesign(random, random.whole(1, 30), seed % 2 ? 'wild' : 'sensible')
      const list = benchList(d, analyse(d).answers, ORDERS[seed % 3])
      expect(list.rows.length).toBeLessThanOrEqual(d.conductors.length)
    }
  })
})

function isBox(points: readonly (readonly [number, number])[]): boolean {
  const [x, y] = [points.map((p) => p[0]), points.map((p) => p[1])]
  const side = (of: readonly number[]) => Math.max(...of) - Math.min(...of)
  return Math.abs(side(x) - 3.2) < 1e-6 && Math.abs(side(y) - 3.2) < 1e-6
}
