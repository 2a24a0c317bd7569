import { describe, expect, test } from 'vitest'
import { sizeIt } from '../../engine/calc/sizing/sizeit'
import { apply } from '../../engine/edit/apply'
import type { Design } from '../../engine/model/design'
import { analyse } from '../../engine/rules/analyse'
import { type LoadSystem, loadSystem, systemDesign } from '../reference/loadsystem'
import { Random } from '../reference/random'
import { randomDesign } from './rules/randomdesign'

/** Findings of a sized design that sizes decide. Without any limit it is no matter of size. */
function avoidable(of: Design, rules: readonly string[]): string[] {
  const sizing = sizeIt(of, 'all')
  if ('infeasible' in sizing) return []
  const result = apply(of, sizing.edit)
  if (result.refused) throw new Error(result.why)
  const kept = new Set(sizing.kept.flatMap((k) => k.conductor ?? []))
  const locked = new Set(
    sizing.kept.flatMap((k) =>
      k.part !== undefined && k.way !== undefined ? [`F1 ${k.part} ${k.way}`] : [],
    ),
  )
  return analyse(result.design)
    .findings.filter((f) => rules.includes(f.rule) && f.level !== 'note' && f.actual?.value !== 'unlimited')
    .filter((f) => f.conductors.length === 0 || !f.conductors.every((c) => kept.has(c)))
    .map((f) => f.key)
    .filter((key) => !locked.has(key))
}

const DECIDED = ['P2', 'P3', 'P5', 'C1', 'C3', 'F1', 'E1', 'K2', 'V4']

/** A second conductor beside some, a ring over return bars, a battery that cannot feed all loads at once. */
function tangled(seed: number): { readonly s: LoadSystem; readonly design: Design } {
  const r = new Random(seed)
  const s = loadSystem(seed, {
    loads: r.whole(4, 14),
    blocks: 3,
    backs: 3,
    nested: r.chance(0.5),
    totalA: r.pick([20, 40, 70]),
    reachM: 7,
  })
  const plain = systemDesign(s)
  const conductors = [...plain.conductors]
  const again = (number: string, lengthM: number, more: object = {}): void => {
    const of = plain.conductors.find((c) => c.number === number)!
    conductors.push({
      ...of,
      id: `x${conductors.length}`,
      number: `${number}x${conductors.length}`,
      lengthM,
      ...more,
    })
  }
  for (const number of ['T2', 'T3', 'A1', 'B1', 'N1', 'N2', 'L1', 'R1'])
    if (r.chance(0.3)) again(number, r.between(0.5, 6))
  if (r.chance(0.5)) {
    const [first, second] = ['N1', 'N2'].map((n) => plain.conductors.find((c) => c.number === n)!)
    again('N1', r.between(0.5, 4), {
      from: { ...first!.from, terminal: '40l' },
      to: { ...second!.from, terminal: '40l' },
    })
  }
  const total = s.loads.reduce((sum, x) => sum + x.amps, 0)
  const dischargeA = r.chance(0.5) ? Math.ceil(r.between(0.3, 0.9) * total) : 500
  const parts = plain.parts.map((p) =>
    p.kind === 'battery' ? { ...p, values: { ...p.values, dischargeA } } : p,
  )
  return { s, design: { ...plain, parts, conductors } }
}

describe('meshes, and batteries that cannot feed everything at once', () => {
  test.each(Array.from({ length: 60 }, (_, i) => i + 1))('%i', (seed) => {
    const { design } = tangled(seed)
    const sizing = sizeIt(design, 'all')
    if ('infeasible' in sizing) throw new Error(JSON.stringify(sizing.infeasible))
    expect(avoidable(design, DECIDED)).toEqual([])
  })
})

test('random designs of any parts: nothing that sizing could have avoided', () => {
  let sized = 0
  for (let seed = 1; seed <= 150; seed++) {
    const r = new Random(seed)
    const of = randomDesign(r, r.whole(5, 40), seed % 3 === 0 ? 'wild' : 'sensible')
    if (!('infeasible' in sizeIt(of, 'all'))) sized++
    expect(avoidable(of, DECIDED), `seed ${seed}`).toEqual([])
  }
  expect(sized).toBeGreaterThan(100)
}, 180_000)
