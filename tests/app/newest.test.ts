import { beforeEach, expect, it } from 'vitest'
import { Newest, type Numbered, type Outcome } from '../../app/worker/newest'

let posted: Numbered<string>[]
let taken: string[]
let newest: Newest<string, string>

beforeEach(() => {
  posted = []
  taken = []
  newest = new Newest(
    (wish) => posted.push(wish),
    (outcome, wish) => taken.push(`${wish}: ${'done' in outcome ? outcome.done : outcome.failed}`),
  )
})

const finish = (body: Outcome<string>) => newest.receive({ seq: posted.at(-1)!.seq, body })
const wishes = () => posted.map((w) => w.body)

it('has one wish under way, and of the others only the newest waits', () => {
  for (const wish of ['a', 'b', 'c', 'd']) newest.ask(wish)
  expect(wishes()).toEqual(['a'])
  finish({ done: '1' })
  expect(wishes()).toEqual(['a', 'd'])
  finish({ done: '2' })
  expect(wishes()).toEqual(['a', 'd'])
  expect(taken).toEqual(['a: 1', 'd: 2'])
})

it('tells each outcome with the wish it belongs to, also one that came while waiting', () => {
  newest.ask('a')
  newest.ask('b')
  finish({ done: '1' })
  expect(taken).toEqual(['a: 1'])
})

it('drops what it did not ask for', () => {
  newest.ask('a')
  newest.receive({ seq: 999, body: { done: 'x' } })
  expect(taken).toEqual([])
  finish({ done: '1' })
  newest.receive({ seq: posted[0]!.seq, body: { done: 'again' } })
  expect(taken).toEqual(['a: 1'])
})

it('goes on after a failure', () => {
  newest.ask('a')
  newest.ask('b')
  finish({ failed: 'broken' })
  expect(taken).toEqual(['a: broken'])
  expect(wishes()).toEqual(['a', 'b'])
})
