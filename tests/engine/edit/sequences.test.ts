import fc from 'fast-check'
import { expect, test } from 'vitest'
import { addPartEdit } from '../../../engine/edit/addpart'
import { apply } from '../../../engine/edit/apply'
import { duplicateEdit } from '../../../engine/edit/clip'
import { designIn } from '../../../engine/edit/designin'
import type { Edit } from '../../../engine/edit/edit'
import { historyOf, push, redo, undo } from '../../../engine/edit/history'
import { joinEdit } from '../../../engine/edit/joinedit'
import { removeEdit } from '../../../engine/edit/removal'
import { KINDS } from '../../../engine/kinds/all'
import { terminalsOf } from '../../../engine/kinds/place'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design, TerminalRef } from '../../../engine/model/design'
import { newDesign } from '../../../engine/model/newdesign'
import { writeDesign } from '../../../engine/model/write'

/** A random gesture: what it does depends on the design that it meets; `pick` chooses among what is there. */
interface Gesture {
  readonly kind: number
  readonly pick: readonly [number, number, number, number]
}

const gesture: fc.Arbitrary<Gesture> = fc.record({
  kind: fc.nat(99),
  pick: fc.tuple(fc.nat(9999), fc.nat(9999), fc.nat(9999), fc.nat(9999)),
})

const VIEWS = ['both-poles', 'data'] as const

const one = <T>(list: readonly T[], pick: number): T | undefined => list[pick % Math.max(1, list.length)]

function terminalIn(design: Design, part: number, terminal: number): TerminalRef | null {
  const p = one(design.parts, part)
  const t = p && one(terminalsOf(p), terminal)
  return p && t ? { part: p.id, terminal: t.key } : null
}

function editFor(design: Design, { kind, pick: [a, b, c, d] }: Gesture): Edit | null {
  if (kind < 25) return addPartEdit(design, one(KINDS, a)!.key, { x: b % 500, y: c % 500 })
  const part = one(design.parts, a)
  const conductor = one(design.conductors, b)
  if (kind < 55) {
    const [from, to] = [terminalIn(design, a, c), terminalIn(design, b, d)]
    if (!from || !to) return null
    const edit = joinEdit(design, from, to)
    return 'refused' in edit ? null : edit
  }
  if (!part) return null
  if (kind < 58) return { do: 'move', to: [{ part: part.id, x: c - 5000, y: d - 5000 }] }
  if (kind < 61)
    return { do: 'move', to: [{ part: part.id, x: c - 5000, y: d - 5000 }], view: one(VIEWS, a + b)! }
  if (kind < 62) return { do: 'follow', parts: [part.id], view: b % 2 ? 'data' : 'both-poles' }
  if (kind < 67) return { do: 'turn', parts: [part.id], by: ([90, 180, 270] as const)[c % 3]! }
  if (kind < 70) return { do: 'mirror', parts: [part.id] }
  if (kind < 75) return { do: 'part', part: part.id, set: { name: `name ${c}`, designation: `Z${d % 40}` } }
  if (kind < 80) return duplicateEdit(design, { parts: [part.id, one(design.parts, d)!.id], conductors: [] })
  if (kind < 84) return removeEdit(design, { parts: [part.id], conductors: [] })
  if (kind < 88) return { do: 'settings', set: { ambientC: c % 60, notes: `${d}` } }
  if (!conductor) return null
  if (kind < 93)
    return {
      do: 'conductor',
      conductors: [conductor.id],
      set: { size: '10mm2', lengthM: (c + 1) / 1000, bunched: 1 + (d % 9) },
    }
  const to = terminalIn(design, c, d)
  return to && { do: 'reconnect', conductor: conductor.id, end: a % 2 === 0 ? 'from' : 'to', to }
}

/** What every design must hold, whatever was done to it. */
function expectWhole(design: Design): void {
  const ids = new Set(design.parts.map((p) => p.id))
  expect(ids.size).toBe(design.parts.length)
  expect(new Set(design.parts.map((p) => p.designation)).size).toBe(design.parts.length)
  expect(new Set(design.conductors.map((c) => c.id)).size).toBe(design.conductors.length)
  expect(new Set(design.conductors.map((c) => c.number)).size).toBe(design.conductors.length)
  for (const c of design.conductors)
    for (const end of [c.from, c.to]) {
      const part = design.parts.find((p) => p.id === end.part)
      expect(part && terminalsOf(part).some((t) => t.key === end.terminal)).toBe(true)
    }
  for (const view of ['single-line', ...VIEWS] as const)
    for (const p of designIn(design, view).parts) expect([p.x % 2.5, p.y % 2.5].map(Math.abs)).toEqual([0, 0])
}

const SEED = 20260304

test('random gestures keep a design whole, can be read back, and are undone to the very start', () => {
  let made = 0
  fc.assert(
    fc.property(fc.array(gesture, { minLength: 20, maxLength: 80 }), (gestures) => {
      const start = newDesign('start')
      let history = historyOf(start)
      const states: Design[] = [start]
      for (const g of gestures) {
        const edit = editFor(history.design, g)
        if (!edit) continue
        const before = JSON.stringify(history.design)
        const result = apply(history.design, edit)
        expect(JSON.stringify(history.design)).toBe(before)
        if (result.refused || result.design === history.design) continue
        history = push(history, result.design, edit.do)
        states.push(result.design)
        made += 1
      }
      const end = history.design
      expectWhole(end)
      expect(readDesign(writeDesign(end))).toEqual({ design: end, problems: [] })
      for (let i = states.length - 2; i >= 0; i--) {
        history = undo(history)
        expect(history.design).toBe(states[i])
      }
      expect(history.past).toEqual([])
      for (const state of states.slice(1)) {
        history = redo(history)
        expect(history.design).toBe(state)
      }
    }),
    { seed: SEED, numRuns: 60 },
  )
  expect(made).toBeGreaterThan(1000)
})
