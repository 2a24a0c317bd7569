import { describe, expect, it } from 'vitest'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { protection } from '../../../engine/calc/protection'
import { battery, fuse, load, network, wire } from '../../reference/handmade'
import { Random } from '../../reference/random'

function ahead(form: NetworkForm, id: string, end: 'from' | 'to', metres: Record<string, number>) {
  const p = prepare(form)
  return protection(p).ahead(p.branchIndex.get(id)!, end, (e) => metres[form.branches[e]!.id] ?? null)
}

describe('length ahead of the first device', () => {
  // battery –W1– stud –W2– F1 …, and from the stud –W3– a load without a fuse
  const form = network(
    [
      wire('W1', 'b1', 'stud'),
      wire('W2', 'stud', 'f1'),
      fuse('F1', 'f1', 'bus', 100),
      wire('W3', 'stud', 'x'),
    ],
    [battery('G1', 'b1', 'neg'), load('E1', 'x', 'neg', 3)],
  )
  const metres = { W1: 0.1, W2: 0.05, W3: 2 }

  it('adds up from the source to the device behind the conductor', () => {
    expect(ahead(form, 'W1', 'from', metres)).toMatchObject({ toFarEndM: 0.1, toDeviceM: 0.1 + 0.05 })
    expect(ahead(form, 'W2', 'from', metres)).toMatchObject({ toFarEndM: 0.1 + 0.05, toDeviceM: 0.1 + 0.05 })
  })

  it('says that no device is behind a conductor that runs to a load', () => {
    expect(ahead(form, 'W3', 'from', metres)).toMatchObject({
      toFarEndM: 2.1,
      toDeviceM: Number.POSITIVE_INFINITY,
      missing: [],
    })
  })

  it('is asked of unlimited ends only', () => {
    expect(ahead(form, 'W2', 'to', metres)).toBeNull()
  })

  it('names the lengths that are missing, and how long it is at least', () => {
    expect(ahead(form, 'W2', 'from', { W2: 0.05, W3: 2 })).toEqual({
      toFarEndM: null,
      toDeviceM: null,
      toDeviceAtLeastM: 0.05,
      missing: ['W1'],
    })
    // W3 lies on no way from the source through W1 to the device.
    expect(ahead(form, 'W1', 'from', { W1: 0.1, W2: 0.05 })).toMatchObject({ toFarEndM: 0.1, missing: [] })
  })

  it('takes the longer of two conductors side by side', () => {
    const twins = network(
      [
        wire('W1', 'b1', 'stud'),
        wire('W2', 'b1', 'stud'),
        wire('W3', 'stud', 'f1'),
        fuse('F1', 'f1', 'bus', 100),
      ],
      [battery('G1', 'b1', 'neg')],
    )
    expect(ahead(twins, 'W3', 'from', { W1: 0.3, W2: 0.5, W3: 0.1 })).toMatchObject({ toFarEndM: 0.6 })
  })

  it('is never below the longest simple way, found by trying all, and equal to it on trees', () => {
    let trees = 0
    let meshes = 0
    for (let seed = 1; seed <= 400; seed++) {
      const r = new Random(seed)
      const n = r.whole(2, 7)
      const tree = Array.from({ length: n - 1 }, (_, i) => wire(`W${i}`, `v${r.whole(0, i)}`, `v${i + 1}`))
      const more = seed % 2 === 0 ? 0 : r.whole(1, 4)
      const extra = Array.from({ length: more }, (_, i) =>
        wire(`X${i}`, `v${r.whole(0, n - 1)}`, `v${r.whole(0, n - 1)}`),
      )
      const branches = [...tree, ...extra]
      const sources = Array.from({ length: r.whole(1, 2) }, (_, i) =>
        battery(`G${i}`, `v${r.whole(0, n - 1)}`, 'neg'),
      )
      const whole = network(branches, sources)
      const length = new Map(branches.map((b) => [b.id, r.whole(1, 20)]))
      for (const b of branches) {
        if (b.from === b.to) continue
        const found = ahead(whole, b.id, 'from', Object.fromEntries(length))
        const longest = (at: string, seen: ReadonlySet<string>): number => {
          let best = sources.some((d) => d.positive === at) ? 0 : Number.NEGATIVE_INFINITY
          for (const x of branches) {
            if (x.id === b.id || (x.from !== at && x.to !== at)) continue
            const next = x.from === at ? x.to : x.from
            if (!seen.has(next))
              best = Math.max(best, length.get(x.id)! + longest(next, new Set([...seen, next])))
          }
          return best
        }
        const expected = longest(b.from, new Set([b.from])) + length.get(b.id)!
        if (expected === Number.NEGATIVE_INFINITY) {
          expect(found).toBeNull()
          continue
        }
        if (more === 0) expect(found!.toFarEndM).toBe(expected)
        else expect(found!.toFarEndM).toBeGreaterThanOrEqual(expected)
        more === 0 ? trees++ : meshes++
      }
    }
    expect(Math.min(trees, meshes)).toBeGreaterThan(300)
  })
})
