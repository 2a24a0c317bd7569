import { describe, expect, it } from 'vitest'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { returns, type Sustained } from '../../../engine/calc/returns'
import { BRIDGE, blocksOf, SELF_LOOP } from '../../../engine/math/blocks'
import { shortByLp, sustainedByLp } from '../../reference/flowprograms'
import { randomNetwork } from '../../reference/networks'
import { Random } from '../../reference/random'
import { vehicle } from '../../reference/vehicle'

const NETWORKS = Array.from({ length: 600 }, (_, i) => ({
  seed: i + 1,
  form: randomNetwork(i + 1, { odd: i % 2 === 0 }),
}))

function close(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b))
}

function ampsOf(answer: Sustained): number {
  if ('notChecked' in answer) throw new Error(answer.notChecked.code)
  return answer.sustained === 'unlimited' ? Number.POSITIVE_INFINITY : answer.sustained
}

/** The returns of a network that are not self-loops, with their answers. */
function asked(form: NetworkForm) {
  const p = prepare(form)
  const result = returns(p)
  const { of } = blocksOf(p.graph)
  const list = form.branches.flatMap((b, e) =>
    result.isReturn[e] === 1 && of[e] !== SELF_LOOP
      ? [{ e, b, bridge: of[e] === BRIDGE, answer: result.sustained(e) }]
      : [],
  )
  const fuseInMesh = form.branches.some((b, e) => b.kind === 'fuse' && of[e]! >= 0)
  return { list, result, fuseInMesh, of }
}

describe('sustained current of returns on 600 random networks', () => {
  it('equals HiGHS: meshed parts at their resistances, bridges as a flow round the loop', () => {
    const seen = { mesh: 0, bridge: 0, unlimited: 0, limited: 0, aboveResistive: 0 }
    for (const { seed, form } of NETWORKS) {
      const { list, fuseInMesh } = asked(form)
      if (list.length === 0) continue
      const branches = list.map((x) => x.e)
      const flows = sustainedByLp(form, branches, false)
      const resistive = sustainedByLp(form, branches, true)
      list.forEach(({ b, bridge, answer }, i) => {
        const ours = ampsOf(answer)
        const theirs = bridge ? flows[i]! : resistive[i]!
        if (!close(ours, theirs)) throw new Error(`seed ${seed}, ${b.id}: ${ours} A, HiGHS ${theirs} A`)
        // Fuses side by side count in full for a bridge, however resistance shares them: never below, equal without.
        expect(ours).toBeGreaterThanOrEqual(resistive[i]! * (1 - 1e-6) - 1e-6)
        if (!fuseInMesh) expect(close(ours, resistive[i]!)).toBe(true)
        seen[bridge ? 'bridge' : 'mesh']++
        seen[ours === Number.POSITIVE_INFINITY ? 'unlimited' : 'limited']++
        if (!close(ours, resistive[i]!)) seen.aboveResistive++
      })
    }
    expect(Math.min(seen.mesh, seen.bridge, seen.unlimited, seen.limited)).toBeGreaterThan(300)
    expect(seen.aboveResistive).toBeGreaterThan(10)
  })

  it('names what limits: with more of it the current rises, and with more of anything else it does not', () => {
    let raised = 0
    let still = 0
    let finite = 0
    for (const { form } of NETWORKS.slice(0, 300)) {
      const { list } = asked(form)
      for (const { e, answer } of list) {
        if ('notChecked' in answer || answer.sustained === 'unlimited' || answer.sustained === 0) continue
        const named = new Set(answer.limiting.map((x) => `${x.kind} ${x.id}`))
        const more = (which: (key: string) => boolean): NetworkForm => ({
          ...form,
          branches: form.branches.map((b) =>
            b.kind === 'fuse' && which(`fuse ${b.id}`) ? { ...b, rating: b.rating! * 2 } : b,
          ),
          devices: form.devices.map((d) =>
            typeof d.sustainedFault === 'number' && which(`source ${d.id}`)
              ? { ...d, sustainedFault: d.sustainedFault * 2 }
              : d,
          ),
        })
        const others = returns(prepare(more((key) => !named.has(key)))).sustained(e)
        // The other sense may have become the greater one; of the same sense nothing else is a limit.
        if ('sense' in others && others.sense === answer.sense) {
          expect(close(ampsOf(others), answer.sustained)).toBe(true)
          still++
        }
        const raisedTo = ampsOf(returns(prepare(more((key) => named.has(key)))).sustained(e))
        if (raisedTo > answer.sustained * (1 + 1e-9)) raised++
        finite++
      }
    }
    expect(still).toBeGreaterThan(300)
    // Other limits may bind as well, so the rise is usual, not certain.
    expect(raised / finite).toBeGreaterThan(0.9)
  })

  it('a single short: the lesser of two flows, by HiGHS, on every bridge', () => {
    let some = 0
    for (const { seed, form } of NETWORKS.slice(0, 120)) {
      const { list, result, of } = asked(form)
      for (const { e, b } of list) {
        if (of[e] !== BRIDGE) continue
        const ours = result.singleShort(e)
        if ('notChecked' in ours) throw new Error(ours.notChecked.code)
        const amps = ours.amps === 'unlimited' ? Number.POSITIVE_INFINITY : ours.amps
        const theirs = shortByLp(form, e)
        if (!close(amps, theirs)) throw new Error(`seed ${seed}, ${b.id}: ${amps} A, HiGHS ${theirs} A`)
        if (amps > 0) some++
      }
    }
    expect(some).toBeGreaterThan(60)
  })

  it('says "not checked" exactly where a missing rating would change the figure', () => {
    const seen = { refused: 0, settled: 0 }
    for (const { seed, form } of NETWORKS.slice(0, 300)) {
      const r = new Random(seed)
      const blank = new Set(form.branches.filter((b) => b.kind === 'fuse' && r.chance(0.4)).map((b) => b.id))
      const at = (rating: number | undefined): NetworkForm => ({
        ...form,
        branches: form.branches.map((b) => {
          if (!blank.has(b.id)) return b
          const { rating: _, ...bare } = b
          if (rating === Number.POSITIVE_INFINITY) return { ...bare, kind: 'contact' as const }
          return rating === undefined ? bare : { ...bare, rating }
        }),
      })
      const most = asked(at(Number.POSITIVE_INFINITY)).list
      const least = asked(at(0)).list
      asked(at(undefined)).list.forEach(({ answer }, i) => {
        const [high, low] = [ampsOf(most[i]!.answer), ampsOf(least[i]!.answer)]
        if (close(high, low)) {
          expect(close(ampsOf(answer), high)).toBe(true)
          seen.settled++
        } else {
          expect(answer).toMatchObject({ notChecked: { code: 'missing-rating' } })
          seen.refused++
        }
      })
    }
    expect(Math.min(seen.refused, seen.settled)).toBeGreaterThan(100)
  })
})

describe('sustained current in a whole design of everyday shape', () => {
  it('equals HiGHS on every return of a 400-branch design with chassis paths beside the conductors', () => {
    const form = vehicle(1, 400)
    const { list } = asked(form)
    const branches = list.map((x) => x.e)
    const flows = sustainedByLp(form, branches, false)
    const resistive = sustainedByLp(form, branches, true)
    list.forEach(({ b, bridge, answer }, i) => {
      const theirs = bridge ? flows[i]! : resistive[i]!
      if (!close(ampsOf(answer), theirs)) throw new Error(`${b.id}: ${ampsOf(answer)} A, HiGHS ${theirs} A`)
    })
    expect(list.filter((x) => !x.bridge).length).toBeGreaterThan(5)
  })
})
