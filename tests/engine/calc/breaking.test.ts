import { describe, expect, it } from 'vitest'
import { breakingCurrents } from '../../../engine/calc/breaking'
import type { FaultCase } from '../../../engine/calc/faultsystem'
import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../../engine/calc/form'
import { loadFlow } from '../../../engine/calc/loadflow'
import { prepare } from '../../../engine/calc/prepare'
import { operatingCase } from '../../reference/ngspice/cases'

const AS_GIVEN: FaultCase = {
  conductorFactor: 1,
  contactFactor: 1,
  emfFactor: 1,
  internalFactor: 1,
  sources: true,
}

/** The plain method: draw each short circuit in, solve, and take every source where it adds. */
function plainly(form: NetworkForm): Float64Array {
  const p = prepare(form)
  const worst = new Float64Array(form.branches.length)
  const limited = form.devices.filter((d) => d.emf === undefined && d.sustainedFault !== 0)
  const resting = new Map(form.devices.filter((d) => d.emf === undefined).map((d) => [d.id, { amps: 0 }]))
  const flows = (branches: readonly NetworkBranch[], feeding?: NetworkDevice): Float64Array => {
    const operations = new Map(resting)
    if (feeding) operations.set(feeding.id, { amps: feeding.sustainedFault as number })
    const answer = loadFlow(prepare({ ...form, branches }), operations)
    if ('reason' in answer) throw new Error(answer.reason)
    return answer.branchAmps
  }
  const normal = loadFlow(p, resting)
  if ('reason' in normal) throw new Error(normal.reason)
  form.nodes.forEach((from, u) => {
    for (let w = 0; w < u; w++) {
      if (normal.group[u] !== normal.group[w]) continue
      const short = { id: 'short', from, to: form.nodes[w]!, resistance: 1e-7, kind: 'conductor' as const }
      const branches = [...form.branches, short]
      const own = flows(branches)
      const added = limited.map((d) => flows(branches, d).map((x, e) => x - own[e]!))
      for (let e = 0; e < worst.length; e++) {
        const forward = added.reduce((sum, x) => sum + Math.max(0, x[e]!), own[e]!)
        const backward = added.reduce((sum, x) => sum + Math.max(0, -x[e]!), -own[e]!)
        worst[e] = Math.max(worst[e]!, forward, backward)
      }
    }
  })
  return worst
}

function answerFor(form: NetworkForm) {
  const answer = breakingCurrents(prepare(form), AS_GIVEN)
  if ('reason' in answer) throw new Error(answer.reason)
  return answer
}

describe('breaking current', () => {
  it('is what trying every short circuit by the load flow gives', () => {
    let fuses = 0
    for (let seed = 1; seed <= 12; seed++) {
      const c = operatingCase(seed, 3)
      const devices = c.form.devices
        .filter((d) => d.emf !== undefined || d.id.endsWith('/out'))
        .map((d) => (d.emf === undefined ? { ...d, sustainedFault: 45 } : d))
      const used = new Set([
        ...c.form.branches.flatMap((b) => [b.from, b.to]),
        ...devices.flatMap((d) => [d.positive, d.negative]),
      ])
      const form = { ...c.form, nodes: c.form.nodes.filter((id) => used.has(id)), devices }
      const expected = plainly(form)
      const answer = answerFor(form)
      expect(answer.everyPair).toBe(true)
      form.branches.forEach((b, e) => {
        if (b.kind !== 'fuse') return
        fuses++
        expect(Math.abs(answer.amps[e]! / expected[e]! - 1)).toBeLessThan(1e-3)
      })
    }
    expect(fuses).toBeGreaterThan(50)
  })

  it('never gives more when only the own ends are tried, and says that it did so', () => {
    let same = 0
    let fuses = 0
    for (let seed = 1; seed <= 30; seed++) {
      const p = prepare(operatingCase(seed, 10).form)
      const all = breakingCurrents(p, AS_GIVEN)
      const own = breakingCurrents(p, AS_GIVEN, 0)
      if ('reason' in all || 'reason' in own) throw new Error('no answer')
      expect([all.everyPair, own.everyPair]).toEqual([true, false])
      all.amps.forEach((most, e) => {
        if (Number.isNaN(most)) return
        fuses++
        expect(own.amps[e]).toBeLessThanOrEqual(most * (1 + 1e-9))
        if (own.amps[e]! > most * (1 - 1e-9)) same++
      })
    }
    expect(same / fuses).toBeGreaterThan(0.8)
    expect(same).toBeLessThan(fuses)
  })

  it('finds that battery terminals are not the worst place', () => {
    // A fuse in the link of two batteries in series, the lower one weak: its own ends see the weak battery alone,
    // a short circuit over both batteries drives more.
    const battery = (id: string, positive: string, negative: string, ohms: number): NetworkDevice => ({
      id,
      positive,
      negative,
      min: -50,
      max: 50,
      sustainedFault: 'unlimited',
      emf: 12,
      internalResistance: ohms,
    })
    const form: NetworkForm = {
      nodes: ['-', 'm1', 'm2', '+'],
      branches: [{ id: 'link', from: 'm1', to: 'm2', resistance: 1e-4, kind: 'fuse', rating: 200 }],
      devices: [battery('weak', 'm1', '-', 0.02), battery('strong', '+', 'm2', 0.004)],
    }
    const answer = answerFor(form)
    const strongAlone = 12 / (0.004 + 1e-4)
    expect(answer.amps[0]).toBeCloseTo(strongAlone, 6)
    expect([form.nodes[answer.at[0]!], form.nodes[answer.to[0]!]].sort()).toEqual(['+', 'm1'])
  })

  it('gives a string fuse what the other strings push into its string', () => {
    const string = (i: number): NetworkDevice => ({
      id: `string${i}`,
      positive: `s${i}`,
      negative: '-',
      min: 0,
      max: 9,
      sustainedFault: 11,
    })
    const strings = [0, 1, 2, 3]
    const form: NetworkForm = {
      nodes: ['-', 'bar', ...strings.map((i) => `s${i}`)],
      branches: strings.map((i) => ({
        id: `f${i}`,
        from: `s${i}`,
        to: 'bar',
        resistance: 0.01,
        kind: 'fuse',
      })),
      devices: strings.map(string),
    }
    expect([...answerFor(form).amps]).toEqual([33, 33, 33, 33].map((x) => expect.closeTo(x, 6)))
    const boundless = {
      ...form,
      devices: [{ ...string(0), sustainedFault: 'unlimited' as const }, string(1)],
    }
    expect([...answerFor(boundless).amps].slice(0, 2)).toEqual([Infinity, Infinity])
  })
})
