import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { NetworkFile } from '../../../engine/calc/networkfile'
import { readNetwork } from '../../../engine/calc/readform'
import { networkReport } from '../../../engine/calc/report'
import { randomNetwork } from '../../reference/networks'
import { operatingCase } from '../../reference/ngspice/cases'
import { misfits } from '../../reference/schemacheck'
import { Sketch } from '../../reference/sketch'
import { vehicle } from '../../reference/vehicle'

const schema = JSON.parse(
  readFileSync(new URL('../../../public/network-form.schema.json', import.meta.url), 'utf8'),
) as Record<string, unknown>
const part = (name: string) => (schema.$defs as Record<string, Record<string, unknown>>)[name]!
const throughJson = (data: unknown): unknown => JSON.parse(JSON.stringify(data))

const trailer = (): NetworkFile => ({
  ...new Sketch()
    .wire('loads-', 'bar-', 0.0005, 'shunt')
    .wire('bat-', 'bar-', 0.001, 'strap')
    .wire('bat+', 'post', 0.001, 'main')
    .wire('bar+', 'lamp+', 0.02, 'feed')
    .device('battery', 'bat+', 'bat-', -50, 100, 12.8)
    .device('lamp', 'lamp+', 'loads-', -5, 0)
    .device('charger', 'bar+', 'bar-', 0, 30)
    .form(),
  operating: [{ device: 'charger', amps: 10 }],
  meters: [{ shunt: 'shunt', role: 'load' }],
})
const fused = (): NetworkFile => {
  const file = trailer()
  const fuse = { id: 'fuse', from: 'post', to: 'bar+', resistance: 0.001, kind: 'fuse' as const, rating: 60 }
  const devices = file.devices.map((d) =>
    d.id === 'battery' ? { ...d, sustainedFault: 'unlimited' as const } : { ...d, sustainedFault: d.max },
  )
  return { ...file, branches: [...file.branches, fuse], devices }
}

describe('report of a network', () => {
  const report = networkReport(fused())
  const branch = (id: string) => report.branches.find((b) => b.id === id)!

  it('gives the envelope, the guards, the sustained current and the worst drop of each branch', () => {
    expect(report.counts).toEqual({ nodes: 7, branches: 5, devices: 3, nets: 2 })
    // Charging at 30 A, or discharging into the lamp at 5 A.
    expect(branch('main').envelope).toEqual([-30, 5])
    expect(branch('main').protection).toEqual({
      from: { flow: 'unlimited', path: [], source: 'battery' },
      to: { flow: 30, cut: [{ kind: 'source', id: 'charger', amps: 30 }] },
    })
    expect(branch('feed').protection).toEqual({
      from: {
        flow: 90,
        cut: expect.arrayContaining([
          { kind: 'fuse', id: 'fuse', amps: 60 },
          { kind: 'source', id: 'charger', amps: 30 },
        ]),
      },
      to: { flow: 0, cut: [] },
    })
    expect(branch('strap').sustained).toMatchObject({ amps: 60 })
    expect(branch('main').sustained).toBeUndefined()
    expect(branch('feed').worstDrop).toBeCloseTo(0.1, 9)
  })

  it('gives the shunt, the operating point, the faults and the drops', () => {
    expect(report.shunts).toEqual([
      {
        id: 'shunt',
        role: 'load',
        reversed: false,
        betweenBatteries: 0,
        shares: [
          { device: 'lamp', nature: 'load', share: 1, expected: 1 },
          { device: 'charger', nature: 'source', share: 0, expected: 0 },
        ],
        over: { amps: 0, watts: 0, causes: [] },
        under: { amps: 0, watts: 0, causes: [] },
      },
    ])
    const { loadFlow, faults, breaking, drops } = report
    if ('notChecked' in loadFlow || 'notChecked' in faults.greatest || 'notChecked' in breaking)
      throw new Error('not checked')
    expect(loadFlow.devices).toContainEqual({ id: 'battery', amps: -5 })
    expect(faults.greatest.nodes.find((n) => n.id === 'bat+')?.amps).toBeCloseTo(1460 + 30 * 1, 0)
    expect(faults.greatest.nodes.find((n) => n.id === 'bar-')?.amps).toBeNull()
    expect(breaking.devices.map((d) => d.id)).toEqual(['fuse'])
    expect(drops).toMatchObject([{ device: 'lamp', supply: ['battery'], loadsOff: 0 }])
  })

  it('warms the conductors for the drops, and nothing else', () => {
    const warm = networkReport({ ...fused(), conductorCelsius: 70 })
    const drop = warm.drops[0]!
    if ('notChecked' in drop || drop.volts === 'unlimited') throw new Error('no drop')
    // 0.022 Ω of conductors at 1 + 0.00393·50, 0.0015 Ω of fuse and shunt as they are.
    expect(drop.volts).toBeCloseTo(5 * (0.022 * 1.1965 + 0.0015), 9)
    expect(warm.loadFlow).toEqual(networkReport(fused()).loadFlow)
  })

  it('says why where there is no answer, and goes on', () => {
    const file = fused()
    const bare = file.devices.map(({ internalResistance: _, ...d }) => d)
    const answer = networkReport({ ...file, devices: bare })
    const missing = { notChecked: 'internal-resistance-missing', devices: ['battery'] }
    expect(answer.loadFlow).toEqual(missing)
    expect(answer.faults.least).toEqual(missing)
    expect(answer.breaking).toEqual(missing)
    expect(answer.branches).toEqual(report.branches)
  })
})

describe('the documented form', () => {
  it('is a schema that holds samples and reports, of random networks and of systems', () => {
    const files: NetworkFile[] = [trailer(), fused()]
    for (let seed = 1; seed <= 60; seed++) files.push(randomNetwork(seed))
    for (let seed = 1; seed <= 10; seed++) {
      const c = operatingCase(seed, 6)
      files.push({
        ...c.form,
        operating: c.operations.map(([device, operation]) => ({ device, ...operation })),
        conductorCelsius: 50,
      })
    }
    for (const file of files) {
      expect(misfits(schema, schema, throughJson(file))).toEqual([])
      const read = readNetwork(JSON.stringify(file))
      if ('problems' in read) throw new Error(JSON.stringify(read.problems))
      expect(misfits(schema, part('report'), throughJson(networkReport(read.network)))).toEqual([])
    }
  })

  it.each([
    ['resistance', { ...trailer(), branches: [{ ...trailer().branches[0]!, resistance: 0 }] }],
    ['kind', { ...trailer(), branches: [{ ...trailer().branches[0]!, kind: 'lamp' }] }],
    ['min', { ...trailer(), devices: [{ ...trailer().devices[0]!, min: 3 }] }],
    ['another key', { ...trailer(), extra: 1 }],
    ['a missing list', { nodes: [], branches: [] }],
    ['efficiency', { ...trailer(), operating: [{ device: 'charger', amps: 1, efficiency: 1.1 }] }],
  ])('refuses what the reader refuses: %s', (_, file) => {
    expect(misfits(schema, schema, throughJson(file)).length).toBeGreaterThan(0)
    expect('problems' in readNetwork(JSON.stringify(file))).toBe(true)
  })

  it('reports 20,000 branches', () => {
    const file = vehicle(3, 20_000)
    const report = networkReport(file)
    expect(report.branches.length).toBe(file.branches.length)
    expect('notChecked' in report.loadFlow).toBe(false)
    const reasons = new Set(report.drops.map((d) => ('notChecked' in d ? d.notChecked : 'drop')))
    expect([...reasons].sort()).toEqual(['drop', 'no-battery-feeds-it'])
  }, 120_000)
})
