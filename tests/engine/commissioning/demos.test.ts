import { readFileSync } from 'node:fs'
import { describe, expect, it, test } from 'vitest'
import { STEP_GROUPS } from '../../../engine/calc/commissioning/step'
import { commissioningSteps } from '../../../engine/calc/commissioning/steps'
import { networkOf } from '../../../engine/calc/network'
import { readDesign } from '../../../engine/kinds/readdesign'
import type { Design } from '../../../engine/model/design'
import { writeDesign } from '../../../engine/model/write'
import { commissioningSheets } from '../../../engine/sheets/commissioning/commissioning.section'
import { INSTRUMENT_WORDS, probeWords, readingWords } from '../../../engine/words/commissioning/readings'
import { settingWords } from '../../../engine/words/commissioning/setting'
import { stepWords } from '../../../engine/words/commissioning/steps'
import { commissioningSummary } from '../../../engine/words/commissioning/summary'
import { Random } from '../../reference/random'
import { randomDesign } from '../rules/randomdesign'

const demo = (name: string): Design =>
  readDesign(readFileSync(new URL(`../../../public/demos/${name}.json`, import.meta.url), 'utf8')).design!

const DEMOS = ['camping-trailer', 'expedition-truck', 'mountain-cabin', 'veterinary-van', 'planted-mistakes']

const textsOf = (d: Design): string =>
  commissioningSheets(d)
    .flatMap((s) => s.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])))
    .join(' ')

describe.each(DEMOS)('%s', (name) => {
  const d = demo(name)
  const steps = commissioningSteps(d)

  it('has a step for every source, load, fuse, shunt and relay', () => {
    const border = networkOf(d, 'none', new Set())
    const inGroup = (group: string, part: string): boolean =>
      steps.some((s) => s.group === group && s.parts.includes(part))
    for (const [id, { part, device }] of border.devices) {
      const isInput = [...border.devices.values()].some(
        (x) => x.part === part && x.device.suppliedBy?.device === device.key,
      )
      if (device.role === 'battery' || device.role === 'source' || device.role === 'two-way')
        expect(inGroup('source-alone', part), id).toBe(true)
      if (device.role === 'load' && !isInput && !/coil|close|open/.test(device.key))
        expect(inGroup('loads', part), id).toBe(true)
    }
    for (const [id, { part, branch }] of border.branches) {
      if (branch.kind === 'fuse') {
        const step = steps.find((s) => s.key === `isolating/${part}`)
        expect(
          step?.readings.some((r) => r.key === `out:${branch.key}`),
          id,
        ).toBe(true)
      }
      if (branch.kind === 'shunt') expect(inGroup('shunts', part), id).toBe(true)
      if (branch.workedBy?.by === 'coil') expect(inGroup('relays', part), id).toBe(true)
    }
  })

  it('names both leads where a converter stops by itself', () => {
    for (const s of steps.filter((x) => x.tells === 'inverter-stop' || x.tells === 'charger-stop'))
      for (const r of s.readings) {
        const words = probeWords(r, d).join(' ')
        expect(words, s.key).toMatch(/Red lead: .*(positive|\+).*Black lead: .*(negative|−)/)
      }
  })

  it('says of a battery that it carries a load only where a clamp meter shows it', () => {
    const alone = steps.filter((s) => s.tells === 'battery-alone')
    expect(alone.length).toBeGreaterThan(0)
    for (const s of alone) {
      const amps = s.readings.find((r) => r.asks === 'current')?.expected
      const { title } = stepWords(s, d)
      if (s.setting.loads === 'off') expect(title).toMatch(/^Battery at rest: /)
      else expect(title).toMatch(/^Battery under load: /)
      expect(amps === undefined).toBe(s.setting.loads === 'off')
      if (amps?.is === 'figure') expect(amps.usual, s.key).toBeGreaterThan(0.2)
    }
  })

  it('goes through the groups in their order, with keys of their own', () => {
    const order = steps.map((s) => STEP_GROUPS.indexOf(s.group))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(new Set(steps.map((s) => s.key)).size).toBe(steps.length)
  })

  it('expects figures between their bounds, and what it calculates lies within', () => {
    for (const s of steps)
      for (const { key, expected: e } of s.readings) {
        if (e.is !== 'figure') continue
        const [least, most] = [e.least ?? Number.NEGATIVE_INFINITY, e.most ?? Number.POSITIVE_INFINITY]
        expect(least, `${s.key} ${key}`).toBeLessThan(most)
        if (e.usual !== null) expect(e.usual >= least && e.usual <= most, `${s.key} ${key}`).toBe(true)
      }
  })

  it('names every load and fuse on paper', () => {
    const text = textsOf(d)
    for (const s of steps)
      if (s.group === 'loads' || s.group === 'isolating')
        for (const id of s.parts) expect(text).toContain(d.parts.find((p) => p.id === id)!.designation)
  })
})

test('the camping trailer: all loads on, the load-side shunt shows the sum of the typed currents', () => {
  const d = demo('camping-trailer')
  const typed = d.parts.flatMap(({ kind, values: v }) => {
    if (v.currentA != null) return [v.currentA as number]
    if (v.powerW != null && kind !== 'pv-array') return [(v.powerW as number) / 12]
    return kind === 'monitor-hub' ? [(v.supplyA ?? 0.3) as number] : []
  })
  const sum = typed.reduce((a, b) => a + b, 0)
  const shunt = d.parts.find((p) => p.kind === 'shunt' && p.values.role === 'load')!
  const all = commissioningSteps(d).find((s) => s.key === 'load-side/all')!
  expect(all.setting.without).toBeUndefined()
  const { expected } = all.readings.find((r) => r.key === `shunt:${shunt.id}`)!
  // Constant powers and resistances draw a little more or less than at 12 V.
  expect(expected.is === 'figure' && Math.abs(expected.usual! / sum - 1)).toBeLessThan(0.08)
  expect(typed.length).toBe(11)
})

test.each([
  ['veterinary-van', []],
  ['expedition-truck', []],
  // A load on the wrong bar and a charger behind the load-side shunt were planted.
  ['planted-mistakes', ['charging T1', 'load-side ', 'loads E5']],
])('%s: readings that would prove nothing, as the shunt is not true there', (name, found) => {
  const d = demo(name)
  const untrue = commissioningSteps(d).filter((s) =>
    s.readings.some((r) => r.expected.is === 'not-known' && r.expected.because === 'untrue-as-drawn'),
  )
  const named = (ids: readonly string[]) => ids.map((id) => d.parts.find((p) => p.id === id)!.designation)
  expect(untrue.map((s) => `${s.group} ${named(s.parts).join(' ')}`).sort()).toEqual(found)
})

describe('random designs', () => {
  test.each(Array.from({ length: 40 }, (_, i) => i))(
    'seed %i: steps, words and paper never throw',
    (seed) => {
      const manner = seed % 2 === 0 ? 'sensible' : 'wild'
      const made = randomDesign(new Random(seed), 8 + (seed % 5) * 8, manner)
      const d = readDesign(writeDesign(made)).design!
      const steps = commissioningSteps(d)
      expect(new Set(steps.map((s) => s.key)).size).toBe(steps.length)
      for (const s of steps) {
        const words = [stepWords(s, d).title, stepWords(s, d).text, ...settingWords(s, d)]
        for (const r of s.readings)
          words.push(readingWords(r, d), INSTRUMENT_WORDS[r.instrument], ...probeWords(r, d))
        for (const w of words) expect(w).not.toMatch(/undefined|NaN|null/)
        for (const { expected: e } of s.readings)
          if (e.is === 'figure')
            for (const v of [e.usual, e.least, e.most]) expect(v === null || Number.isFinite(v)).toBe(true)
      }
      expect(commissioningSheets(d).length).toBeGreaterThan(0)
      expect(commissioningSummary(d).state).toBe('none')
    },
  )
})
