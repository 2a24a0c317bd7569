import { afterEach, beforeEach, expect, it, vi } from 'vitest'
import { startPoints } from '../../app/files/keeppoints'
import { doEdit, lay, undo } from '../../app/store/open'
import { newDesign } from '../../engine'

let kept: string[] = []
let stop = () => {}
const rename = (name: string) => doEdit(`Name ${name}`, { do: 'settings', set: { name } })
const MINUTE = 60_000

beforeEach(() => {
  vi.useFakeTimers()
  kept = []
  stop = startPoints(async (design, name) => {
    kept.push(`${name}: ${design.settings.name}`)
  })
})
afterEach(() => {
  stop()
  vi.useRealTimers()
})

it('keeps the state on opening with the first edit, and then one for each half hour of editing', () => {
  lay(newDesign('a', { name: 'opened' }), 'writing')
  expect(kept).toEqual([])
  rename('one')
  rename('two')
  expect(kept).toEqual(['On opening: opened'])
  vi.advanceTimersByTime(29 * MINUTE)
  rename('three')
  expect(kept).toHaveLength(1)
  vi.advanceTimersByTime(2 * MINUTE)
  rename('four')
  undo()
  expect(kept).toEqual(['On opening: opened', 'While editing: three'])
})

it('begins anew with another design, and keeps none of one that is only looked at', () => {
  lay(newDesign('a', { name: 'a' }), 'writing')
  rename('a1')
  lay(newDesign('b', { name: 'b' }), 'writing')
  rename('b1')
  lay(newDesign('c', { name: 'c' }), 'reading')
  rename('c1')
  expect(kept).toEqual(['On opening: a', 'On opening: b'])
})
