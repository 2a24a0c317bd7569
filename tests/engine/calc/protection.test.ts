import { describe, expect, it } from 'vitest'
import type { NetworkBranch, NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { type EndProtection, protection } from '../../../engine/calc/protection'
import { endFlowByLp, netsOf, reaches } from '../../reference/flowprograms'
import { randomNetwork } from '../../reference/networks'
import { Random } from '../../reference/random'
import { vehicle } from '../../reference/vehicle'

const ENDS = ['from', 'to'] as const
type End = (typeof ENDS)[number]

const NETWORKS = Array.from({ length: 600 }, (_, i) => ({
  seed: i + 1,
  form: randomNetwork(i + 1, { odd: i % 2 === 0 }),
}))

function close(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b))
}

/** Every conductor end with its answer, the flow as a number: Infinity unlimited, NaN not checked. */
function ends(
  form: NetworkForm,
): { e: number; b: NetworkBranch; end: End; flow: number; answer: EndProtection }[] {
  const result = protection(prepare(form))
  return form.branches.flatMap((b, e) =>
    b.kind !== 'conductor'
      ? []
      : ENDS.map((end) => ({
          e,
          b,
          end,
          flow: (end === 'from' ? result.intoFrom : result.intoTo)[e]!,
          answer: result.end(e, end),
        })),
  )
}

/** Does a circle of sources lie in or above the net, found by plain reachability? */
function circles(form: NetworkForm): (node: string) => boolean {
  const net = netsOf(form)
  const up = reaches(form, net)
  return (node) => [net.get(node)!, ...up.get(net.get(node)!)!].some((k) => up.get(k)!.has(k))
}

describe('protection of conductor ends on 600 random networks', () => {
  it('equals the linear program of its definition, solved by HiGHS', () => {
    const seen = { none: 0, limited: 0, unlimited: 0, circle: 0 }
    for (const { seed, form } of NETWORKS) {
      const inCircle = circles(form)
      for (const { e, b, end, flow, answer } of ends(form)) {
        if (inCircle(b.from)) {
          expect(flow).toBeNaN()
          expect(answer).toMatchObject({ notChecked: { code: 'source-cycle' } })
          seen.circle++
          continue
        }
        const theirs = endFlowByLp(form, e, end)
        if (!close(flow, theirs))
          throw new Error(`seed ${seed}, ${b.id} ${end}: ${flow} A, HiGHS ${theirs} A`)
        seen[flow === 0 ? 'none' : flow === Number.POSITIVE_INFINITY ? 'unlimited' : 'limited']++
      }
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(300)
  })

  it('names a cut that adds up to the flow, and without which nothing can come', () => {
    const kinds = { fuse: 0, source: 0, intake: 0 }
    for (const { form } of NETWORKS)
      for (const { e, end, flow, answer } of ends(form)) {
        if (!('cut' in answer)) continue
        expect(answer.flow).toBe(flow)
        const sum = answer.cut.reduce((total, member) => total + member.amps, 0)
        expect(sum).toBeCloseTo(flow, 9)
        if (flow === 0) continue
        for (const { kind, id, amps } of answer.cut) {
          const device = form.devices.find((d) => d.id === id)
          const of =
            kind === 'fuse'
              ? form.branches.find((b) => b.id === id)?.rating
              : kind === 'source'
                ? device?.sustainedFault
                : -(device?.min as number)
          expect(amps).toBe(of)
          kinds[kind]++
        }
        const barred = new Set(answer.cut.map(({ kind, id }) => `${kind} ${id}`))
        expect(barred.size).toBe(answer.cut.length)
        expect(endFlowByLp(form, e, end, { barred })).toBeCloseTo(0, 9)
      }
    expect(Math.min(...Object.values(kinds))).toBeGreaterThan(20)
  })

  it('shows a way without a fuse, from the source to the end, where the flow is unlimited', () => {
    let ways = 0
    for (const { form } of NETWORKS)
      for (const { b, end, answer } of ends(form)) {
        if (!('path' in answer)) continue
        const source = form.devices.find((d) => d.id === answer.source)!
        expect(source.sustainedFault === 'unlimited' || source.min === 'unlimited').toBe(true)
        let at = new Set([source.positive, source.negative])
        for (const id of answer.path) {
          expect(id).not.toBe(b.id)
          const branch = form.branches.find((x) => x.id === id)!
          expect(branch.kind).not.toBe('fuse')
          // Between two branches the way may go on through devices, from terminal to terminal.
          for (let grown = 0; grown < at.size; ) {
            grown = at.size
            for (const d of form.devices)
              if (at.has(d.positive) || at.has(d.negative)) at.add(d.positive).add(d.negative)
          }
          expect(at.has(branch.from) || at.has(branch.to)).toBe(true)
          at = new Set([branch.from, branch.to])
        }
        for (const d of form.devices)
          if (at.has(d.positive) || at.has(d.negative)) at.add(d.positive).add(d.negative)
        expect(at.has(b[end])).toBe(true)
        ways++
      }
    expect(ways).toBeGreaterThan(300)
  })

  it('is never below the plain flow, nor below what the physical problem lets out to any node of a lower net', () => {
    const seen = { equal: 0, above: 0, physical: 0 }
    for (const { seed, form } of NETWORKS.slice(0, 250)) {
      const r = new Random(seed)
      const net = netsOf(form)
      const up = reaches(form, net)
      const touched = new Set(
        form.devices
          .filter((d) => d.sustainedFault === 'unlimited' || d.sustainedFault > 0)
          .flatMap((d) => [net.get(d.positive)!, net.get(d.negative)!]),
      )
      const holdsNegative = new Set(form.devices.map((d) => net.get(d.negative)!))
      for (const { e, b, end, flow } of ends(form)) {
        if (Number.isNaN(flow)) continue
        const home = net.get(b.from)!
        const plain = endFlowByLp(form, e, end, { plain: true })
        expect(flow).toBeGreaterThanOrEqual(plain - 1e-6)
        if (!holdsNegative.has(home)) expect(close(flow, plain)).toBe(true)
        seen[close(flow, plain) ? 'equal' : 'above']++
        if (flow === Number.POSITIVE_INFINITY) continue
        // A net that no source touches has no potential of its own: a loop back through loads alone drives nothing.
        const isLower = (k: number): boolean => k !== home && !up.get(home)!.has(k) && touched.has(k)
        const lower = form.nodes.filter((k) => isLower(net.get(k)!))
        if (lower.length === 0) continue
        expect(flow).toBeGreaterThanOrEqual(endFlowByLp(form, e, end, { backAt: r.pick(lower) }) - 1e-6)
        seen.physical++
      }
    }
    expect(seen.above).toBeGreaterThan(20)
    expect(seen.physical).toBeGreaterThan(1000)
  })
})

describe('protection under changes', () => {
  it('never rises when a fuse is put in, never falls when a rating is raised, and is unlimited once bypassed', () => {
    let lowered = 0
    let raised = 0
    let bypassed = 0
    for (const { seed, form } of NETWORKS) {
      const r = new Random(seed)
      const before = ends(form)
      if (before.length === 0) continue
      const pick = r.pick(before.filter((x) => x.b.from !== x.b.to).concat(before[0]!))
      const compare = (changed: NetworkForm, sign: 1 | -1): number => {
        const after = new Map(ends(changed).map((x) => [`${x.b.id} ${x.end}`, x.flow]))
        let moved = 0
        for (const { b, end, flow } of before) {
          const now = after.get(`${b.id} ${end}`)
          if (now === undefined || Number.isNaN(now) || Number.isNaN(flow)) continue
          if (now === flow) continue
          expect((now - flow) * sign).toBeGreaterThan(0)
          moved++
        }
        return moved
      }
      const swap = (id: string, change: (b: NetworkBranch) => NetworkBranch): NetworkForm => ({
        ...form,
        branches: form.branches.map((b) => (b.id === id ? change(b) : b)),
      })
      lowered += compare(
        swap(pick.b.id, (b) => ({ ...b, kind: 'fuse', rating: 5 })),
        -1,
      )
      const fuses = form.branches.filter((b) => b.kind === 'fuse')
      if (fuses.length === 0) continue
      const fuse = r.pick(fuses)
      raised += compare(
        swap(fuse.id, (b) => ({ ...b, rating: b.rating! * 3 })),
        1,
      )
      const bypass: NetworkBranch = {
        id: 'bypass',
        from: fuse.from,
        to: fuse.to,
        resistance: 0.001,
        kind: 'conductor',
      }
      const open = compare({ ...form, branches: [...form.branches, bypass] }, 1)
      const gone = compare(
        swap(fuse.id, (b) => ({ ...b, kind: 'contact' })),
        1,
      )
      expect(open).toBe(gone)
      bypassed += open
    }
    expect(Math.min(lowered, raised, bypassed)).toBeGreaterThan(100)
  })

  it('does not depend on the order or direction in which things are listed', () => {
    for (const { seed, form } of NETWORKS.slice(0, 150)) {
      const r = new Random(seed)
      const shuffled = <T>(list: readonly T[]): T[] =>
        list
          .map((x) => [r.unit(), x] as const)
          .sort((a, b) => a[0] - b[0])
          .map(([, x]) => x)
      const turned = new Map(form.branches.map((b) => [b.id, r.chance(0.5)]))
      const other: NetworkForm = {
        nodes: shuffled(form.nodes),
        branches: shuffled(form.branches).map((b) =>
          turned.get(b.id) ? { ...b, from: b.to, to: b.from } : b,
        ),
        devices: shuffled(form.devices),
      }
      const members = (answer: EndProtection): unknown =>
        'cut' in answer
          ? answer.cut.map((x) => `${x.kind} ${x.id}`).sort()
          : 'path' in answer
            ? 'unlimited'
            : answer.notChecked.code
      const after = new Map(ends(other).map((x) => [`${x.b.id} ${x.end}`, x]))
      for (const { b, end, flow, answer } of ends(form)) {
        const opposite = end === 'from' ? 'to' : 'from'
        const now = after.get(`${b.id} ${turned.get(b.id) ? opposite : end}`)!
        expect(close(now.flow, flow) || (Number.isNaN(now.flow) && Number.isNaN(flow))).toBe(true)
        expect(members(now.answer)).toEqual(members(answer))
      }
    }
  })

  it('says "not checked" exactly where a missing rating would change the answer', () => {
    let refused = 0
    let settled = 0
    for (const { seed, form } of NETWORKS) {
      const r = new Random(seed)
      const fuses = form.branches.filter((b) => b.kind === 'fuse')
      if (fuses.length === 0) continue
      const blank = new Set(fuses.filter(() => r.chance(0.4)).map((b) => b.id))
      const at = (rating: number | undefined): NetworkForm => ({
        ...form,
        branches: form.branches.map((b) => {
          if (!blank.has(b.id)) return b
          const { rating: _, ...bare } = b
          if (rating === Number.POSITIVE_INFINITY) return { ...bare, kind: 'contact' as const }
          return rating === undefined ? bare : { ...bare, rating }
        }),
      })
      const most = ends(at(Number.POSITIVE_INFINITY))
      const least = ends(at(0))
      ends(at(undefined)).forEach(({ flow, answer }, i) => {
        const [high, low] = [most[i]!.flow, least[i]!.flow]
        if (Number.isNaN(high)) return
        if (close(high, low)) {
          expect(close(flow, high)).toBe(true)
          settled++
          return
        }
        expect(flow).toBeNaN()
        if (!('notChecked' in answer) || answer.notChecked.code !== 'missing-rating')
          throw new Error('no reason')
        expect(answer.notChecked.fuses.length).toBeGreaterThan(0)
        for (const id of answer.notChecked.fuses) expect(blank.has(id)).toBe(true)
        refused++
      })
    }
    expect(Math.min(refused, settled)).toBeGreaterThan(500)
  })
})

describe('protection of a whole design of everyday shape', () => {
  it('equals HiGHS at every conductor end of a 150-branch design', () => {
    const form = vehicle(7, 150)
    for (const { e, b, end, flow } of ends(form)) {
      const theirs = endFlowByLp(form, e, end)
      if (!close(flow, theirs)) throw new Error(`${b.id} ${end}: ${flow} A, HiGHS ${theirs} A`)
    }
  })
})
