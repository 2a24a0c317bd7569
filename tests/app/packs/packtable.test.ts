import { expect, test } from 'vitest'
import { PackTable } from '../../../app/worker/packtable'
import type { PackTell, PackWish } from '../../../app/worker/packtalk'
import { trailer } from '../../scenarios/demos/trailer'

const wish: PackWish = {
  ...{ design: trailer(), reader: 'workshop', paper: 'A3', view: 'single-line', colouring: 'colour' },
  contents: ['fuses', 'labels', 'data-links'],
  labels: {},
}

async function made(table: PackTable, asked: PackWish, overtaken: () => boolean = () => false) {
  const told: PackTell[] = []
  const pack = await table.make(asked, (t) => told.push(t), overtaken)
  return { pack, told }
}

test('tells section by section how far it is, and how many pages each has', async () => {
  const { pack, told } = await made(new PackTable(), wish)
  expect(told.map((t) => (t.is === 'progress' ? [t.done, t.of, t.title] : t.is))).toEqual([
    [0, 3, 'Figures and findings'],
    [0, 3, 'Fuse chart'],
    [1, 3, 'Labels'],
    [2, 3, 'Data links'],
  ])
  expect(Object.keys(pack!.counts)).toEqual(wish.contents)
  expect(pack!.pages.length).toBe(1 + Object.values(pack!.counts).reduce((a, b) => a + b, 0))
})

test('gives up between two sections when another pack is asked for, and the pack before stays', async () => {
  const table = new PackTable()
  await made(table, wish)
  const before = table.made
  let asked = 0
  const { pack } = await made(table, { ...wish, contents: ['lugs', 'cable', 'parts'] }, () => ++asked > 1)
  expect(pack).toBeNull()
  expect(table.made).toBe(before)
})

test('another design, paper or stock of labels is made afresh', async () => {
  const table = new PackTable()
  const first = (await made(table, wish)).pack!
  const tiny = { ...wish, labels: { used: 60 } }
  expect((await made(table, tiny)).pack!.pages.length).toBeGreaterThan(first.pages.length)
  const bare = { ...wish, design: { ...wish.design, parts: [], conductors: [] } }
  expect((await made(table, bare)).pack!.counts.fuses).toBe(0)
  expect((await made(table, wish)).pack).toEqual(first)
})

test('before anything is made there is nothing to take', () =>
  expect(() => new PackTable().made).toThrow(RangeError))
