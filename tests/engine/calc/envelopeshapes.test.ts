import { describe, expect, it } from 'vitest'
import { type EnvelopeResult, envelopes } from '../../../engine/calc/envelope'
import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { randomNetwork } from '../../reference/networks'
import { Random } from '../../reference/random'

const wire = (i: number, from: number, to: number, resistance = 0.01): NetworkBranch => ({
  id: `w${i}`,
  from: `${from}`,
  to: `${to}`,
  resistance,
  kind: 'conductor',
})
const nodes = (n: number): string[] => [...Array.from({ length: n }, (_, i) => `${i}`), 'minus']
const load = (at: number, amps: number): NetworkDevice => ({
  id: `d${at}`,
  positive: `${at}`,
  negative: 'minus',
  min: Math.min(0, amps),
  max: Math.max(0, amps),
  sustainedFault: Math.max(0, amps),
})

describe('long and wide networks', () => {
  it('a chain of 20,000 with a 1 A load at every node', () => {
    const n = 20_000
    const r = envelopes(
      prepare({
        nodes: nodes(n),
        branches: Array.from({ length: n - 1 }, (_, i) => wire(i, i, i + 1)),
        devices: [load(0, 15_000), ...Array.from({ length: n - 1 }, (_, i) => load(i + 1, -1))],
      }),
    )
    // Beyond branch i stand n − 1 − i loads; the source gives 15,000.
    for (let i = 0; i < n - 1; i++) expect(r.max[i]).toBe(Math.min(15_000, n - 1 - i))
    expect(r.min.every((x) => x === 0)).toBe(true)
  })

  it('a star of 20,000 feeds', () => {
    const n = 20_000
    const r = envelopes(
      prepare({
        nodes: nodes(n),
        branches: Array.from({ length: n - 1 }, (_, i) => wire(i, 0, i + 1)),
        devices: [load(0, 3), ...Array.from({ length: n - 1 }, (_, i) => load(i + 1, -((i % 5) + 1)))],
      }),
    )
    for (let i = 0; i < n - 1; i++) expect(r.max[i]).toBe(Math.min(3, (i % 5) + 1))
  })

  it('a ladder of 3,000 rungs carries what its ends exchange, both rails alike', () => {
    // Equal rails, and at each end two equal leads to them: by symmetry each rail carries half and no rung anything.
    const rungs = 3000
    const branches: NetworkBranch[] = []
    for (let k = 0; k < rungs; k++) {
      branches.push(wire(branches.length, 2 * k, 2 * k + 1, 0.02))
      if (k === 0) continue
      branches.push(wire(branches.length, 2 * k - 2, 2 * k))
      branches.push(wire(branches.length, 2 * k - 1, 2 * k + 1))
    }
    const n = 2 * rungs
    for (const [end, from] of [
      [n, 0],
      [n + 1, n - 2],
    ] as const)
      for (const rail of [from, from + 1]) branches.push(wire(branches.length, end, rail))
    const r = envelopes(prepare({ nodes: nodes(n + 2), branches, devices: [load(n, 90), load(n + 1, -50)] }))
    expect(r.blocks.count).toBe(1)
    branches.forEach((b, e) => {
      const rung = b.resistance === 0.02
      const towards = Number(b.from) === n + 1
      expect(Math.abs(r.max[e]! - (rung || towards ? 0 : 25))).toBeLessThan(1e-6)
      expect(Math.abs(r.min[e]! + (towards ? 25 : 0))).toBeLessThan(1e-6)
    })
  })
})

const expectSame = (a: number, b: number): void => {
  if (a !== b) expect(Math.abs(a - b)).toBeLessThan(1e-7 * Math.max(1, Math.abs(a)))
}
const solved = (form: NetworkForm): EnvelopeResult => envelopes(prepare(form))

describe('what must not matter', () => {
  it('turning a branch round swaps its two directions and leaves the others', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const form = randomNetwork(seed)
      const turned = new Random(seed + 5000).whole(0, Math.max(0, form.branches.length - 1))
      const before = solved(form)
      const after = solved({
        ...form,
        branches: form.branches.map((b, e) => (e === turned ? { ...b, from: b.to, to: b.from } : b)),
      })
      form.branches.forEach((_, e) => {
        expectSame(before.max[e]!, e === turned ? -after.min[e]! : after.max[e]!)
        expectSame(before.min[e]!, e === turned ? -after.max[e]! : after.min[e]!)
      })
    }
  })

  it('turning a device round with its bounds', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const form = randomNetwork(seed)
      const before = solved(form)
      const after = solved({
        ...form,
        devices: form.devices.map((d) => ({
          ...d,
          positive: d.negative,
          negative: d.positive,
          min: d.max === 'unlimited' ? d.max : -d.max,
          max: d.min === 'unlimited' ? d.min : -d.min,
          sustainedFault: 0,
        })),
      })
      form.branches.forEach((_, e) => {
        expectSame(before.max[e]!, after.max[e]!)
        expectSame(before.min[e]!, after.min[e]!)
      })
    }
  })

  it('names, and the order in which things are listed', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const form = randomNetwork(seed)
      const name = (id: string): string => `x${[...id].reverse().join('')}`
      const before = solved(form)
      const after = solved({
        nodes: form.nodes.map(name).reverse(),
        branches: form.branches
          .map((b) => ({ ...b, id: name(b.id), from: name(b.from), to: name(b.to) }))
          .reverse(),
        devices: form.devices
          .map((d) => ({ ...d, id: name(d.id), positive: name(d.positive), negative: name(d.negative) }))
          .reverse(),
      })
      const last = form.branches.length - 1
      form.branches.forEach((_, e) => {
        expectSame(before.max[e]!, after.max[last - e]!)
        expectSame(before.min[e]!, after.min[last - e]!)
      })
    }
  })

  it('cutting a conductor into two in series', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const form = randomNetwork(seed)
      const before = solved(form)
      const cut = new Random(seed).whole(0, Math.max(0, form.branches.length - 1))
      const whole = form.branches[cut]
      if (!whole || whole.from === whole.to) continue
      const part = { ...whole, resistance: whole.resistance / 2 }
      const after = solved({
        ...form,
        nodes: [...form.nodes, 'joint of the two'],
        branches: [
          ...form.branches.map((b, e) => (e === cut ? { ...part, to: 'joint of the two' } : b)),
          { ...part, id: 'second piece', from: 'joint of the two' },
        ],
      })
      form.branches.forEach((_, e) => {
        expectSame(before.max[e]!, after.max[e]!)
        expectSame(before.min[e]!, after.min[e]!)
      })
      expectSame(before.max[cut]!, after.max[form.branches.length]!)
      expectSame(before.min[cut]!, after.min[form.branches.length]!)
    }
  })
})
