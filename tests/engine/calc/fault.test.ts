import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { faultFlows, nodeFaults } from '../../../engine/calc/fault'
import { type FaultCase, GREATEST, LEAST } from '../../../engine/calc/faultsystem'
import type { NetworkBranch, NetworkDevice, NetworkForm } from '../../../engine/calc/form'
import { loadFlow } from '../../../engine/calc/loadflow'
import { prepare } from '../../../engine/calc/prepare'
import { operatingCase, shortCase } from '../../reference/ngspice/cases'
import { hasNgspice, simulate } from '../../reference/ngspice/deck'

const AS_GIVEN: FaultCase = {
  conductorFactor: 1,
  contactFactor: 1,
  emfFactor: 1,
  internalFactor: 1,
  sources: true,
}

const battery = (
  id: string,
  positive: string,
  negative: string,
  emf: number,
  ohms: number,
): NetworkDevice => ({
  id,
  positive,
  negative,
  min: -100,
  max: 100,
  sustainedFault: 'unlimited',
  emf,
  internalResistance: ohms,
})
const wire = (from: string, to: string, resistance: number): NetworkBranch => ({
  id: `${from} to ${to}`,
  from,
  to,
  resistance,
  kind: 'conductor',
})
function network(branches: NetworkBranch[], devices: NetworkDevice[]): NetworkForm {
  const nodes = new Set([
    ...branches.flatMap((b) => [b.from, b.to]),
    ...devices.flatMap((d) => [d.positive, d.negative]),
  ])
  return { nodes: [...nodes], branches, devices }
}
function at(form: NetworkForm, node: string, c: FaultCase = AS_GIVEN): number {
  const answer = nodeFaults(prepare(form), c)
  if ('reason' in answer) throw new Error(answer.reason)
  return answer.amps[form.nodes.indexOf(node)]!
}

describe('prospective current against worked examples', () => {
  // Textbook-style example: a 12 V car battery of 0.02 Ω gives 600 A.
  it('12 V, 0.02 Ω: 600 A', () => {
    expect(at(network([], [battery('b', '+', '-', 12, 0.02)]), '+')).toBeCloseTo(600, 6)
  })

  // expeditionportal.com thread 248842: cell of 3.5 V and 0.75 mΩ → 4,667 A; four cells with three links of
  // 0.25 mΩ are 3.75 mΩ, so 14 V → 3,733 A (the last figure is arithmetic).
  it('lithium cell 4,667 A; four in series with links 3,733 A', () => {
    expect(at(network([], [battery('c', '+', '-', 3.5, 0.00075)]), '+') / 4667).toBeCloseTo(1, 3)
    const cells = [0, 1, 2, 3].map((i) => battery(`c${i}`, `${i}+`, `${i}-`, 3.5, 0.00075))
    const links = [0, 1, 2].map((i) => wire(`${i}+`, `${i + 1}-`, 0.00025))
    expect(at(network(links, cells), '3+') / 3733).toBeCloseTo(1, 3)
  })

  // eng-tips.com thread 345438: a 12 V block of 3,800 A is 3.16 mΩ, and seven parallel strings give 26.6 kA; one
  // string of four with links 3 × 1.5, cables 2 × 3.5 and breaker 1.2 mΩ is 25.3 mΩ (printed ≈ 25).
  it('lead-acid: 26.6 kA from seven in parallel; a 48 V string through its cables 1,895 A', () => {
    const seven = Array.from({ length: 7 }, (_, i) => battery(`b${i}`, '+', '-', 12, 12 / 3800))
    expect(at(network([], seven), '+')).toBeCloseTo(26_600, 3)
    const four = [0, 1, 2, 3].map((i) => battery(`b${i}`, `${i}+`, `${i}-`, 12, 0.00316))
    const path = [0, 1, 2].map((i) => wire(`${i}+`, `${i + 1}-`, 0.0015))
    const form = network([...path, wire('3+', 'cable', 0.0035), wire('cable', 'end', 0.0012 + 0.0035)], four)
    expect(Math.abs(at(form, 'end') / 1895 - 1)).toBeLessThan(0.01)
  })

  // trawlerforum.com thread 75323: six 6 V batteries as three strings of two, 2,400 A each: 7,200 A.
  it('six 6 V batteries in series and parallel: 7,200 A; series does not add', () => {
    const six = [0, 1, 2].flatMap((i) => [
      battery(`low${i}`, `m${i}`, '-', 6, 6 / 2400),
      battery(`high${i}`, '+', `m${i}`, 6, 6 / 2400),
    ])
    expect(at(network([], six), '+')).toBeCloseTo(7200, 6)
  })

  // Ohm's law on 35 mm² copper, 3 m loop of 1.662 mΩ, behind 13.6 V and 4 mΩ: 2,402 A.
  it('13.6 V, 4 mΩ, 1.662 mΩ of cable: 2,402 A', () => {
    const form = network([wire('+', 'end', 0.001662)], [battery('b', '+', '-', 13.6, 0.004)])
    expect(at(form, 'end') / 2402).toBeCloseTo(1, 3)
  })
})

describe('prospective current', () => {
  /** Our current over the simulator's for one short circuit. */
  function ratio(seed: number, ways: number, node: string, amps: number): number {
    const { form } = operatingCase(seed, ways)
    const answer = nodeFaults(
      prepare({ ...form, devices: form.devices.filter((d) => d.emf !== undefined) }),
      AS_GIVEN,
    )
    if ('reason' in answer) throw new Error(answer.reason)
    return answer.amps[form.nodes.indexOf(node)]! / amps
  }

  it('is what a circuit simulator gave with the short circuit drawn in, as stored', () => {
    const file = new URL('../../reference/ngspice/shorts.json', import.meta.url)
    const { shorts } = JSON.parse(readFileSync(file, 'utf8')) as {
      shorts: { seed: number; ways: number; node: string; amps: number }[]
    }
    expect(shorts.length).toBeGreaterThanOrEqual(16)
    for (const { seed, ways, node, amps } of shorts) expect(ratio(seed, ways, node, amps)).toBeCloseTo(1, 3)
  })

  it.skipIf(!hasNgspice())('is what a circuit simulator gives, run now', () => {
    for (let seed = 1; seed <= 12; seed++)
      for (const node of ['bar+', 'way0', 'load3+', 'alternator']) {
        const { c, ampsOf } = shortCase(seed, 8, node)
        expect(ratio(seed, 8, node, ampsOf(simulate(c)))).toBeCloseTo(1, 3)
      }
  })

  it('is what the load flow gives with the short circuit drawn in, sources feeding', () => {
    for (let seed = 20; seed <= 40; seed++) {
      const c = operatingCase(seed, 9)
      const devices = c.form.devices
        .filter((d) => d.emf !== undefined || d.id === 'charger/out' || d.id === 'controller/out')
        .map((d) => (d.emf === undefined ? { ...d, sustainedFault: 35 } : d))
      const form = { ...c.form, devices }
      const answer = nodeFaults(prepare(form), AS_GIVEN)
      if ('reason' in answer) throw new Error(answer.reason)
      const operations = new Map(devices.filter((d) => d.emf === undefined).map((d) => [d.id, { amps: 35 }]))
      const p = prepare({
        ...form,
        branches: [...form.branches, { ...wire('load4+', 'bank0-', 1e-9), id: 'short' }],
      })
      const flow = loadFlow(p, operations)
      if ('reason' in flow) throw new Error(flow.reason)
      const v = p.nodeIndex.get('load4+')!
      expect(answer.amps[v]! / flow.branchAmps.at(-1)!).toBeCloseTo(1, 4)
    }
  })

  it('passes each branch as the load flow has it with the short circuit drawn in', () => {
    for (let seed = 41; seed <= 50; seed++) {
      const c = operatingCase(seed, 7)
      const form = { ...c.form, devices: c.form.devices.filter((d) => d.emf !== undefined) }
      const flows = faultFlows(prepare(form), AS_GIVEN)
      if ('reason' in flows) throw new Error(flows.reason)
      for (const node of ['load2+', 'way5', 'alternator']) {
        const short = { ...wire(node, 'bank0-', 1e-9), id: 'short' }
        const drawn = loadFlow(prepare({ ...form, branches: [...form.branches, short] }))
        if ('reason' in drawn) throw new Error(drawn.reason)
        const { amps, branchAmps } = flows(form.nodes.indexOf(node))
        expect(amps / drawn.branchAmps.at(-1)!).toBeCloseTo(1, 4)
        branchAmps.forEach((x, e) => {
          expect(Math.abs(x - drawn.branchAmps[e]!)).toBeLessThan(1e-4 * amps)
        })
      }
    }
  })

  it('counts a node below the return by its size', () => {
    const joined = network([], [battery('low', '+', '-', 12, 0.01), battery('high', '+', '--', 24, 0.01)])
    expect(at(joined, '--')).toBeCloseTo(12 / 0.02, 6)
  })

  it('is not given on the return; is what sources push in where no battery is; is 0 where nothing feeds', () => {
    const source = (id: string, amps: number | 'unlimited'): NetworkDevice => ({
      id,
      positive: 's+',
      negative: '-',
      min: 0,
      max: 10,
      sustainedFault: amps,
    })
    const form = network(
      [wire('s+', 'c+', 0.1), wire('x', 'y', 1), wire('-', 'bar-', 1e-3)],
      [battery('b', '+', '-', 12, 0.01), source('one', 11), source('two', 11)],
    )
    expect(at(form, 'bar-')).toBeNaN()
    expect(at(form, '-')).toBeNaN()
    expect(at(form, 'c+')).toBe(22)
    expect(at(form, 'x')).toBe(0)
    expect(at({ ...form, devices: [...form.devices, source('three', 'unlimited')] }, 'c+')).toBe(Infinity)
  })

  it('lies between the least and the greatest case, and says which battery lacks its resistance', () => {
    const form = network([wire('+', 'end', 0.01)], [battery('b', '+', '-', 12.8, 0.004)])
    expect(at(form, 'end', LEAST)).toBeLessThan(at(form, 'end'))
    expect(at(form, 'end')).toBeLessThan(at(form, 'end', GREATEST))
    // 14.6 V behind 4 mΩ and 10 mΩ of copper at −10 °C (factor 1 − 0.00393·30).
    expect(at(form, 'end', GREATEST)).toBeCloseTo(14.6 / (0.004 + 0.01 * (1 - 0.00393 * 30)), 6)
    const { internalResistance: _, ...bare } = form.devices[0]!
    expect(nodeFaults(prepare({ ...form, devices: [bare] }), AS_GIVEN)).toEqual({
      reason: 'internal-resistance-missing',
      devices: ['b'],
    })
  })
})
