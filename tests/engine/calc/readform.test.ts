import { describe, expect, it } from 'vitest'
import { prepare } from '../../../engine/calc/prepare'
import { readNetwork } from '../../../engine/calc/readform'
import { randomNetwork } from '../../reference/networks'
import { Random } from '../../reference/random'

const small = () => ({
  nodes: ['+', '-'],
  branches: [{ id: 'link', from: '+', to: '-', resistance: 5, kind: 'shunt' }] as Record<string, unknown>[],
  devices: [
    { id: 'b', positive: '+', negative: '-', min: 0, max: 'unlimited', sustainedFault: 'unlimited', emf: 12 },
    { id: 'l', positive: '+', negative: '-', min: -5, max: 0, sustainedFault: 0 },
  ] as Record<string, unknown>[],
})
const problems = (data: unknown) => {
  const answer = readNetwork(typeof data === 'string' ? data : JSON.stringify(data))
  return 'problems' in answer ? answer.problems : []
}
const paths = (data: unknown) => problems(data).map((x) => x.path)

describe('reading a network file', () => {
  it('takes every random form as it is', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const form = randomNetwork(seed)
      expect(readNetwork(JSON.stringify(form))).toEqual({ network: form })
    }
  })

  it('takes names that trip plain objects, and a byte order mark', () => {
    const form = { ...small(), nodes: ['__proto__', '10'] }
    for (const b of form.branches) Object.assign(b, { from: '__proto__', to: '10', id: 'constructor' })
    for (const d of form.devices) Object.assign(d, { positive: '__proto__', negative: '10' })
    const answer = readNetwork(`\uFEFF${JSON.stringify(form)}`)
    expect(answer).toEqual({ network: form })
    if ('network' in answer) expect(prepare(answer.network).nodeIndex.get('__proto__')).toBe(0)
  })

  it('takes an operating point, meters and a temperature', () => {
    const form = {
      ...small(),
      operating: [{ device: 'l', watts: -40 }],
      meters: [{ shunt: 'link', role: 'load', members: ['l'] }],
      conductorCelsius: 70,
    }
    expect(readNetwork(JSON.stringify(form))).toEqual({ network: form })
  })

  it.each([
    ['nothing', '', ['']],
    ['no JSON', '{"nodes": [', ['line 1, column 12']],
    ['a list', '[]', ['']],
    ['null', 'null', ['']],
    ['no lists', '{}', ['nodes', 'branches', 'devices']],
    ['another key', { ...small(), extra: 1 }, ['extra']],
    ['a record for a list', { ...small(), devices: {} }, ['devices']],
    ['a node twice', { ...small(), nodes: ['+', '-', '+'] }, ['nodes[2]']],
    ['a number for a node', { ...small(), nodes: ['+', '-', 3] }, ['nodes[2]']],
  ])('refuses %s', (_, data, expected) => {
    expect(paths(data)).toEqual(expected)
  })

  it.each<[string, Record<string, unknown>, string]>([
    ['a resistance of 0', { resistance: 0 }, 'branches[0].resistance'],
    ['a resistance below 0', { resistance: -1 }, 'branches[0].resistance'],
    ['a resistance in words', { resistance: '5' }, 'branches[0].resistance'],
    ['a resistance beyond reason', { resistance: 1e13 }, 'branches[0].resistance'],
    ['an end that is nowhere', { to: 'x' }, 'branches[0].to'],
    ['a strange kind', { kind: 'toString' }, 'branches[0].kind'],
    ['a rating of 0', { rating: 0 }, 'branches[0].rating'],
    ['a misspelt key', { ratting: 5 }, 'branches[0].ratting'],
  ])('refuses a branch with %s', (_, change, path) => {
    const form = small()
    Object.assign(form.branches[0]!, change)
    expect(paths(form)).toEqual([path])
  })

  it.each<[string, Record<string, unknown>, string]>([
    ['a min above 0', { min: 1 }, 'devices[1].min'],
    ['a max below 0', { max: -1 }, 'devices[1].max'],
    ['a max of nothing', { max: null }, 'devices[1].max'],
    ['another word for unlimited', { max: 'endless' }, 'devices[1].max'],
    ['the name of another', { id: 'b' }, 'devices[1].id'],
    ['a terminal that is nowhere', { positive: 'constructor' }, 'devices[1].positive'],
    ['no internal resistance at all', { emf: 12, internalResistance: 0 }, 'devices[1].internalResistance'],
  ])('refuses a device with %s', (_, change, path) => {
    const form = small()
    Object.assign(form.devices[1]!, change)
    expect(paths(form)).toEqual([path])
  })

  it.each<[string, Record<string, unknown>, string]>([
    ['an operation of nobody', { operating: [{ device: 'x', amps: 1 }] }, 'operating[0].device'],
    ['two figures', { operating: [{ device: 'l', amps: 1, watts: 1 }] }, 'operating[0]'],
    ['no figure', { operating: [{ device: 'l' }] }, 'operating[0]'],
    ['an input of itself', { operating: [{ device: 'l', amps: 1, input: 'l' }] }, 'operating[0].input'],
    [
      'an efficiency above 1',
      { operating: [{ device: 'l', amps: 1, input: 'b', efficiency: 2 }] },
      'operating[0].efficiency',
    ],
    ['a meter on nothing', { meters: [{ shunt: 'x' }] }, 'meters[0].shunt'],
    ['a member that is nobody', { meters: [{ shunt: 'link', members: ['x'] }] }, 'meters[0].members[0]'],
    ['a temperature of the sun', { conductorCelsius: 5500 }, 'conductorCelsius'],
  ])('refuses %s', (_, change, path) => {
    expect(paths({ ...small(), ...change })).toEqual([path])
  })

  it('refuses NaN, numbers without end, barred keys and bottomless nesting', () => {
    expect(problems('{"nodes": NaN}').length).toBe(1)
    const text = JSON.stringify(small())
    expect(paths(text.replace('"resistance":5', '"resistance":1e999'))).toContain('branches[0].resistance')
    expect(paths(text.replace('"resistance":5', '"__proto__":{"resistance":5}'))).toContain(
      'branches[0].__proto__',
    )
    expect(problems('['.repeat(200_000)).length).toBe(1)
  })

  it('takes 10 MB of junk calmly, and lists no more than a person reads', () => {
    expect(problems('x'.repeat(10_000_000)).length).toBe(1)
    expect(problems(`{"nodes":[${'7,'.repeat(2_000_000)}7]}`).length).toBeLessThan(210)
    expect(problems(`{"branches":[${'{"a":[]},'.repeat(500_000)}{}]}`).length).toBeLessThan(210)
  })

  it('never throws on damaged text, and what it takes can be prepared', () => {
    const random = new Random(1)
    let taken = 0
    for (let i = 0; i < 4000; i++) {
      const text = JSON.stringify(randomNetwork(random.whole(1, 50)))
      const at = random.whole(0, text.length - 1)
      const damage = random.pick(['', '"', '0', '-', '9e99', 'null', '{}', '[', '\u0000', text.slice(0, at)])
      const answer = readNetwork(text.slice(0, at) + damage + text.slice(at + random.whole(0, 3)))
      if ('problems' in answer) expect(answer.problems.length).toBeGreaterThan(0)
      else {
        taken++
        prepare(answer.network)
      }
    }
    expect(taken).toBeGreaterThan(100)
  })
})
