import { expect, test } from 'vitest'
import { type History, historyOf, push, redo, settle, undo } from '../../../engine/edit/history'
import type { Design } from '../../../engine/model/design'
import { newDesign } from '../../../engine/model/newdesign'

const named = (name: string): Design => newDesign(name)
const [a, b, c, d] = ['a', 'b', 'c', 'd'].map(named) as [Design, Design, Design, Design]

const steps = (h: History): string =>
  `${h.past.map((s) => s.name)} | ${h.design.id} | ${h.future.map((s) => s.name)}`

test('goes back and forward by named steps, to the very same designs', () => {
  let h = push(push(historyOf(a), b, 'one'), c, 'two')
  expect(steps(h)).toBe('one,two | c | ')
  h = undo(h)
  expect(steps(h)).toBe('one | b | two')
  expect(h.design).toBe(b)
  h = undo(h)
  expect(h.design).toBe(a)
  expect(undo(h)).toBe(h)
  h = redo(redo(h))
  expect(steps(h)).toBe('one,two | c | ')
  expect(redo(h)).toBe(h)
})

test('a new step drops what was undone; the same design is no step', () => {
  const h = push(undo(push(historyOf(a), b, 'one')), c, 'other')
  expect(steps(h)).toBe('other | c | ')
  expect(push(h, c, 'nothing')).toBe(h)
})

test('a drag is one step; letting go, undo and another key end it', () => {
  const drag = push(push(historyOf(a), b, 'Move', 'move p1'), c, 'Move', 'move p1')
  expect(steps(drag)).toBe('Move | c | ')
  expect(undo(drag).design).toBe(a)
  expect(steps(push(settle(drag), d, 'Move', 'move p1'))).toBe('Move,Move | d | ')
  expect(steps(push(drag, d, 'Move', 'move p2'))).toBe('Move,Move | d | ')
  const twice = push(settle(drag), d, 'Move', 'move p1')
  expect(steps(push(undo(twice), named('e'), 'Move', 'move p1'))).toBe('Move,Move | e | ')
  expect(steps(push(redo(undo(drag)), d, 'Move', 'move p1'))).toBe('Move,Move | d | ')
})

test('the oldest steps fall away', () => {
  let h = historyOf(a)
  for (let i = 0; i < 600; i++) h = push(h, named(`n${i}`), `step ${i}`)
  expect(h.past.length).toBe(500)
  expect(h.past.at(-1)!.name).toBe('step 599')
  while (undo(h) !== h) h = undo(h)
  expect(h.design.id).toBe('n99')
})
