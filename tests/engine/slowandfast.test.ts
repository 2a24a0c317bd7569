import { describe, expect, it } from 'vitest'
import type { Answer } from '../../engine/calc/answer'
import { answersOf } from '../../engine/calc/answersof'
import type { NetworkBranch, NetworkForm } from '../../engine/calc/form'
import { type Border, networkOf } from '../../engine/calc/network'
import type { Design } from '../../engine/model/design'
import { RULE_SETS } from '../../engine/tables/rulesets'
import { sizeByKey } from '../../engine/tables/sizes'
import { currentsLp, extremeOf } from '../reference/currents'
import { type DenseBattery, denseVoltages } from '../reference/dense'
import { endFlowByLp } from '../reference/flowprograms'
import { keepLp } from '../reference/highs'
import { wholeNetwork } from '../reference/kirchhoff'
import { smallSystem } from '../reference/smallsystem'

/*
 * Whole designs, once as the product reckons them and once in the plainest way: every position of every contact one by
 * one, linear programs by HiGHS on Kirchhoff's and Ohm's laws written out, elimination on full matrices.
 */

const DESIGNS = 24

/** The network in every position of its changeovers, with every combination of other contacts open. */
function positionsOf({ form, branches }: Border): NetworkForm[] {
  const throws = new Map<string, string[]>()
  const hand: string[] = []
  for (const [id, { part, branch }] of branches) {
    if (branch.kind !== 'contact') continue
    if (!branch.changeover) hand.push(id)
    else {
      const key = `${part}/${branch.changeover.name}`
      throws.set(key, [...(throws.get(key) ?? []), id])
    }
  }
  let opened: string[][] = [[]]
  for (const id of hand) opened = opened.flatMap((o) => [o, [...o, id]])
  for (const ids of throws.values())
    opened = opened.flatMap((o) => ids.map((closed) => [...o, ...ids.filter((id) => id !== closed)]))
  return opened.map((o) => ({ ...form, branches: form.branches.filter((b) => !o.includes(b.id)) }))
}

const known = <T>(answer: Answer<T>): T => {
  if ('notChecked' in answer) throw new Error(answer.notChecked)
  return answer.value
}
const number = (x: number | 'unlimited'): number => (x === 'unlimited' ? Number.POSITIVE_INFINITY : x)

function near(ours: number, plain: number, what: string): void {
  if (ours === plain) return
  expect(
    Math.abs(ours - plain) / Math.max(1, Math.abs(plain)),
    `${what}: ${ours}, plainly ${plain}`,
  ).toBeLessThan(1e-6)
}

const systems = Array.from({ length: DESIGNS }, (_, i) => {
  const design = smallSystem(i + 1)
  const border = networkOf(design, 'any', new Set())
  const forms = positionsOf(border)
  const { answers, states } = answersOf(design)
  return { name: `system ${i + 1}`, design, border, forms, answers, states }
})
const conductorsOf = (form: NetworkForm): [number, NetworkBranch][] =>
  [...form.branches.entries()].filter(([, b]) => b.kind === 'conductor')

it('the systems have what the engine takes short cuts through', () => {
  const has = (test: (s: (typeof systems)[number]) => boolean): number => systems.filter(test).length
  expect(has((s) => s.forms.length > 2)).toBeGreaterThan(3)
  expect(has((s) => s.states.length > 1)).toBeGreaterThan(3)
  expect(has((s) => s.border.frames.length > 0)).toBeGreaterThan(3)
  expect(has((s) => s.design.parts.some((p) => p.kind === 'relay-changeover'))).toBeGreaterThan(3)
  expect(has((s) => s.design.parts.filter((p) => p.kind === 'battery').length > 1)).toBeGreaterThan(3)
})

describe('worst-case currents of every conductor, each way', () => {
  it.each(systems.map((s) => [s.name, s] as const))('%s', (name, { answers, forms }) => {
    const worst = new Map<string, [number, number]>()
    for (const form of forms) {
      const lp = currentsLp(form)
      for (const [e, b] of conductorsOf(form)) {
        const [forward, backward] = worst.get(b.id) ?? [0, 0]
        worst.set(b.id, [
          Math.max(forward, extremeOf(lp, form, e, 'max')),
          Math.max(backward, -extremeOf(lp, form, e, 'min')),
        ])
      }
      lp.dispose()
    }
    for (const [id, [forward, backward]] of worst) {
      const run = answers.runs.get(id)!
      near(number(known(run.forward).amps), forward, `${name}, ${id} forward`)
      near(number(known(run.backward).amps), backward, `${name}, ${id} backward`)
    }
  })
})

describe('what can come out of the network into each end of a conductor', () => {
  it.each(systems.map((s) => [s.name, s] as const))('%s', (name, { answers, forms }) => {
    for (const end of ['from', 'to'] as const) {
      const worst = new Map<string, number>()
      for (const form of forms)
        for (const [e, b] of conductorsOf(form))
          if (answers.runs.get(b.id)!.nature === 'positive')
            worst.set(b.id, Math.max(worst.get(b.id) ?? 0, endFlowByLp(form, e, end)))
      for (const [id, amps] of worst)
        near(number(known(answers.runs.get(id)![end]).amps), amps, `${name}, ${id} ${end}`)
    }
  })
})

/** Ω of a conductor: its table resistance at a temperature, 0.00393 a kelvin from 20 °C, and two ends of 20 µΩ. */
function warm(design: Design, form: NetworkForm, atC: number): NetworkForm {
  const runs = new Map(design.conductors.map((c) => [c.id, c]))
  return {
    ...form,
    branches: form.branches.map((b) => {
      const c = runs.get(b.id)
      const perMetre = c ? (sizeByKey(c.size!)!.ohmsPerKm / 1000) * (1 + 0.00393 * (atC - 20)) : 0
      return c ? { ...b, resistance: perMetre * c.lengthM! + 0.00004 } : b
    }),
  }
}

describe('the worst drop of every load, whatever runs and however switches stand', () => {
  it.each(systems.map((s) => [s.name, s] as const))('%s', (name, { answers, border, design, forms }) => {
    const atC = RULE_SETS.find((set) => set.key === design.settings.ruleSet)!.dropAtC.value
    const worst = new Map<string, number>()
    for (const cold of forms) {
      const form = warm(design, cold, atC)
      const resting = form.devices.map((x) =>
        x.emf === undefined ? { ...x, max: 0 } : { ...x, min: 0 as const },
      )
      const lp = wholeNetwork({ ...form, devices: resting })
      const kept = keepLp(lp)
      const node = new Map(form.nodes.map((id, i) => [id, form.devices.length + form.branches.length + i]))
      for (const load of form.devices) {
        if (load.emf !== undefined || !(load.min === 'unlimited' || load.min < 0)) continue
        for (const battery of form.devices.filter((x) => x.emf !== undefined)) {
          const objective = new Float64Array(lp.bounds.length)
          for (const [id, sign] of [
            [battery.positive, 1],
            [battery.negative, -1],
            [load.positive, -1],
            [load.negative, 1],
          ] as const)
            objective[node.get(id)!]! += sign
          const answer = kept.optimise('max', objective)
          // Without end: in this position no way joins the two.
          if (answer.status === 'optimal')
            worst.set(load.id, Math.max(worst.get(load.id) ?? 0, answer.value / 1000))
        }
      }
      kept.dispose()
    }
    for (const [id, volts] of worst) {
      expect(border.devices.has(id)).toBe(true)
      near(known(answers.drops.get(id)!.drop).volts, volts, `${name}, ${id}`)
    }
  })
})

/** Batteries and branches in a case of copper and charge: factors as the engine's own tables of cases state them in words. */
function faultCase(form: NetworkForm, atC: number, emf: number, internal: number) {
  const copper = 1 + 0.00393 * (atC - 20)
  return {
    nodes: form.nodes,
    branches: form.branches.map((b) =>
      b.kind === 'conductor' ? { ...b, resistance: b.resistance * copper } : b,
    ),
    batteries: form.devices.flatMap((d): DenseBattery[] =>
      d.emf === undefined
        ? []
        : [
            {
              positive: d.positive,
              negative: d.negative,
              emf: d.emf * emf,
              ohms: d.internalResistance! * internal,
            },
          ],
    ),
  }
}

/** Current of a bolted short circuit between two nodes, by what is left of the voltage with 1 A drawn. */
function shortAmps(c: ReturnType<typeof faultCase>, node: string, other: string): number {
  const open = denseVoltages(c, c.batteries, other).get(node)!
  const loaded = denseVoltages(c, c.batteries, other, [[other, node, 1]]).get(node)!
  return open === 0 ? 0 : open / (open - loaded)
}

describe('the least short circuit across every load, hot copper and batteries at cut-off', () => {
  it.each(systems.map((s) => [s.name, s] as const))('%s', (name, { answers, border, design, forms }) => {
    let checked = 0
    for (const c of design.conductors) {
      const load = design.parts.find((p) => p.id === c.to.part && p.kind === 'load' && c.to.terminal === '+')
      if (!load) continue
      const node = (terminal: string): string =>
        border.nodeOf.get(`${load.id}/${terminal}`) ?? `${load.id}/${terminal}`
      const figures = forms
        .map((form) => shortAmps(faultCase(form, 70, 10 / 12.8, 2), node('+'), node('-')))
        .filter((amps) => amps > 1e-9)
      near(known(answers.faults.runs.get(c.id)!.to.least), Math.min(...figures), `${name}, ${c.number}`)
      checked += 1
    }
    expect(checked).toBeGreaterThan(1)
  })
})

/** Links of next to no resistance in the place of fuses and contacts, as a prospective current is defined. */
const withLinks = (form: NetworkForm): NetworkForm => ({
  ...form,
  branches: form.branches.map((b) =>
    b.kind === 'fuse' || b.kind === 'contact' ? { ...b, resistance: LINK_OHMS } : b,
  ),
})
const LINK_OHMS = 1e-8

describe('the greatest short circuit at every end, cold copper and full batteries, chargers feeding', () => {
  it.each(systems.map((s) => [s.name, s] as const))('%s', (name, { answers, border, design, forms }) => {
    const zero = border.nodeOf.get(`${design.parts.find((p) => p.kind === 'battery')!.id}/-`)!
    for (const [id, ends] of answers.faults.runs) {
      const branch = border.form.branches.find((b) => b.id === id)!
      if (answers.runs.get(id)!.nature !== 'positive') continue
      for (const end of ['from', 'to'] as const) {
        const figures = forms.map((form) => {
          const c = faultCase(withLinks(form), -10, 14.6 / 12.8, 1)
          const at = (inject: Parameters<typeof denseVoltages>[3]): number =>
            denseVoltages(c, c.batteries, zero, inject).get(branch[end])!
          const open = at([])
          const drive = open - at([[zero, branch[end], 1]])
          if (!(drive > 1e-12)) return 0
          const chargers = form.devices.filter((d) => d.emf === undefined && number(d.sustainedFault) > 0)
          const pushed = chargers.map((d) => {
            const rise = at([[d.positive, d.negative, number(d.sustainedFault)]]) - open
            return Math.max(0, rise / drive)
          })
          return pushed.reduce((sum, amps) => sum + amps, open / drive)
        })
        near(number(known(ends[end].greatest)), Math.max(...figures), `${name}, ${id} ${end}`)
      }
    }
  })
})
