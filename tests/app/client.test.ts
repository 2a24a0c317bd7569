import { beforeEach, expect, it } from 'vitest'
import { useLatest } from '../../app/store/latest'
import { Client } from '../../app/worker/client'
import type { Reply, Request } from '../../app/worker/messages'
import { type Design, newDesign, type Scene } from '../../engine'

const scene = { view: 'both-poles', parts: [], conductors: [], joins: [], labels: [] } as unknown as Scene
const answers = { runs: new Map(), branches: new Map(), bars: new Map(), shunts: new Map() }

let posted: Request[]
let client: Client
const reply = (r: Reply) => client.receive(r)
const finish = (seq: number) => {
  reply({ is: 'answers', seq, answers, findings: [] })
  reply({ is: 'scene', seq, scene })
}

beforeEach(() => {
  posted = []
  client = new Client((r) => posted.push(r))
  useLatest.setState(useLatest.getInitialState())
})

const named = (id: string): Design => newDesign(id)

it('keeps one request under way and only the newest waiting', () => {
  for (const id of ['a', 'b', 'c', 'd']) client.ask(named(id), 'both-poles')
  expect(posted.map((r) => r.design.id)).toEqual(['a'])
  finish(posted[0]!.seq)
  expect(posted.map((r) => r.design.id)).toEqual(['a', 'd'])
})

it('shows answers as soon as they come, with the design they speak of', () => {
  client.ask(named('a'), 'both-poles')
  reply({ is: 'answers', seq: posted[0]!.seq, answers, findings: [] })
  expect(useLatest.getState().checked?.id).toBe('a')
  expect(useLatest.getState().laidOut).toBeNull()
  reply({ is: 'scene', seq: posted[0]!.seq, scene })
  expect(useLatest.getState().laidOut?.id).toBe('a')
})

it('drops replies to anything but the request under way', () => {
  client.ask(named('a'), 'both-poles')
  reply({ is: 'answers', seq: 999, answers, findings: [] })
  expect(useLatest.getState().checked).toBeNull()
})

it('goes on after a failure, and tells it', () => {
  client.ask(named('a'), 'both-poles')
  client.ask(named('b'), 'both-poles')
  reply({ is: 'failure', seq: posted[0]!.seq, why: 'broken' })
  expect(useLatest.getState().failure).toBe('broken')
  expect(posted.map((r) => r.design.id)).toEqual(['a', 'b'])
  finish(posted[1]!.seq)
  expect(useLatest.getState().failure).toBeNull()
})
