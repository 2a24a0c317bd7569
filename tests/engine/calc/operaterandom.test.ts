import { describe, expect, it } from 'vitest'
import { operate } from '../../../engine/calc/operate'
import { changed, type OperatingChange } from '../../../engine/calc/operating/change'
import { CHARGE_STAGES } from '../../../engine/calc/operating/charging'
import { type Control, controlsOf } from '../../../engine/calc/operating/control'
import type { OperatingState } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import { KINDS } from '../../../engine/kinds/all'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import type { Cell, CellField, Field, Value } from '../../../engine/model/fields'
import { newConductor, newDesign } from '../../../engine/model/newdesign'
import { complete } from '../../../engine/model/values'
import { writeDesign } from '../../../engine/model/write'
import { operatingNoteWords } from '../../../engine/words/operate'
import { certificate } from '../../reference/balance'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'

/** Any state that can be set by hand, some of it not at all as usual. */
function anyState(random: Random, controls: readonly Control[], from: OperatingState): OperatingState {
  const changes = controls.flatMap((c): OperatingChange[] => {
    if (!random.chance(0.4)) return []
    if (c.is === 'contact') return [{ set: 'contact', id: c.id, open: random.chance(0.4) }]
    if (c.is === 'fuse') return [{ set: 'fuse', id: c.id, out: random.chance(0.2) }]
    if (c.is === 'throw') return [{ set: 'throw', id: c.id, position: random.pick(c.positions) }]
    if (c.is === 'stage') return [{ set: 'stage', id: c.id, stage: random.pick(CHARGE_STAGES) }]
    return [{ set: c.is, id: c.id, share: random.chance(0.5) ? random.unit() : random.whole(0, 1) }]
  })
  return changes.reduce(changed, from)
}

function check(d: Design, state: OperatingState): 'ok' | string {
  const p = operate(d, state)
  if (!p.ok) return p.reason
  const { kirchhoff, ohm, power, size } = certificate(d, p)
  expect(kirchhoff).toBeLessThan(1e-6 * Math.max(1, size / 12))
  expect(ohm).toBeLessThan(1e-6)
  expect(power).toBeLessThan(1e-6 * size)
  for (const n of p.notes) expect(operatingNoteWords(n, d)).toMatch(/^[^{}<>]+\.$/)
  for (const id of p.state.open) expect(p.branches.get(id)).toBe(0)
  return 'ok'
}

describe('random states of the demos', () => {
  it.each(DEMOS.map((demo) => [demo.title, demo.make()] as const))('%s: always balances', (_, d) => {
    const random = new Random(11)
    const controls = controlsOf(d)
    const usual = usualState(d)
    let state = usual
    for (let i = 0; i < 40; i++) {
      state = anyState(random, controls, random.chance(0.2) ? usual : state)
      expect(check(d, state)).toBe('ok')
    }
  })
})

/** A value that the reader accepts: often ordinary, sometimes missing, nothing or out of all proportion. */
function anyCell(random: Random, field: CellField): Cell {
  if (field.type === 'flag') return random.chance(0.5)
  if (field.type === 'choice') return random.pick(Object.keys(field.options))
  if (field.type === 'text') return ''
  if (random.chance(0.15)) return null
  const min = field.min ?? 0
  const max = Math.min(field.max ?? 1e6, random.pick([1, 10, 100, 1e4]))
  if (random.chance(0.2)) return min
  const value = Math.max(min, Math.min(max, random.between(min, max)))
  return field.whole ? Math.round(value) : value
}

const anyValue = (random: Random, field: Field): Value | undefined =>
  field.type === 'rows' ? undefined : anyCell(random, field)

/** Parts of every kind joined at random: nothing about it is sensible. */
function anyDesign(seed: number): Design {
  const random = new Random(seed)
  const base = newDesign('any', { systemV: random.pick([12, 24, 48] as const) })
  const stores = ['battery', 'starting-battery', 'battery'].map((key) => KINDS.find((k) => k.key === key)!)
  const parts = Array.from({ length: random.whole(3, 25) }, (_, i) => {
    const kind = i < 2 ? random.pick(stores) : random.pick(KINDS)
    const values: Record<string, Value> = {}
    for (const [key, field] of Object.entries(kind.fields)) {
      const value = random.chance(0.5) ? anyValue(random, field) : undefined
      if (value !== undefined && field.role !== 'result') values[key] = value
    }
    return {
      id: `p${i}`,
      kind: kind.key,
      designation: `${kind.letter}${i}`,
      name: '',
      location: '',
      x: i * 60,
      y: 0,
      turn: 0 as const,
      mirrored: false,
      values: complete(kind.fields, values),
    }
  })
  const ends = parts.flatMap((p) => {
    const kind = KINDS.find((k) => k.key === p.kind)!
    return kind.terminals(p.values).map((t) => ({ part: p.id, terminal: t.key }))
  })
  const conductors = Array.from({ length: random.whole(5, 70) }, (_, i) => ({
    ...newConductor(`c${i}`, `W${i}`, random.pick(ends), random.pick(ends)),
    size: random.chance(0.9) ? random.pick(['1.5mm2', '6mm2', '50mm2']) : null,
    lengthM: random.chance(0.9) ? random.between(0.1, 8) : null,
  })).filter((c) => c.from.part !== c.to.part || c.from.terminal !== c.to.terminal)
  return { ...base, parts, conductors }
}

describe('random designs', () => {
  it('never throw, and balance where they have an operating point', () => {
    const outcomes = new Map<string, number>()
    for (let seed = 1; seed <= 300; seed++) {
      const read = readDesign(writeDesign(anyDesign(seed)))
      if (!('design' in read) || !read.design) throw new Error(JSON.stringify(read))
      const d = read.design
      const random = new Random(seed + 10_000)
      const state = anyState(random, controlsOf(d), usualState(d))
      const outcome = check(d, state)
      outcomes.set(outcome, (outcomes.get(outcome) ?? 0) + 1)
    }
    expect(outcomes.get('ok')).toBeGreaterThan(250)
  })
})
