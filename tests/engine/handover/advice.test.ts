import { describe, expect, test } from 'vitest'
import type { Design } from '../../../engine/model/design'
import type { ChapterKey } from '../../../engine/words/handover/language'
import { handoverBook } from '../../../engine/words/handover/make'
import { design } from '../../build'
import { DEMOS } from '../../scenarios/demos/all'

const demo = (file: string): Design => DEMOS.find((d) => d.file === file)!.make()

/** Every line of a chapter, in order. */
const linesOf = (d: Design, key: ChapterKey): string[] =>
  handoverBook(d)
    .chapters.find((c) => c.key === key)!
    .pieces.flatMap((p) => (p.is === 'list' ? p.items : p.is === 'entry' ? [p.title, ...p.lines] : []))

const at = (lines: readonly string[], part: string | RegExp): number =>
  lines.findIndex((l) => (typeof part === 'string' ? l.includes(part) : part.test(l)))

/** The orders below are common practice: a solar controller keeps its battery for as long as it has sun. */
describe('order of switching off', () => {
  test('the solar side goes off before the batteries, laid up and looked after', () => {
    const van = demo('veterinary-van.json')
    for (const key of ['storage', 'care'] as const) {
      const [line] = linesOf(van, key).filter((l) => l.includes('F13') && l.includes('Q1'))
      expect(line).toMatch(/F11.*F12.*F13.*Q1/)
    }
    expect(linesOf(van, 'care').filter((l) => l.includes('Q1'))).toHaveLength(1)
  })

  test('laying up: things and the mains lead first, then the switches', () => {
    const lines = linesOf(demo('veterinary-van.json'), 'storage')
    const order = [at(lines, 'at the thing itself'), at(lines, 'X21'), at(lines, 'Q1')]
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(order[0]).toBeGreaterThanOrEqual(0)
    expect(at(lines, /Starting battery \(G3\).*freezes/)).toBeGreaterThan(0)
  })

  test('where no switch parts the modules, they are covered first, and the isolator waits for the dark', () => {
    const trailer = demo('camping-trailer.json')
    const storage = linesOf(trailer, 'storage')
    expect(at(storage, 'Cover the solar modules')).toBe(at(storage, 'Switch off Isolator (Q1') - 1)
    expect(at(linesOf(trailer, 'care'), 'after dark only')).toBeGreaterThan(0)
    expect(at(linesOf(demo('mountain-cabin.json'), 'care'), 'after dark only')).toBe(-1)
  })
})

test.each(DEMOS.map((d) => [d.title, d.make()] as const))(
  '%s: gas is told of before the first switch',
  (_, d) => {
    const { pieces } = handoverBook(d).chapters.find((c) => c.key === 'emergency')!
    const gas = pieces.findIndex((p) => p.is === 'text' && /gas.*work no switch/.test(p.text))
    expect(gas).toBeGreaterThanOrEqual(0)
    expect(gas).toBeLessThan(pieces.findIndex((p) => p.is === 'list'))
  },
)

test('a charger with a battery still behind it is told to go on, one without is not', () => {
  const said = (d: Design): boolean => at(linesOf(d, 'emergency'), /still feeds .*T4/) >= 0
  const van = demo('veterinary-van.json')
  expect(said(van)).toBe(true)
  const g3 = van.parts.find((p) => p.designation === 'G3')!
  const without = {
    ...van,
    parts: van.parts.filter((p) => p !== g3),
    conductors: van.conductors.filter((c) => c.from.part !== g3.id && c.to.part !== g3.id),
  }
  expect(said(without)).toBe(false)
})

test('a plug is never pulled under current, and what stops its current is named', () => {
  const van = demo('veterinary-van.json')
  const lines = linesOf(van, 'switches')
  const plug = at(lines, 'Awning socket (X1)')
  expect(lines.slice(plug).join(' ')).toMatch(/Never pull it.*switch off Awning array breaker \(F13/)
  expect(at(linesOf(van, 'everyday'), /Before you pull Awning socket \(X1\).*F13/)).toBeGreaterThan(0)
  const bare = design()
    .part('battery', 'G1', { capacityAh: 100 })
    .part('connector', 'X1', {}, { name: 'Plug' })
    .part('lamp', 'E1', { currentA: 1 })
    .join('G1.+', 'X1.1a')
    .join('X1.1b', 'E1.+')
    .join('E1.-', 'G1.-')
    .build()
  expect(at(linesOf(bare, 'switches'), 'Never pull it')).toBeGreaterThan(0)
  expect(at(linesOf(bare, 'switches'), 'Before you pull')).toBe(-1)
})
