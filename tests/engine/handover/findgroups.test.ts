import { expect, test } from 'vitest'
import { fuseFinds } from '../../../engine/calc/handover/finder'
import { aheadOf, commonOf, groupsOf } from '../../../engine/calc/handover/findgroups'
import type { Piece } from '../../../engine/words/handover/book'
import { handoverBook } from '../../../engine/words/handover/make'
import { DEMOS } from '../../scenarios/demos/all'

const FOUND = DEMOS.map((d) => [d.title, fuseFinds(d.make())] as const)

test.each(FOUND)(
  '%s: its own fuse, what its group shares and what all share are all of its fuses',
  (_, finds) => {
    const common = commonOf(finds)
    const groups = groupsOf(finds, common)
    const ids = (steps: readonly { readonly fuse: { readonly id: string } }[]) => steps.map((s) => s.fuse.id)
    for (const find of finds) {
      const group = groups.find((g) => g.finds.includes(find))
      const told = [...ids(find.fuses.slice(0, 1)), ...ids(group ? group.fuses : aheadOf(find, common))]
      const left = ids(find.fuses).filter((id) => !told.includes(id))
      expect(left.filter((id) => !ids(common.fuses).includes(id))).toEqual([])
      expect(told.filter((id) => !ids(find.fuses).includes(id))).toEqual([])
    }
  },
)

const finderOf = (file: string) =>
  handoverBook(DEMOS.find((d) => d.file === file)!.make())
    .chapters.find((c) => c.key === 'finder')!
    .pieces.filter((p): p is Extract<Piece, { readonly is: 'find' }> => p.is === 'find')

test('the van: each block stands once, with the fuse that feeds it and the fuses of its relay', () => {
  const shared = finderOf('veterinary-van.json').filter((p) => p.shared)
  expect(shared.map((p) => p.title)).toEqual([
    'Everything is dead at once',
    'Several on Loads block (F5) are dead',
    'Several on Always-on block (F6) are dead',
    'Several on Rear block (F7) are dead',
  ])
  expect(shared[1]!.first).toContain('S1')
  expect(shared[1]!.fuses.map((f) => [f.text, f.remark])).toEqual([
    ['Main distribution (F3), way 2 “Loads”', 'skilled person'],
    ['Always-on block (F6), way 5 “Loads master”', 'feeds the relay'],
    ['Main distribution (F3), way 4 “Always on”', 'feeds the relay, skilled person'],
  ])
  const pump = finderOf('veterinary-van.json').find((p) => p.title === 'Water pump (M1)')!
  expect(pump.fuses.map((f) => f.rating)).toEqual(['15 A'])
  expect(pump.first).toMatch(/S2.*S1/)
})

test('the trailer: what all share is told once, and no block is', () => {
  const finds = finderOf('camping-trailer.json')
  expect(finds.filter((p) => p.shared).map((p) => p.title)).toEqual(['Everything is dead at once'])
  expect(finds.every((p) => p.fuses.length === 1)).toBe(true)
})
