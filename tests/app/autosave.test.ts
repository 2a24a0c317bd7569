import { afterEach, beforeEach, expect, it } from 'vitest'
import { startAutosave } from '../../app/files/autosave'
import { doEdit, lay, undo, useOpen } from '../../app/store/open'
import { useSaved } from '../../app/store/saved'
import { newDesign, readDesign } from '../../engine'

let kept: string[]
let finish: (() => void)[]
let fail: boolean
let stop: () => void

/** Lets promises run on. */
const settle = () => new Promise((resolve) => setTimeout(resolve))
const done = async () => {
  finish.shift()?.()
  await settle()
}
const rename = (name: string) => doEdit('Change title', { do: 'settings', set: { name } })

beforeEach(() => {
  useOpen.setState(useOpen.getInitialState())
  kept = []
  finish = []
  fail = false
  stop = startAutosave(({ id, text }) => {
    kept.push(`${id} ${readDesign(text).design?.settings.name}`)
    return new Promise((resolve, reject) => finish.push(fail ? () => reject(new Error('full')) : resolve))
  })
})
afterEach(() => stop())

it('keeps each edit at once, and undo as well', async () => {
  lay(newDesign('a'), 'writing')
  rename('one')
  expect(kept).toEqual(['a one'])
  await done()
  expect(useSaved.getState().state).toBe('kept')
  undo()
  expect(kept).toEqual(['a one', 'a '])
})

it('does not keep a demo before its first edit, but a file at once', async () => {
  lay(newDesign('demo'), 'writing')
  expect(kept).toEqual([])
  lay(newDesign('file'), 'writing', true)
  expect(kept).toEqual(['file '])
})

it('keeps only the newest of what came during a write', async () => {
  lay(newDesign('a'), 'writing')
  for (const name of ['one', 'two', 'three']) rename(name)
  expect(kept).toEqual(['a one'])
  await done()
  expect(kept).toEqual(['a one', 'a three'])
})

it('loses no edit of a design that is left during a write', async () => {
  lay(newDesign('a'), 'writing')
  rename('one')
  rename('two')
  lay(newDesign('b'), 'writing', true)
  await done()
  await done()
  expect(kept).toEqual(['a one', 'a two', 'b '])
})

it('says so when the browser keeps nothing, and goes on trying', async () => {
  fail = true
  lay(newDesign('a'), 'writing')
  rename('one')
  await done()
  expect(useSaved.getState().state).toBe('failed')
  fail = false
  rename('two')
  await done()
  expect(useSaved.getState().state).toBe('kept')
})

it('keeps nothing of a tab that only looks', () => {
  lay(newDesign('a'), 'reading', true)
  expect(kept).toEqual([])
})
