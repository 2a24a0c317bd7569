import { beforeEach, expect, it } from 'vitest'
import { copy, cut, duplicate, pasteHere, removeSelected } from '../../app/store/clip'
import { join } from '../../app/store/join'
import { nudge } from '../../app/store/nudge'
import { doEdit, lay, nextRedo, nextUndo, redo, undo, useOpen } from '../../app/store/open'
import { placePart } from '../../app/store/place'
import { useSay } from '../../app/store/say'
import { select, useView } from '../../app/store/view'
import { kindOf, newDesign } from '../../engine'

const design = () => useOpen.getState().design
const place = (kind: string, x: number, y: number) => placePart(kindOf(kind)!, { just: [x, y] })!

beforeEach(() => {
  lay(newDesign('t'), 'writing')
  useView.setState(useView.getInitialState())
  useSay.setState(useSay.getInitialState())
})

it('names every step, and undo and redo walk them', () => {
  const start = design()
  place('battery', 50, 50)
  place('load', 150, 50)
  expect(nextUndo(useOpen.getState())).toBe('Place load')
  const end = design()
  undo()
  expect(nextRedo(useOpen.getState())).toBe('Place load')
  undo()
  expect(design()).toBe(start)
  redo()
  redo()
  expect(design()).toBe(end)
})

it('puts a part without a place clear of the others', () => {
  const kind = kindOf('battery')!
  const nearby = () => placePart(kind, { near: [50, 50] })!
  const parts = [placePart(kind, { near: null })!, nearby(), nearby(), nearby()]
  const places = new Set(parts.map((p) => `${p.x} ${p.y}`))
  expect(places.size).toBe(4)
})

it('says why a join is refused, and changes nothing', () => {
  const load = place('load', 50, 50)
  const before = design()
  const at = { part: load.id, terminal: '+' }
  join(at, at)
  expect(design()).toBe(before)
  expect(useSay.getState()).toMatchObject({ refused: true })
  expect(useSay.getState().text.length).toBeGreaterThan(10)
})

it('lays a second conductor beside one when it is asked for again', () => {
  const battery = place('battery', 50, 50)
  const bar = place('busbar', 150, 50)
  const [from, to] = [
    { part: battery.id, terminal: '+' },
    { part: bar.id, terminal: '1l' },
  ]
  join(from, to)
  join(from, to)
  expect(design().conductors).toHaveLength(1)
  expect(useSay.getState().text).toContain('again')
  join(from, to)
  expect(design().conductors).toHaveLength(2)
})

it('copies, cuts, pastes and duplicates under new designations', () => {
  const battery = place('battery', 50, 50)
  select([battery.id])
  copy()
  pasteHere()
  expect(design().parts.map((p) => p.designation)).toEqual(['G1', 'G2'])
  duplicate()
  expect(design().parts).toHaveLength(3)
  cut()
  expect(design().parts).toHaveLength(2)
  undo()
  expect(design().parts).toHaveLength(3)
})

it('nudges on the grid', () => {
  const battery = place('battery', 50, 50)
  nudge(1, 0)
  nudge(0, -1, 4)
  expect(design().parts[0]).toMatchObject({ x: battery.x + 2.5, y: battery.y - 10 })
})

it('forgets what was redone after a new step', () => {
  place('battery', 50, 50)
  undo()
  place('load', 50, 50)
  expect(nextRedo(useOpen.getState())).toBeNull()
})

it('changes nothing in a tab that only looks', () => {
  place('battery', 50, 50)
  useOpen.setState({ hold: 'reading' })
  const before = design()
  select([before.parts[0]!.id])
  removeSelected()
  expect(doEdit('x', { do: 'settings', set: { name: 'y' } })).toBe(false)
  expect(undo()).toBeNull()
  expect(design()).toBe(before)
})
